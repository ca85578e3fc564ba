#pragma once

#include "views/widgets/card.h"
#include "views/workplace.h"

namespace ts {

/// The places to sell, each with its fee rules, edited in place. Break-even and the highest bid are worked out from them.
class ChannelList : public Card {
    Q_OBJECT
public:
    explicit ChannelList(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    void commitEdits();

private:
    void rebuild();
    void addChannel();
    void addRule(const Channel &channel);
    [[nodiscard]] QWidget *channelBox(const Channel &channel);

    Workplace &m_work;
    QVBoxLayout *m_boxes; ///< a box a channel
    QList<Channel> m_channels; ///< as shown
    QList<FeeRule> m_rules;
};

} // namespace ts
