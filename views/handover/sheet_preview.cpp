#include "views/handover/sheet_preview.h"

#include "views/style/style.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

namespace ts {

namespace {

constexpr int pauseMs = 140;
constexpr double closest = 3;
constexpr double farthest = 0.4;
constexpr double zoomStep = 1.2;

/// In the thread beside the window.
QList<QImage> pagesOf(const RestorationFacts &facts, PageSize size, int width)
{
    const PaperPages pages(facts, size);
    const double scale = width / pages.pageSize().width();
    QList<QImage> images;
    for (int i = 0; i < pages.count(); ++i) {
        QImage image(width, qRound(pages.pageSize().height() * scale), QImage::Format_RGB32);
        image.fill(Qt::white); // paper is white in every scheme
        QPainter painter(&image);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
        painter.scale(scale, scale);
        pages.paint(painter, i);
        painter.end();
        images << image;
    }
    return images;
}

} // namespace

/// The pages beneath one another.
class SheetPreview::Sheets : public QWidget {
public:
    explicit Sheets(SheetPreview &preview) : m_preview(preview) {}

    void fit()
    {
        const int width = m_preview.pageWidth();
        int height = gap::normal;
        for (const QImage &page : m_preview.m_pages)
            height += heightOf(page, width) + gap::normal;
        setFixedSize(width + 2 * gap::normal, height);
        update();
    }

protected:
    void paintEvent(QPaintEvent *event) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.fillRect(event->rect(), m_preview.m_style.ink().bar);
        const int width = m_preview.pageWidth();
        int y = gap::normal;
        for (const QImage &page : m_preview.m_pages) {
            const QRect at(gap::normal, y, width, heightOf(page, width));
            if (at.intersects(event->rect())) {
                painter.drawImage(at, page);
                painter.setPen(m_preview.m_style.ink().line);
                painter.drawRect(at.adjusted(-1, -1, 0, 0));
            }
            y += at.height() + gap::normal;
        }
    }

private:
    static int heightOf(const QImage &page, int width) { return qRound(double(page.height()) * width / page.width()); }

    SheetPreview &m_preview;
};

SheetPreview::SheetPreview(const Style &style, QWidget *parent) : QScrollArea(parent), m_style(style)
{
    setAccessibleName(tr("The sheet as it will be"));
    setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn); // or its coming and going changes the width, and so on
    m_sheets = new Sheets(*this);
    setWidget(m_sheets);
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &SheetPreview::paintSheet);
}

SheetPreview::~SheetPreview() = default;

int SheetPreview::pageWidth() const
{
    return qMax(120, qRound((viewport()->width() - 2 * gap::normal) * m_zoom));
}

void SheetPreview::showSheet(const RestorationFacts &facts, PageSize size)
{
    m_facts = facts;
    m_size = size;
    m_has = true;
    paintSoon(0);
}

void SheetPreview::paintSoon(int afterMs)
{
    if (m_has)
        m_pause.start(afterMs);
}

void SheetPreview::paintSheet()
{
    const qreal ratio = devicePixelRatioF();
    m_background.forget();
    m_background.run([facts = m_facts, size = m_size, width = qRound(pageWidth() * ratio)] { return pagesOf(facts, size, width); },
                     [this, generation = ++m_generation](const QList<QImage> &pages) {
                         if (generation != m_generation)
                             return;
                         const int at = verticalScrollBar()->value();
                         m_pages = pages;
                         m_sheets->fit();
                         verticalScrollBar()->setValue(at);
                         setAccessibleDescription(tr("%n page(s)", nullptr, static_cast<int>(pages.size())));
                         Q_EMIT painted();
                     });
}

void SheetPreview::zoomBy(double factor)
{
    const double before = m_zoom;
    m_zoom = std::clamp(m_zoom * factor, farthest, closest);
    if (qAbs(m_zoom - 1) < 0.05)
        m_zoom = 1;
    const double at = verticalScrollBar()->value() * m_zoom / before;
    m_sheets->fit();
    verticalScrollBar()->setValue(qRound(at));
    paintSoon(pauseMs);
}

void SheetPreview::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    m_sheets->fit();
    paintSoon(pauseMs);
}

void SheetPreview::wheelEvent(QWheelEvent *event)
{
    if (event->modifiers() & Qt::ControlModifier)
        zoomBy(event->angleDelta().y() > 0 ? zoomStep : 1 / zoomStep);
    else
        QScrollArea::wheelEvent(event);
}

void SheetPreview::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Equal)
        zoomBy(zoomStep);
    else if (event->key() == Qt::Key_Minus)
        zoomBy(1 / zoomStep);
    else if (event->key() == Qt::Key_0)
        zoomBy(1 / m_zoom);
    else
        QScrollArea::keyPressEvent(event);
}

} // namespace ts
