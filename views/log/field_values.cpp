#include "model/records/columns.h"
#include "views/log/entry_fields.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/measured_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>

namespace ts {

namespace {

constexpr int mostPieces = 100000;

struct ValueWords {
    Q_DECLARE_TR_FUNCTIONS(ValueWords)
};

/// A column of a row, and those behind it that belong to it.
class Cells {
public:
    Cells(const Kind &kind, const QString &column) : m_at(kind.column(column)) {}
    template <class T>
    [[nodiscard]] std::optional<T> read(const Row &row) const
    {
        std::optional<T> value;
        int at = m_at;
        for (const ColumnPart &part : Columns<std::optional<T>>::list)
            if (!part.get(row.at(at++), &value))
                return std::nullopt;
        return value;
    }
    template <class T>
    void write(Row &row, const std::optional<T> &value) const
    {
        int at = m_at;
        for (const ColumnPart &part : Columns<std::optional<T>>::list)
            row[at++] = part.put(&value);
    }
    [[nodiscard]] const QVariant &plain(const Row &row) const { return row.at(m_at); }
    void set(Row &row, const QVariant &value) const { row[m_at] = value; }

private:
    int m_at;
};

/// The measure of the value that stands in the same row, for a limit or an uncertainty typed without one.
Measure measureOf(const Kind &kind, const Row &row)
{
    if (kind.column(u"value") < 0)
        return {};
    const auto value = Cells(kind, QStringLiteral("value")).read<Quantity>(row);
    return value ? value->measure() : Measure();
}

template <class T>
QVariant orNull(const std::optional<T> &value)
{
    return value ? QVariant::fromValue(*value) : QVariant();
}

Expected<QVariant> spreadOf(const QString &typed, const Measure &measure)
{
    if (typed.isEmpty())
        return QVariant();
    const auto spread = Quantity::parse(typed, measure);
    if (!spread)
        return spread.trouble();
    const auto same = spread->measure().isNone() ? *spread : spread->in(measure);
    if (!same)
        return same.trouble();
    if (same->value() < 0 || same->sense() != Sense::Plain)
        return Trouble{ValueWords::tr("%1 is no uncertainty").arg(typed), {}, {}};
    return QVariant(same->value());
}

} // namespace

QString fieldText(const Kind &kind, const Row &row, const EntryField &field)
{
    const Cells cells(kind, field.column);
    const QVariant &plain = cells.plain(row);
    if (plain.isNull() && field.form != FieldForm::Value)
        return {};
    switch (field.form) {
    case FieldForm::Minutes:
    case FieldForm::Count:
        return QLocale().toString(plain.toLongLong());
    case FieldForm::Share:
        return shown::number(plain.toDouble() * 100) + QStringLiteral(" %");
    case FieldForm::Spread:
        return shown::number(plain.toDouble());
    case FieldForm::Price: {
        const auto money = cells.read<Money>(row);
        return money ? shown::money(*money) : QString();
    }
    case FieldForm::Value: {
        const auto value = cells.read<Quantity>(row);
        return value ? shown::toType(*value) : QString();
    }
    case FieldForm::Wanted: {
        const auto limit = Limit::parse(plain.toString());
        return limit ? shown::toType(*limit) : plain.toString();
    }
    case FieldForm::Day:
        return QLocale().toString(QDate::fromString(plain.toString(), Qt::ISODate), QLocale::ShortFormat);
    case FieldForm::Line:
    case FieldForm::Long:
    case FieldForm::Instant:
    case FieldForm::Choice:
    case FieldForm::Symptom:
        break;
    }
    return plain.toString();
}

Expected<Row> withField(const Kind &kind, const Row &row, const EntryField &field, const QString &typed, const Currency &currency, QDate today)
{
    if (typed == fieldText(kind, row, field))
        return row; // what nobody touched stays to the last figure
    Row after = row;
    const Cells cells(kind, field.column);
    const QString text = typed.trimmed();
    const auto refused = [&](const Trouble &trouble) {
        return Trouble{ValueWords::tr("%1 was not changed").arg(field.label), trouble.wrong.isEmpty() ? trouble.did : trouble.did + QStringLiteral(", ") + trouble.wrong, trouble.todo};
    };
    // Takes what was understood, or says by the field's name why it was not.
    const auto take = [&](const auto &read, const QVariant &value) -> Expected<Row> {
        if (!read)
            return refused(read.trouble());
        cells.set(after, value);
        return after;
    };
    switch (field.form) {
    case FieldForm::Minutes: {
        const auto minutes = typed::minutesOrNone(text);
        return take(minutes, minutes && *minutes ? QVariant(static_cast<qlonglong>(**minutes)) : QVariant());
    }
    case FieldForm::Count: {
        const auto count = typed::whole(text, ValueWords::tr("number of pieces"), 1, mostPieces);
        return take(count, count ? QVariant(static_cast<qlonglong>(*count)) : QVariant());
    }
    case FieldForm::Share: {
        const auto share = typed::shareOrNone(text, ValueWords::tr("share"));
        return take(share, share ? orNull(*share) : QVariant());
    }
    case FieldForm::Spread: {
        const auto spread = spreadOf(text, measureOf(kind, row));
        return take(spread, spread ? *spread : QVariant());
    }
    case FieldForm::Wanted: {
        if (text.isEmpty())
            break;
        const auto limit = Limit::parse(text, measureOf(kind, row));
        return take(limit, limit ? QVariant(limit->text()) : QVariant());
    }
    case FieldForm::Day: {
        const auto day = typed::dayOrNone(text, today);
        return take(day, day && day->isValid() ? QVariant(day->toString(Qt::ISODate)) : QVariant());
    }
    case FieldForm::Price: {
        const auto before = cells.read<Money>(row);
        std::optional<Money> money;
        if (!text.isEmpty()) {
            const auto read = shown::parseMoney(text, before ? before->currency() : currency);
            if (!read)
                return refused(read.trouble());
            money = *read;
        }
        cells.write(after, money);
        return after;
    }
    case FieldForm::Value: {
        std::optional<Quantity> value;
        if (!text.isEmpty()) {
            const Measure usual = measureOf(kind, row);
            const auto read = Quantity::parse(text, usual);
            if (!read)
                return refused(read.trouble());
            const bool bare = read->measure().isNone() && read->sense() != Sense::OverRange;
            value = bare ? Quantity(read->value(), usual, read->sense()) : *read;
        }
        cells.write(after, value);
        return after;
    }
    case FieldForm::Instant:
    case FieldForm::Symptom:
        cells.set(after, text.isEmpty() ? QVariant() : QVariant(text));
        return after;
    case FieldForm::Line:
    case FieldForm::Long:
    case FieldForm::Choice:
        break;
    }
    cells.set(after, text.isEmpty() ? QStringLiteral("") : text);
    return after;
}

} // namespace ts
