#include "views/photos/small_pictures.h"

#include "views/style/style.h"
#include "views/widgets/rounded.h"

#include <QHBoxLayout>
#include <QImageReader>
#include <QLabel>

namespace ts {

namespace {

constexpr int mostPictures = 5;
constexpr int side = 200;

QImage small(const PhotoSource &source)
{
    if (source.file.isEmpty())
        return source.image.scaled(side, side, Qt::KeepAspectRatioByExpanding, Qt::SmoothTransformation);
    QImageReader reader(source.file);
    reader.setAutoTransform(true);
    if (const QSize size = reader.size(); size.width() > 2 * side || size.height() > 2 * side)
        reader.setScaledSize(size.scaled(side, side, Qt::KeepAspectRatioByExpanding));
    return reader.read();
}

} // namespace

SmallPictures::SmallPictures(const Style &style, QWidget *parent) : QWidget(parent), m_style(style)
{
    m_row = new QHBoxLayout(this);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(gap::tight);
}

void SmallPictures::add(const PhotoSource &source)
{
    if (m_asked++ >= mostPictures)
        return;
    m_background.run([source] { return small(source); },
                     [this, generation = m_generation](const QImage &picture) {
                         if (picture.isNull() || generation != m_generation)
                             return;
                         auto *label = new QLabel(this);
                         label->setPixmap(roundedCover(picture, QSize(m_style.space(12), m_style.space(9)), m_style.radius(), devicePixelRatioF()));
                         m_row->addWidget(label);
                     });
}

void SmallPictures::clear()
{
    m_background.forget();
    ++m_generation;
    m_asked = 0;
    while (QLayoutItem *item = m_row->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

} // namespace ts
