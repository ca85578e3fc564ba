#include "views/take_in/tag_given.h"

#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ts {

TagGiven::TagGiven(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    auto *before = styledLabel("quiet", tr("Taken in. Its tag is"), this);
    m_tag = styledLabel("tag", {}, this);
    m_tag->setObjectName(QStringLiteral("tagGiven"));
    m_says = styledLabel("heading", {}, this);
    m_name = styledLabel("quiet", {}, this);
    m_name->setWordWrap(true);
    auto *open = primaryButton(tr("Open it  ·  Enter"), this);
    open->setAccessibleName(tr("Open the unit"));
    connect(open, &QPushButton::clicked, this, &TagGiven::openWanted);
    auto *another = button(tr("Take in another  ·  Ctrl+T"), this);
    another->setAccessibleName(tr("Take in another unit"));
    connect(another, &QPushButton::clicked, this, &TagGiven::anotherWanted);
    auto *choices = new QHBoxLayout;
    choices->setSpacing(gap::small);
    choices->addWidget(open);
    choices->addWidget(another);
    choices->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addWidget(before);
    column->addWidget(m_tag);
    column->addWidget(m_says);
    column->addWidget(m_name);
    column->addSpacing(gap::normal);
    column->addLayout(choices);
    column->addStretch(1);
}

void TagGiven::showFor(const Unit &unit)
{
    m_tag->setText(tagText(unit.tag));
    m_says->setText(tr("Tie tag %1 to it").arg(tagText(unit.tag)));
    m_name->setText(unit.name);
}

} // namespace ts
