#pragma once

#include <QElapsedTimer>
#include <QFileSystemWatcher>
#include <QHash>
#include <QObject>
#include <QSet>
#include <QTimer>

namespace ts {

/// Looks for new picture files in a folder that a telephone puts them into, and tells of each when it is whole: one that is still
/// being written is waited for.
class FolderWatch : public QObject {
    Q_OBJECT
public:
    /// A file counts as written when it did not change for `quietMs`; one that is called a picture and is cut off gets ten times that.
    explicit FolderWatch(QObject *parent = nullptr, int quietMs = 1500);

    /// Watches this folder; empty: none. What is in it already is left alone, but for what came into it after `since` (the answer of
    /// newest() when it was last watched), where that is valid.
    void setFolder(const QString &folder, const QDateTime &since = {});
    [[nodiscard]] const QString &folder() const { return m_folder; }
    /// When the newest file that was seen came into the folder.
    [[nodiscard]] QDateTime newest() const { return m_newest; }

Q_SIGNALS:
    void arrived(const QStringList &files);

private:
    struct Pending {
        qint64 size = -1;
        QDateTime modified;
        QElapsedTimer unchanged;
    };
    void look();
    void note(const QString &name);
    [[nodiscard]] bool isWhole(const QString &path, const Pending &pending) const;

    QString m_folder;
    int m_quietMs;
    QFileSystemWatcher m_watcher;
    QTimer m_timer;
    QSet<QString> m_known;
    QHash<QString, Pending> m_pending;
    QDateTime m_newest;
};

} // namespace ts
