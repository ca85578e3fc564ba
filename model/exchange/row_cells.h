#pragma once

#include "model/exchange/cell_values.h"
#include "model/exchange/line_list.h"
#include "model/exchange/list_columns.h"
#include "model/values/money.h"
#include "model/values/quoted.h"
#include "model/values/words.h"

namespace ts {

/// One row of a list, read cell by cell; what cannot be read is noted by line and column, and the row with it.
class RowCells {
public:
    RowCells(const ListColumns &columns, const QStringList &cells, qint64 line, LineList &problems)
        : m_columns(columns), m_cells(cells), m_line(line), m_problems(problems)
    {
    }

    [[nodiscard]] bool good() const { return m_good; }
    [[nodiscard]] QString text(const char *column) const { return m_columns.cell(m_cells, column); }
    void refuse(const char *column, const QString &wrong)
    {
        m_good = false;
        m_problems.add(m_line, column == nullptr ? wrong : m_columns.shown(column) + QStringLiteral(": ") + wrong);
    }

    /// The value that `read` makes of the cell; nothing where the cell is empty or was refused.
    template <class Read>
    [[nodiscard]] auto value(const char *column, Read read) -> std::optional<std::decay_t<decltype(*read(QString()))>>
    {
        const QString written = text(column);
        if (written.isEmpty())
            return std::nullopt;
        auto result = read(written);
        if (result)
            return *std::move(result);
        QString sentence = result.trouble().sentence();
        if (sentence.endsWith(QLatin1Char('.')))
            sentence.chop(1);
        refuse(column, sentence);
        return std::nullopt;
    }
    template <class E>
    [[nodiscard]] std::optional<E> word(const char *column)
    {
        return value(column, [&](const QString &written) { return parseWord<E>(written, QString::fromLatin1(column)); });
    }
    [[nodiscard]] std::optional<QDate> day(const char *column) { return value(column, dayFromCell); }
    [[nodiscard]] std::optional<bool> yesNo(const char *column) { return value(column, yesNoFromCell); }
    /// An amount not below zero.
    [[nodiscard]] std::optional<Money> amount(const char *column, const Currency &currency)
    {
        const auto money = value(column, [&](const QString &written) { return Money::parse(written, currency); });
        if (money && money->minor() < 0)
            refuse(column, quoted(text(column)) + QStringLiteral(" is below zero"));
        return money;
    }

private:
    const ListColumns &m_columns;
    const QStringList &m_cells;
    qint64 m_line;
    LineList &m_problems;
    bool m_good = true;
};

} // namespace ts
