#include "views/photos/photo_desk.h"

#include "model/media/tag_in_picture.h"
#include "model/records/tag_text.h"
#include "views/photos/photo_tray.h"
#include "views/settings/memory.h"
#include "views/widgets/ask.h"
#include "views/widgets/progress_line.h"

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QStandardPaths>

namespace ts {

namespace {

constexpr int lookAtMemoryMs = 2000;
const auto seenState = QStringLiteral("watched_until"); // the folder and when the newest photo came into it

QString pictureFilter()
{
    return PhotoDesk::tr("Pictures (*.jpg *.jpeg *.png *.webp *.gif *.bmp);;All files (*)");
}

bool isTextField(const QObject *object)
{
    return qobject_cast<const QLineEdit *>(object) || qobject_cast<const QPlainTextEdit *>(object) || qobject_cast<const QTextEdit *>(object);
}

} // namespace

PhotoDesk::PhotoDesk(Workplace &workplace, QWidget *window) : QObject(window), m_work(workplace), m_window(window), m_intake(workplace), m_watch()
{
    m_tray = new PhotoTray(workplace, window);
    m_progress = new ProgressLine(window);
    m_hint = new QLabel(window);
    m_hint->setObjectName(QStringLiteral("dropHint"));
    m_hint->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_hint->setAlignment(Qt::AlignCenter);
    m_hint->hide();
    connect(&m_intake, &PhotoIntake::began, m_progress, &ProgressLine::begin);
    connect(&m_intake, &PhotoIntake::advanced, m_progress, &ProgressLine::advance);
    connect(&m_intake, &PhotoIntake::ended, m_progress, &ProgressLine::end);
    connect(m_progress, &ProgressLine::stopWanted, &m_intake, &PhotoIntake::stop);
    connect(m_tray, &PhotoTray::given, &m_intake, &PhotoIntake::take);
    connect(&m_watch, &FolderWatch::arrived, this, &PhotoDesk::cameIn);
    connect(&m_work, &Workplace::unitTaken, this, [this] { m_labelled = {}; }); // who takes a unit in hand says what the next photos are of
    connect(&m_work, &Workplace::photoFilesWanted, this, &PhotoDesk::chooseFiles);
    window->setAcceptDrops(true);
    // What is dropped or pasted goes to whatever is under the mouse or has the keyboard, and a field would take it for text.
    QCoreApplication::instance()->installEventFilter(this);
    auto *look = new QTimer(this);
    connect(look, &QTimer::timeout, this, &PhotoDesk::lookAtMemory);
    look->start(lookAtMemoryMs);
    QTimer::singleShot(0, this, &PhotoDesk::lookAtMemory);
}

void PhotoDesk::bring(const QList<PhotoSource> &photos)
{
    if (photos.isEmpty() || (m_first && m_first(photos)))
        return;
    if (!m_work.hasUnit())
        return m_work.refuse(tr("No unit is in hand; choose the tag that the photos belong to first."));
    m_intake.take(photos, m_work.file().unit.id);
}

void PhotoDesk::chooseFiles()
{
    const Memory *memory = m_work.memory();
    const QString watched = memory ? memory->watchedFolder() : QString();
    const QString folder = watched.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::PicturesLocation) : watched;
    bring(photoFiles(ask::existingFiles(m_window, tr("Add photos"), folder, pictureFilter())));
}

void PhotoDesk::chooseWatchedFolder()
{
    if (!m_work.memory())
        return;
    const QString folder = ask::folder(m_window, tr("Folder that a telephone puts its photos into"), m_work.memory()->watchedFolder());
    if (folder.isEmpty())
        return;
    m_work.memory()->setWatchedFolder(folder);
    lookAtMemory();
    m_work.say(tr("Photos that come into %1 are offered for the unit in hand.").arg(QDir::toNativeSeparators(folder)));
}

bool PhotoDesk::paste(bool overText)
{
    const QMimeData *copied = QGuiApplication::clipboard()->mimeData();
    const QList<PhotoSource> photos = copied ? photosOf(*copied) : QList<PhotoSource>();
    // Over a field, files are meant only where all are pictures, and a picture only where nothing could be pasted as text.
    if (photos.isEmpty() || (overText && (photos.first().file.isEmpty() ? copied->hasText() : !areAllPictures(photos))))
        return false;
    bring(photos);
    return true;
}

void PhotoDesk::settle()
{
    m_intake.stop();
    rememberSeen();
}

void PhotoDesk::lookAtMemory()
{
    const Memory *memory = m_work.memory();
    if (!memory || memory->watchedFolder() == m_watch.folder())
        return;
    const QString folder = memory->watchedFolder();
    const QString seen = QString::fromUtf8(memory->state(seenState));
    const bool same = !folder.isEmpty() && seen.section(QLatin1Char('\n'), 0, 0) == folder;
    m_watch.setFolder(folder, same ? QDateTime::fromString(seen.section(QLatin1Char('\n'), 1), Qt::ISODateWithMs) : QDateTime());
    rememberSeen();
}

void PhotoDesk::rememberSeen()
{
    if (m_work.memory() && !m_watch.folder().isEmpty() && m_watch.newest().isValid())
        m_work.memory()->setState(seenState, (m_watch.folder() + QLatin1Char('\n') + m_watch.newest().toUTC().toString(Qt::ISODateWithMs)).toUtf8());
}

void PhotoDesk::cameIn(const QStringList &files)
{
    m_codes.run(
        [files] {
            QList<int> tags;
            for (const QString &file : files)
                tags << tagInPictureFile(file);
            return tags;
        },
        [this, files](const QList<int> &tags) { sendOn(files, tags); });
    rememberSeen();
}

// A photo of a unit's label goes to that unit, and so does what comes after it; the rest is offered for the unit in hand.
void PhotoDesk::sendOn(const QStringList &files, const QList<int> &tags)
{
    QStringList offered;
    QList<std::pair<Id<Unit>, QStringList>> sent;
    for (qsizetype i = 0; i < files.size(); ++i) {
        if (tags.at(i) > 0)
            if (const auto unit = m_work.desk().unitByTag(tags.at(i)))
                m_labelled = *unit;
        if (m_labelled.isNull()) {
            offered << files.at(i);
            continue;
        }
        if (sent.isEmpty() || sent.last().first != m_labelled)
            sent.append({m_labelled, {}});
        sent.last().second << files.at(i);
    }
    for (const auto &[unit, photos] : sent)
        m_intake.take(photoFiles(photos), unit);
    if (!offered.isEmpty())
        m_tray->add(offered);
}

void PhotoDesk::showHint(const QMimeData &data)
{
    const int count = static_cast<int>(photosOf(data).size());
    m_hint->setText(m_work.hasUnit() ? tr("Drop: %n photo(s) for %1 %2", nullptr, count).arg(tagText(m_work.file().unit.tag), m_work.file().unit.name)
                                     : tr("Choose a tag first, then drop its photos"));
    m_hint->adjustSize();
    m_hint->move((m_window->width() - m_hint->width()) / 2, m_window->height() - m_hint->height() * 3);
    m_hint->raise();
    m_hint->show();
}

bool PhotoDesk::eventFilter(QObject *watched, QEvent *event)
{
    const auto kind = event->type();
    if (kind != QEvent::DragEnter && kind != QEvent::DragMove && kind != QEvent::DragLeave && kind != QEvent::Drop && kind != QEvent::KeyPress)
        return false;
    const auto *widget = qobject_cast<QWidget *>(watched);
    if (!widget || (widget != m_window && !m_window->isAncestorOf(widget)))
        return false;
    if (kind == QEvent::KeyPress)
        return static_cast<QKeyEvent *>(event)->matches(QKeySequence::Paste) && paste(isTextField(widget));
    if (kind == QEvent::DragLeave) {
        m_hint->hide();
        return false;
    }
    auto *drop = static_cast<QDropEvent *>(event); // the others are kinds of it
    if (photosOf(*drop->mimeData()).isEmpty())
        return false;
    drop->setDropAction(Qt::CopyAction); // the file stays where it is
    drop->accept();
    if (kind != QEvent::Drop) {
        showHint(*drop->mimeData());
        return true;
    }
    m_hint->hide();
    bring(photosOf(*drop->mimeData()));
    return true;
}

} // namespace ts
