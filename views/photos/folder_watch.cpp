#include "views/photos/folder_watch.h"

#include "model/media/picture_outline.h"
#include "views/photos/photo_source.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace ts {

namespace {

constexpr int idleMs = 10'000; // folders on a server do not tell of changes; they are looked at now and then
constexpr int cutOffTimes = 10;

// When a file came into the folder: what copies photos often gives them the time that they were taken as that of the last change.
QDateTime cameIn(const QFileInfo &info)
{
    return qMax(info.metadataChangeTime(), info.lastModified());
}

} // namespace

FolderWatch::FolderWatch(QObject *parent, int quietMs) : QObject(parent), m_quietMs(quietMs)
{
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, &FolderWatch::look);
    connect(&m_timer, &QTimer::timeout, this, &FolderWatch::look);
}

void FolderWatch::setFolder(const QString &folder, const QDateTime &since)
{
    if (!m_watcher.directories().isEmpty())
        m_watcher.removePaths(m_watcher.directories());
    m_timer.stop();
    m_known.clear();
    m_pending.clear();
    m_newest = since;
    m_folder = folder;
    if (folder.isEmpty())
        return;
    const QDir dir(folder);
    for (const QFileInfo &info : dir.entryInfoList(QDir::Files)) {
        if (!isCalledPicture(info.fileName()))
            continue;
        if (since.isValid() && cameIn(info) > since)
            continue; // looked at below, as one that is new
        m_known << info.fileName();
        m_newest = m_newest.isValid() ? qMax(m_newest, cameIn(info)) : cameIn(info);
    }
    m_watcher.addPath(folder);
    m_timer.start(idleMs);
    look();
}

void FolderWatch::look()
{
    const QDir dir(m_folder);
    const QStringList names = dir.entryList(QDir::Files, QDir::Name);
    const QSet<QString> there(names.begin(), names.end());
    m_known.intersect(there); // a name that goes and comes back is a new photo
    for (const QString &name : names)
        if (isCalledPicture(name) && !m_known.contains(name) && !m_pending.contains(name))
            m_pending.insert(name, {});
    QStringList whole;
    for (auto it = m_pending.begin(); it != m_pending.end();) {
        const QString path = dir.filePath(it.key());
        if (!there.contains(it.key())) {
            it = m_pending.erase(it);
            continue;
        }
        if (!isWhole(path, *it)) {
            const QFileInfo info(path);
            if (info.size() != it->size || info.lastModified() != it->modified)
                *it = Pending{info.size(), info.lastModified(), {}};
            if (!it->unchanged.isValid())
                it->unchanged.start();
            ++it;
            continue;
        }
        whole << path;
        note(it.key());
        it = m_pending.erase(it);
    }
    m_timer.setInterval(m_pending.isEmpty() ? idleMs : qMax(20, m_quietMs / 3));
    whole.sort();
    if (!whole.isEmpty())
        Q_EMIT arrived(whole);
}

void FolderWatch::note(const QString &name)
{
    m_known << name;
    const QDateTime came = cameIn(QFileInfo(QDir(m_folder).filePath(name)));
    m_newest = m_newest.isValid() ? qMax(m_newest, came) : came;
}

bool FolderWatch::isWhole(const QString &path, const Pending &pending) const
{
    const QFileInfo info(path);
    if (info.size() == 0 || info.size() != pending.size || info.lastModified() != pending.modified || !pending.unchanged.hasExpired(m_quietMs))
        return false;
    // A copy over a slow line stops now and then. A picture that does not reach its own end is waited for longer, but not for ever:
    // then it is told of, and refused with a reason.
    if (pending.unchanged.hasExpired(qint64(m_quietMs) * cutOffTimes))
        return true;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return false;
    const PictureOutline outline = pictureOutline(file.readAll());
    return outline.format == PictureFormat::None || outline.reachedEnd;
}

} // namespace ts
