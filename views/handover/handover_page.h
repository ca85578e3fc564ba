#pragma once

#include "model/paper/restoration_facts.h"
#include "views/unit/page.h"

#include <QCache>
#include <QTimer>

class QPrinter;
class QScrollArea;

namespace ts {

class Card;
class EarlierSheets;
class NoteLines;
class SettingField;
class SheetPhotos;
class SheetPreview;

/// The restoration sheet as the buyer will get it, and beside it what is chosen for it.
class HandoverPage : public Page {
    Q_OBJECT
public:
    explicit HandoverPage(Workplace &workplace, QWidget *parent = nullptr);

    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

    void writePdf();
    void writeWebPage();
    void print();
    [[nodiscard]] SheetPreview *preview() const { return m_preview; }

protected:
    void refresh() override;

private:
    [[nodiscard]] QWidget *makeSide();
    [[nodiscard]] Card *makeBench(QWidget *parent);
    [[nodiscard]] Expected<RestorationFacts> facts();
    [[nodiscard]] Expected<QByteArray> bytesOf(const Photo &photo);
    void layOut();
    void write(const QString &title, const QString &format, const QString &filter);
    void paintOnto(QPrinter &printer, const RestorationFacts &facts);
    void showLists(const RestorationFacts &facts);

    QTimer m_pause; ///< the sheet is laid out when typing pauses
    Id<Unit> m_laidOut;
    QCache<QString, QByteArray> m_bytes; ///< photos for the sheet, by SHA-256
    SheetPreview *m_preview;
    Card *m_notices;
    QLabel *m_noticeText;
    SheetPhotos *m_photos;
    NoteLines *m_flaws;
    NoteLines *m_uses;
    QLabel *m_notDone;
    QWidget *m_side;
    QScrollArea *m_sideScroll;
    QList<SettingField *> m_settings;
    EarlierSheets *m_earlier;
};

} // namespace ts
