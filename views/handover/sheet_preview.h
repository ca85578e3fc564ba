#pragma once

#include "model/paper/paper_pages.h"
#include "views/widgets/background.h"

#include <QImage>
#include <QScrollArea>
#include <QTimer>

namespace ts {

class Style;

/// A restoration sheet page by page as it will be printed: the same layout as that of the PDF, laid out and painted beside the window.
/// As wide as its place; Ctrl and the wheel, + and − come closer.
class SheetPreview : public QScrollArea {
    Q_OBJECT
public:
    explicit SheetPreview(const Style &style, QWidget *parent = nullptr);
    ~SheetPreview() override;

    /// Shows a sheet once it is laid out; what was shown stays until then, and where it was scrolled to.
    void showSheet(const RestorationFacts &facts, PageSize size);
    [[nodiscard]] const QList<QImage> &pages() const { return m_pages; }
    void zoomBy(double factor);

Q_SIGNALS:
    void painted(); ///< what is shown is what was asked for last

protected:
    void resizeEvent(QResizeEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    class Sheets;
    void paintSoon(int afterMs);
    void paintSheet();
    [[nodiscard]] int pageWidth() const;

    const Style &m_style;
    RestorationFacts m_facts;
    PageSize m_size = PageSize::A4;
    bool m_has = false;
    double m_zoom = 1; ///< of the width of its place
    QList<QImage> m_pages;
    Sheets *m_sheets;
    QTimer m_pause;
    int m_generation = 0;
    Background m_background;
};

} // namespace ts
