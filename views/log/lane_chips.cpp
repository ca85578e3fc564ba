#include "views/log/lane_chips.h"

#include "views/style/style.h"
#include "views/widgets/flow_layout.h"

#include <QKeyEvent>
#include <QPushButton>

namespace ts {

LaneChips::LaneChips(QWidget *parent) : QWidget(parent)
{
    setLayout(new FlowLayout(gap::tight + 2));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    m_all = add(tr("All"));
    m_all->setChecked(true);
    m_all->setAccessibleName(tr("Show all kinds of entries"));
    connect(m_all, &QPushButton::clicked, this, [this] {
        clear();
        Q_EMIT changed();
    });
    for (int i = 0; i < laneCount; ++i) {
        QPushButton *chip = add(laneName(static_cast<Lane>(i)));
        chip->setAccessibleName(tr("Show only: %1").arg(chip->text()));
        m_chips << chip;
        connect(chip, &QPushButton::clicked, this, [this] {
            settle();
            Q_EMIT changed();
        });
    }
    settle();
}

QPushButton *LaneChips::add(const QString &name)
{
    auto *chip = new QPushButton(name, this);
    chip->setProperty("role", QStringLiteral("chip"));
    chip->setCheckable(true);
    chip->setAutoDefault(false);
    chip->installEventFilter(this);
    layout()->addWidget(chip);
    return chip;
}

void LaneChips::offer(const QList<Lane> &lanes)
{
    for (int i = 0; i < laneCount; ++i) {
        QPushButton *chip = m_chips.at(i);
        const bool there = lanes.contains(static_cast<Lane>(i));
        if (!there)
            chip->setChecked(false);
        chip->setHidden(!there);
    }
    setHidden(lanes.size() < 2); // nothing to choose between
    settle();
}

QSet<Lane> LaneChips::only() const
{
    QSet<Lane> only;
    for (int i = 0; i < laneCount; ++i)
        if (m_chips.at(i)->isChecked())
            only << static_cast<Lane>(i);
    return only;
}

void LaneChips::clear()
{
    for (QPushButton *chip : m_chips)
        chip->setChecked(false);
    settle();
}

// One of them takes part in Tab: the one with the focus, else the first that is pressed.
void LaneChips::settle()
{
    m_all->setChecked(only().isEmpty());
    QPushButton *first = m_all;
    for (QPushButton *chip : m_chips)
        if (chip->isChecked() && first == m_all)
            first = chip;
    QList<QPushButton *> all{m_all};
    all += m_chips;
    for (QPushButton *chip : all)
        if (chip->hasFocus())
            first = chip;
    for (QPushButton *chip : all)
        chip->setFocusPolicy(chip == first ? Qt::StrongFocus : Qt::ClickFocus);
}

void LaneChips::step(QObject *from, int by)
{
    QList<QPushButton *> seen;
    for (QPushButton *chip : findChildren<QPushButton *>(QString(), Qt::FindDirectChildrenOnly))
        if (!chip->isHidden())
            seen << chip;
    const qsizetype at = seen.indexOf(static_cast<QPushButton *>(from)) + by;
    if (at < 0 || at >= seen.size())
        return;
    seen.at(at)->setFocus(Qt::OtherFocusReason);
    settle();
}

bool LaneChips::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        const bool back = key == (isRightToLeft() ? Qt::Key_Right : Qt::Key_Left) || key == Qt::Key_Up;
        const bool on = key == (isRightToLeft() ? Qt::Key_Left : Qt::Key_Right) || key == Qt::Key_Down;
        if (back || on) {
            step(watched, on ? 1 : -1);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ts
