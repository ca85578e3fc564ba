#pragma once

#include "views/widgets/pill.h"

#include <QTabBar>

namespace ts {

class Style;

/// The row of a unit's pages, each with how many things there wait for somebody.
class PageTabs : public QTabBar {
    Q_OBJECT
public:
    explicit PageTabs(const Style &style, QWidget *parent = nullptr);
    /// 0 shows nothing.
    void setBadge(int index, int count, Tone tone);
    /// None of the pages is shown now: no tab is marked.
    void setAside(bool aside);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    [[nodiscard]] QSize tabSizeHint(int index) const override;
    [[nodiscard]] QSize minimumTabSizeHint(int index) const override;
    void paintEvent(QPaintEvent *event) override;

private:
    struct Badge {
        int count = 0;
        Tone tone = Tone::Neutral;
    };
    [[nodiscard]] QString badgeText(int index) const;
    [[nodiscard]] int badgeWidth(int index) const;

    const Style &m_style;
    QList<Badge> m_badges;
    bool m_aside = false;
};

} // namespace ts
