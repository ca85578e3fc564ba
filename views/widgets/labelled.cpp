#include "views/widgets/labelled.h"

#include "views/widgets/card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ts {

namespace {

QVBoxLayout *columnUnder(const QString &label, QWidget *field, QWidget *parent, const char *role)
{
    auto *both = new QWidget(parent);
    auto *name = styledLabel(role, label, both);
    name->setBuddy(field);
    field->setAccessibleName(label);
    auto *column = new QVBoxLayout(both);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(name);
    return column;
}

} // namespace

QWidget *labelled(const QString &label, QWidget *field, QWidget *parent, const char *role)
{
    QVBoxLayout *column = columnUnder(label, field, parent, role);
    column->addWidget(field);
    return column->parentWidget();
}

QWidget *labelled(const QString &label, QWidget *field, QLayout *row, QWidget *parent, const char *role)
{
    QVBoxLayout *column = columnUnder(label, field, parent, role);
    column->addLayout(row);
    return column->parentWidget();
}

} // namespace ts
