#pragma once

#include "model/paper/restoration_facts.h"

#include <QFont>

class QPainter;

namespace ts {

/// Photos in rows as wide as the text: all of one row equally tall, none cut off, each with its caption over its foot.
class PhotoRows {
public:
    PhotoRows() = default;
    PhotoRows(const QList<RestorationFacts::Picture> &pictures, qreal width, const QFont &captionFont);

    [[nodiscard]] qsizetype count() const { return m_rows.size(); }
    [[nodiscard]] qreal height(qsizetype row) const { return m_rows.at(row).height; }
    /// Paints a row with its top left corner at a place.
    void paint(QPainter &painter, qsizetype row, QPointF at) const;
    /// Captions that do not fit on their photos, each whole and with the number of its photo.
    [[nodiscard]] QStringList cutCaptions() const { return m_cut; }

    static constexpr qreal gap = 10; ///< between photos

private:
    struct Tile {
        RestorationFacts::Picture picture;
        QString caption; ///< at most three lines of it
        qreal x = 0;
        qreal width = 0;
    };
    struct Row {
        qreal height = 0;
        QList<Tile> tiles;
    };
    QList<Row> m_rows;
    QFont m_font;
    QStringList m_cut;
};

} // namespace ts
