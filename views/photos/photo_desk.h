#pragma once

#include "views/photos/folder_watch.h"
#include "views/photos/photo_intake.h"

#include <functional>

class QLabel;
class QMimeData;

namespace ts {

class PhotoTray;
class ProgressLine;

/// Where photos come in: dropped on the window, pasted, chosen as files, or by the watched folder. One a window.
class PhotoDesk : public QObject {
    Q_OBJECT
public:
    PhotoDesk(Workplace &workplace, QWidget *window);

    [[nodiscard]] PhotoTray *tray() const { return m_tray; }
    [[nodiscard]] ProgressLine *progress() const { return m_progress; }
    [[nodiscard]] PhotoIntake &intake() { return m_intake; }
    [[nodiscard]] FolderWatch &watch() { return m_watch; }

    /// Who is asked first whether photos are for them: a unit that is just being taken in. Answers true where it took them.
    void setFirst(std::function<bool(const QList<PhotoSource> &)> first) { m_first = std::move(first); }
    /// Puts photos on the unit in hand.
    void bring(const QList<PhotoSource> &photos);
    void chooseFiles();
    void chooseWatchedFolder();
    /// Takes what was copied, where it is photos; `overText` says that it would be pasted into a field otherwise.
    bool paste(bool overText);
    /// Records what is ready and leaves the rest; before the workbook is closed.
    void settle();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void lookAtMemory();
    void rememberSeen();
    void cameIn(const QStringList &files);
    void sendOn(const QStringList &files, const QList<int> &tags);
    void showHint(const QMimeData &data);

    Workplace &m_work;
    QWidget *m_window;
    PhotoIntake m_intake;
    FolderWatch m_watch;
    Background m_codes;  ///< looks for labels in what came in
    Id<Unit> m_labelled; ///< whose label was photographed last; null: nobody's since a unit was taken in hand
    PhotoTray *m_tray;
    ProgressLine *m_progress;
    QLabel *m_hint;
    std::function<bool(const QList<PhotoSource> &)> m_first;
};

} // namespace ts
