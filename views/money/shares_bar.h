#pragma once

#include "model/sums/price_parts.h"

#include <QWidget>

namespace ts {

class Style;

/// Where the resale price goes, as one bar with its words.
class SharesBar : public QWidget {
    Q_OBJECT
public:
    explicit SharesBar(const Style &style, QWidget *parent = nullptr);
    void show(const QList<PricePart> &parts);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] QColor colour(PriceShare share) const;
    [[nodiscard]] static QString word(PriceShare share);

    const Style &m_style;
    QList<PricePart> m_parts;
};

} // namespace ts
