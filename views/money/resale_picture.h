#pragma once

#include "model/sums/resale.h"

#include <QWidget>

namespace ts {

class Style;

/// What a unit should fetch: bars of the kernel estimate, a dot for each sale, the middle and the break-even price.
class ResalePicture : public QWidget {
    Q_OBJECT
public:
    explicit ResalePicture(const Style &style, QWidget *parent = nullptr);
    void show(const Resale &resale, const std::optional<Money> &breakEven);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] double across(qint64 minor) const;
    void paintKernel(QPainter &painter, double floor, double room, double most) const;
    void paintLine(QPainter &painter, const Money &at, const QColor &colour, const QString &text, bool toTheLeft) const;

    const Style &m_style;
    Resale m_resale;
    std::optional<Money> m_breakEven;
    qint64 m_from = 0;
    qint64 m_to = 1;
};

} // namespace ts
