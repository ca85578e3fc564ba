#include "views/widgets/card.h"

#include "views/style/style.h"

#include <QLabel>
#include <QStyle>
#include <QVariant>
#include <QVBoxLayout>

namespace ts {

Card::Card(const QString &heading, QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("card"));
    m_heading = styledLabel("strong", heading, this);
    m_remark = styledLabel("quiet", {}, this);
    m_head = new QHBoxLayout;
    m_head->addWidget(m_heading);
    m_head->addStretch(1);
    m_head->addWidget(m_remark);
    m_body = new QVBoxLayout;
    m_body->setSpacing(gap::small);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::normal + 2, gap::normal, gap::normal + 2, gap::normal);
    column->setSpacing(gap::small);
    column->addLayout(m_head);
    column->addLayout(m_body);
    setHeading(heading);
    setRemark({});
}

void Card::setHeading(const QString &heading)
{
    m_heading->setText(heading);
    m_heading->setHidden(heading.isEmpty());
}

void Card::setRemark(const QString &remark)
{
    m_remark->setText(remark);
    m_remark->setHidden(remark.isEmpty());
}

QLabel *styledLabel(const char *role, const QString &text, QWidget *parent)
{
    auto *label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("role", QString::fromLatin1(role));
    return label;
}

QLabel *wrappedLabel(const char *role, const QString &text, QWidget *parent)
{
    QLabel *label = styledLabel(role, text, parent);
    label->setWordWrap(true);
    return label;
}

void restyle(QWidget *widget, const char *property, const QVariant &value)
{
    if (widget->property(property) == value)
        return;
    widget->setProperty(property, value);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

} // namespace ts
