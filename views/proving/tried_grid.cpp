#include "views/proving/tried_grid.h"

#include <QTimer>

namespace ts {

TriedGrid::TriedGrid(const Style &style, const QString &name, QList<GridColumn> columns, int found, int cameOut, Record record, QWidget *parent)
    : GridView(style, name, std::move(columns), parent), m_found(found), m_cameOut(cameOut), m_record(std::move(record))
{
    setCommit([this](const GridRow &row, int column, const QString &typed) { return commit(row, column, typed); });
    setLetterColumn(cameOut);
    setHomeColumn(found);
    // A letter whose words never came says nothing of the row at its next try.
    connect(this, &GridView::fieldClosed, this, [this] { QTimer::singleShot(0, this, [this] { if (!isEditing()) m_said.clear(); }); });
}

std::optional<QUuid> TriedGrid::commit(const GridRow &row, int column, const QString &typed)
{
    const QUuid key = row.key;
    if (column == m_cameOut) {
        m_said[key] = typed == QLatin1String("wrong") ? Said::Wrong : typed == QLatin1String("not_applicable") ? Said::NotApplicable : Said::Nothing;
        // The field opens once this commit is over.
        QTimer::singleShot(0, this, [this, key] { editAt(key, m_found); });
        return key;
    }
    if (column != m_found)
        return std::nullopt;
    const Said said = m_said.value(key, Said::Nothing);
    if (typed.trimmed().isEmpty() && said == Said::Nothing && rows().leaving())
        return key; // looked at and left
    return m_record(key, said, typed) ? std::optional(key) : std::nullopt;
}

QUuid rowKeyOf(const QString &word)
{
    return QUuid::createUuidV5(QUuid(), word);
}

} // namespace ts
