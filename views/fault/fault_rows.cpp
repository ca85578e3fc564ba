#include "views/fault/fault_rows.h"

#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

constexpr int longestHead = 9; // letters: more would make the columns of marks wider than the marks need

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

GridRow causeRow(const BoardCause &cause)
{
    GridRow row{.key = cause.id.value, .name = cause.id.isNull() ? QStringLiteral("something else") : QString()};
    GridCell name = cause.somethingElse ? shownCell(tr("Something else")) : typedCell(cause.text);
    name.strong = true;
    name.struck = cause.state == CauseState::RuledOut;
    name.second = cause.reason;
    GridCell bar;
    bar.bar = GridBar{cause.before, cause.now};
    bar.spoken = tr("before %1, now %2").arg(shown::percent(cause.before), shown::percent(cause.now));
    bar.tip = bar.spoken;
    GridCell now = shownCell(shown::percent(cause.now));
    GridCell weight = typedCell(shown::percent(cause.before), shown::percent(cause.before));
    weight.quiet = !cause.weightTyped;
    weight.tip = cause.weightTyped ? QString() : tr("not typed: its share of what the typed weights leave");
    GridCell state = cause.somethingElse && cause.id.isNull() ? shownCell({}) : typedCell(causeStateText(cause.state), toWord(cause.state));
    if (!state.text.isEmpty())
        state.pill = cause.state == CauseState::Confirmed ? Tone::Copper : Tone::Neutral;
    const QString putRight = putRightText(cause);
    row.cells = {name, bar, now, weight, state, typedCell(putRight)};
    return row;
}

} // namespace

QString causeStateText(CauseState state)
{
    switch (state) {
    case CauseState::RuledOut:
        return tr("ruled out");
    case CauseState::Confirmed:
        return tr("confirmed");
    case CauseState::Open:
        break;
    }
    return tr("open");
}

QString cameOutText(CameOut cameOut)
{
    switch (cameOut) {
    case CameOut::Normal:
        return tr("normal");
    case CameOut::Abnormal:
        return tr("abnormal");
    case CameOut::Unclear:
        return tr("unclear");
    case CameOut::NotDone:
        break;
    }
    return tr("not done");
}

QString putRightText(const BoardCause &cause)
{
    QStringList words;
    if (cause.fixMinutes)
        words << tr("%1 m").arg(shown::count(*cause.fixMinutes));
    if (cause.fixCost)
        words << shown::money(*cause.fixCost);
    if (cause.fixOdds && *cause.fixOdds < 1)
        words << shown::percent(*cause.fixOdds);
    return words.join(QStringLiteral(" · "));
}

Expected<PutRight> parsePutRight(const QString &typed, const Currency &currency)
{
    PutRight found;
    static const QRegularExpression beforeUnit(QStringLiteral("(\\d)\\s+(m|min|h|%)(?=$|[\\s·])"));
    static const QRegularExpression afterHours(QStringLiteral("(\\d\\s?h)\\s+(\\d)"));
    QString text = typed;
    text.replace(QLatin1Char(','), QLatin1Char('.'));
    text.replace(beforeUnit, QStringLiteral("\\1\\2"));
    text.replace(afterHours, QStringLiteral("\\1\\2"));
    text.replace(QStringLiteral("·"), QStringLiteral(" "));
    static const QRegularExpression time(QStringLiteral("^\\d+(m|min|h|h\\d+m?)$"));
    for (const QString &piece : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (piece.endsWith(QLatin1Char('%'))) {
            const auto share = typed::shareOrNone(piece, tr("chance that it can be had"));
            if (!share)
                return share.trouble();
            found.odds = *share;
        } else if (time.match(piece).hasMatch()) {
            const auto minutes = typed::minutesOrNone(piece);
            if (!minutes)
                return minutes.trouble();
            found.minutes = *minutes;
        } else {
            const auto cost = shown::parseMoney(piece, currency);
            if (!cost || cost->minor() < 0)
                return Trouble{tr("\"%1\" is no time, no price and no chance").arg(piece.left(40)), {}, tr("type it like 55m 28 80%")};
            found.cost = *cost;
        }
    }
    return found;
}

QString shortName(const QString &cause)
{
    const QString text = cause.simplified();
    static const QRegularExpression place(QStringLiteral("\\b[A-Z]{1,3}\\d{1,4}\\b"));
    if (const auto match = place.match(text); match.hasMatch())
        return match.captured();
    const QString first = text.section(QLatin1Char(' '), 0, 0);
    return (first.size() >= 3 ? first : text).left(longestHead);
}

// Where short names are the same, the first word that tells the causes apart stands below them; where none does, they are counted.
QStringList markHeads(const QStringList &causes)
{
    QStringList heads;
    for (const QString &cause : causes)
        heads << shortName(cause);
    const QStringList shorts = heads;
    for (qsizetype i = 0; i < causes.size(); ++i) {
        if (shorts.count(shorts.at(i)) < 2)
            continue;
        for (const QString &word : causes.at(i).simplified().split(QLatin1Char(' ')).mid(1)) {
            const bool shared = std::any_of(causes.begin(), causes.end(), [&](const QString &other) {
                return &other != &causes.at(i) && shortName(other) == shorts.at(i) && other.simplified().split(QLatin1Char(' ')).contains(word);
            });
            if (word.size() < 3 || shared)
                continue;
            heads[i] += QLatin1Char('\n') + word.left(longestHead);
            break;
        }
    }
    QHash<QString, int> seen;
    for (QString &head : heads)
        if (const int count = ++seen[head]; count > 1)
            head += QStringLiteral(" %1").arg(count);
    return heads;
}

QList<GridColumn> causeColumns()
{
    const QList<GridChoice> states{{toWord(CauseState::Open), causeStateText(CauseState::Open), u'o'},
                                   {toWord(CauseState::RuledOut), causeStateText(CauseState::RuledOut), u'r'},
                                   {toWord(CauseState::Confirmed), causeStateText(CauseState::Confirmed), u'c'}};
    return {{.title = tr("Possible cause"), .width = 14, .stretch = 5},
            {.title = tr("Before, now"), .width = 9, .stretch = 2},
            {.title = tr("Now"), .width = 5, .right = true},
            {.title = tr("Weight"), .width = 6, .right = true},
            {.title = tr("State"), .width = 8, .choices = states},
            {.title = tr("To put right"), .width = 11, .stretch = 2, .right = true}};
}

QList<GridRow> causeRows(const FaultBoard &board)
{
    QList<GridRow> rows;
    for (const BoardCause &cause : board.causes)
        rows << causeRow(cause);
    GridCell adding = typedCell(tr("Add a possible cause"), {});
    adding.quiet = true;
    rows << GridRow{.kind = GridRowKind::Adding, .name = QStringLiteral("cause"), .cells = {adding}};
    return rows;
}

QList<qsizetype> markOrder(const FaultBoard &board)
{
    QList<qsizetype> order;
    for (qsizetype i = 0; i < board.causes.size(); ++i)
        order << i;
    // Ids ascend by the time they were made (RFC 9562).
    std::stable_sort(order.begin(), order.end(), [&board](qsizetype a, qsizetype b) {
        const BoardCause &one = board.causes.at(a);
        const BoardCause &other = board.causes.at(b);
        return one.somethingElse != other.somethingElse ? other.somethingElse : one.id < other.id;
    });
    return order;
}

QList<GridColumn> checkColumns(const FaultBoard &board)
{
    QList<GridColumn> columns{{.title = tr("Check"), .width = 13, .stretch = 3}, {.title = tr("Min"), .width = 3, .right = true}};
    const QList<qsizetype> order = markOrder(board);
    QStringList texts;
    for (const qsizetype place : order)
        texts << (board.causes.at(place).somethingElse ? tr("Else") : board.causes.at(place).text);
    const QStringList heads = markHeads(texts);
    for (qsizetype i = 0; i < order.size(); ++i) {
        double longest = 0;
        for (const QString &line : heads.at(i).split(QLatin1Char('\n')))
            longest = std::max(longest, static_cast<double>(line.size()));
        columns << GridColumn{.title = heads.at(i), .width = std::max(5.0, longest + 2), .middle = true, .tip = board.causes.at(order.at(i)).text};
    }
    columns << GridColumn{.title = tr("Came out"),
                          .width = 11,
                          .stretch = 4,
                          .choices = {{toWord(CameOut::Normal), cameOutText(CameOut::Normal), u'n'},
                                      {toWord(CameOut::Abnormal), cameOutText(CameOut::Abnormal), u'a'},
                                      {toWord(CameOut::Unclear), cameOutText(CameOut::Unclear), u'u'},
                                      {toWord(CameOut::NotDone), cameOutText(CameOut::NotDone), u'd'}}};
    return columns;
}

QList<GridRow> checkRows(const FaultBoard &board)
{
    QList<GridRow> rows;
    for (const BoardCheck &check : board.checks) {
        GridRow row{.key = check.id.value};
        GridCell minutes = typedCell(check.minutes ? shown::count(*check.minutes) : QString());
        row.cells = {typedCell(check.text), minutes};
        for (const qsizetype i : markOrder(board)) {
            const BoardMark &mark = check.marks.at(i);
            GridCell cell = shownCell(mark.marked() ? QStringLiteral("●") : QStringLiteral("·"));
            cell.toggle = !board.causes.at(i).id.isNull();
            cell.quiet = !mark.marked();
            cell.spoken = mark.marked() ? tr("bears on %1").arg(board.causes.at(i).text) : tr("no bearing on %1").arg(board.causes.at(i).text);
            cell.tip = mark.marked() ? tr("If this were the cause it would come out abnormal with %1").arg(shown::percent(mark.abnormal)) : board.causes.at(i).text;
            row.cells << cell;
        }
        GridCell cameOut = typedCell(check.cameOut == CameOut::NotDone ? QStringLiteral("—") : cameOutText(check.cameOut), toWord(check.cameOut));
        cameOut.spoken = cameOutText(check.cameOut);
        if (check.cameOut != CameOut::NotDone)
            cameOut.pill = check.cameOut == CameOut::Normal ? Tone::Within : check.cameOut == CameOut::Abnormal ? Tone::Outside : Tone::TooClose;
        if (cameOut.pill)
            cameOut.after = check.result;
        row.cells << cameOut;
        rows << row;
    }
    GridCell adding = typedCell(tr("Add a check: swap head leads 5m"), {});
    adding.quiet = true;
    adding.spoken = tr("Add a check");
    rows << GridRow{.kind = GridRowKind::Adding, .name = QStringLiteral("check"), .cells = {adding}};
    return rows;
}

} // namespace ts
