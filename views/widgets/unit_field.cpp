#include "views/widgets/unit_field.h"

#include "model/records/tag_text.h"

#include <QCompleter>
#include <QStringListModel>

namespace ts {

UnitField::UnitField(Workplace &workplace, const QString &label, QWidget *parent) : QLineEdit(parent), m_work(workplace)
{
    setAccessibleName(label);
    setPlaceholderText(tr("tag or name"));
    auto *completer = new QCompleter(this);
    completer->setModel(new QStringListModel(completer));
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    setCompleter(completer);
    connect(this, &QLineEdit::returnPressed, this, &UnitField::choose);
}

void UnitField::focusInEvent(QFocusEvent *event)
{
    // The rack as it is now; it is asked for when somebody is about to choose and at no other time.
    if (const auto rack = m_work.desk().rack()) {
        QStringList units;
        units.reserve(rack->size());
        for (const RackRow &row : *rack)
            units << tagText(row.tag) + QLatin1Char(' ') + row.name;
        qobject_cast<QStringListModel *>(completer()->model())->setStringList(units);
    }
    QLineEdit::focusInEvent(event);
}

void UnitField::choose()
{
    const QString typed = text().simplified();
    if (typed.isEmpty())
        return;
    // A completed line begins with its tag; a name alone is taken where it is one unit's only.
    bool isTag = false;
    int tag = typed.section(QLatin1Char(' '), 0, 0).toInt(&isTag);
    if (!isTag) {
        const QStringList units = qobject_cast<QStringListModel *>(completer()->model())->stringList().filter(typed, Qt::CaseInsensitive);
        if (units.size() == 1)
            tag = units.first().section(QLatin1Char(' '), 0, 0).toInt(&isTag);
        if (!isTag)
            return m_work.refuse(units.isEmpty() ? tr("No unit is called “%1”.").arg(typed) : tr("“%1” names several units; choose one of them, or type its tag.").arg(typed));
    }
    const auto unit = m_work.desk().unitByTag(tag);
    if (!unit)
        return m_work.refuse(unit.trouble());
    clear();
    Q_EMIT chosen(*unit);
}

} // namespace ts
