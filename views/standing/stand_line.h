#pragma once

#include "views/widgets/pill.h"

#include <QAbstractButton>

namespace ts {

/// One line of how a unit stands: what, how much, perhaps a bar below; pressed, it goes to the page where that is worked on.
class StandLine : public QAbstractButton {
    Q_OBJECT
public:
    StandLine(const Style &style, const QString &label, QWidget *parent = nullptr);
    void setLabel(const QString &label); ///< by default what it was made with
    void setValue(const QString &value, bool strong = false);
    void setPill(const QString &value, Tone tone); ///< the value on a coloured ground
    /// A bar below: `share` of it filled, 0 to 1; past 1 the whole in the warning colour. Below 0: none.
    void setBar(double share);
    [[nodiscard]] const QString &value() const { return m_value; }
    [[nodiscard]] QString label() const { return text(); }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {60, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent *event) override;
    void enterEvent(QEnterEvent *event) override;
    void leaveEvent(QEvent *event) override;

private:
    void say();

    const Style &m_style;
    QString m_value;
    bool m_strong = false;
    bool m_pill = false;
    Tone m_tone = Tone::Neutral;
    double m_bar = -1;
};

} // namespace ts
