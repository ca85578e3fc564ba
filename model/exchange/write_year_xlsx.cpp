#include "model/exchange/year_files.h"

#include <QFile>
#include <QTemporaryDir>

#include <xlsxwriter.h>

#include <cmath>
#include <memory>

namespace ts {

namespace {

/// A workbook of sheets being written; closed by finish().
class Sheets {
public:
    explicit Sheets(const QByteArray &file, const Currency &currency) : m_file(file), m_decimals(currency.decimals())
    {
        lxw_workbook_options options{};
        options.constant_memory = LXW_FALSE;
        m_book = workbook_new_opt(m_file.constData(), &options);
        m_head = workbook_add_format(m_book);
        format_set_bold(m_head);
        format_set_bottom(m_head, LXW_BORDER_THIN);
        m_strong = workbook_add_format(m_book);
        format_set_bold(m_strong);
        const QByteArray pattern = "#,##0" + (m_decimals > 0 ? "." + QByteArray(m_decimals, '0') : QByteArray());
        m_money = workbook_add_format(m_book);
        format_set_num_format(m_money, pattern.constData());
        m_sum = workbook_add_format(m_book);
        format_set_num_format(m_sum, pattern.constData());
        format_set_bold(m_sum);
        format_set_top(m_sum, LXW_BORDER_THIN);
        m_day = workbook_add_format(m_book);
        format_set_num_format(m_day, "yyyy-mm-dd");
    }
    ~Sheets()
    {
        if (m_book)
            workbook_close(m_book);
    }
    Sheets(const Sheets &) = delete;
    Sheets &operator=(const Sheets &) = delete;

    void sheet(const char *name, const QStringList &heads, const QList<int> &widths)
    {
        m_sheet = workbook_add_worksheet(m_book, name);
        for (int i = 0; i < heads.size(); ++i) {
            worksheet_set_column(m_sheet, static_cast<lxw_col_t>(i), static_cast<lxw_col_t>(i), widths.value(i, 12), nullptr);
            worksheet_write_string(m_sheet, 0, static_cast<lxw_col_t>(i), heads.at(i).toUtf8().constData(), m_head);
        }
        worksheet_freeze_panes(m_sheet, 1, 0);
    }
    void text(int row, int column, const QString &text)
    {
        // A cell holds at most 32,767 characters (ISO/IEC 29500). Always text: nothing that somebody typed becomes a formula or a link.
        worksheet_write_string(m_sheet, at(row), col(column), text.left(32'000).toUtf8().constData(), nullptr);
    }
    void number(int row, int column, double value) { worksheet_write_number(m_sheet, at(row), col(column), value, nullptr); }
    void money(int row, int column, const std::optional<Money> &money)
    {
        if (money)
            worksheet_write_number(m_sheet, at(row), col(column), value(*money), m_money);
    }
    void day(int row, int column, const QDate &day)
    {
        if (!day.isValid())
            return;
        lxw_datetime when{day.year(), day.month(), day.day(), 0, 0, 0};
        worksheet_write_datetime(m_sheet, at(row), col(column), &when, m_day);
    }
    /// `result` is what the formula comes to, for readers that do not reckon.
    void formula(int row, int column, const QString &formula, const std::optional<Money> &result, bool total = false)
    {
        worksheet_write_formula_num(m_sheet, at(row), col(column), formula.toUtf8().constData(), total ? m_sum : m_money, result ? value(*result) : 0);
    }
    void strong(int row, int column, const QString &text) { worksheet_write_string(m_sheet, at(row), col(column), text.toUtf8().constData(), m_strong); }
    [[nodiscard]] bool finish() { return workbook_close(std::exchange(m_book, nullptr)) == LXW_NO_ERROR; }
    [[nodiscard]] int decimals() const { return m_decimals; }

private:
    static lxw_row_t at(int row) { return static_cast<lxw_row_t>(row); }
    static lxw_col_t col(int column) { return static_cast<lxw_col_t>(column); }
    [[nodiscard]] static double value(const Money &money) { return static_cast<double>(money.minor()) / std::pow(10.0, money.currency().decimals()); }

    QByteArray m_file;
    int m_decimals;
    lxw_workbook *m_book;
    lxw_worksheet *m_sheet = nullptr;
    lxw_format *m_head;
    lxw_format *m_strong;
    lxw_format *m_money;
    lxw_format *m_sum;
    lxw_format *m_day;
};

void writeLines(Sheets &out, const YearBooks &books)
{
    const QString code = books.currency.code();
    out.sheet("Ledger", {QStringLiteral("Day"), QStringLiteral("Tag"), QStringLiteral("Unit"), QStringLiteral("What"), QStringLiteral("With"), QStringLiteral("Kind"), QStringLiteral("Out ") + code,
                         QStringLiteral("In ") + code, QStringLiteral("Paid"), QStringLiteral("Currency")},
              {11, 7, 30, 40, 22, 16, 12, 12, 12, 10});
    int row = 1;
    for (const BookLine &line : books.lines) {
        out.day(row, 0, line.day);
        if (line.tag > 0)
            out.number(row, 1, line.tag);
        out.text(row, 2, line.unit);
        out.text(row, 3, line.text);
        out.text(row, 4, line.with);
        out.text(row, 5, toWord(line.kind).replace(QLatin1Char('_'), QLatin1Char(' ')));
        out.money(row, line.flow == Flow::Out ? 6 : 7, line.worth);
        out.money(row, 8, line.amount);
        out.text(row, 9, line.amount.currency().code());
        ++row;
    }
    out.strong(row, 3, QStringLiteral("Together"));
    if (row > 1) {
        out.formula(row, 6, QStringLiteral("=SUM(G2:G%1)").arg(row), books.out, true);
        out.formula(row, 7, QStringLiteral("=SUM(H2:H%1)").arg(row), books.in, true);
    }
}

void writeStock(Sheets &out, const YearBooks &books)
{
    const QString code = books.currency.code();
    out.sheet("Stock book", {QStringLiteral("Tag"), QStringLiteral("Unit"), QStringLiteral("Serial"), QStringLiteral("Bought from"), QStringLiteral("Bought on"), QStringLiteral("Bought for ") + code,
                             QStringLiteral("Gone on"), QStringLiteral("How"), QStringLiteral("To"), QStringLiteral("Sold for ") + code, QStringLiteral("Rate %"), QStringLiteral("Margin ") + code,
                             QStringLiteral("Tax in it ") + code, QStringLiteral("Other costs ") + code, QStringLiteral("Left ") + code},
              {7, 30, 16, 22, 11, 13, 11, 14, 20, 13, 8, 12, 12, 14, 12});
    int row = 1;
    for (const StockLine &line : books.stock) {
        const QString r = QString::number(row + 1);
        out.number(row, 0, line.tag);
        out.text(row, 1, line.name);
        out.text(row, 2, line.serial);
        out.text(row, 3, line.from);
        out.day(row, 4, line.boughtOn);
        out.money(row, 5, line.bought);
        out.day(row, 6, line.goneOn);
        out.text(row, 7, QString(line.how).replace(QLatin1Char('_'), QLatin1Char(' ')));
        out.text(row, 8, line.to);
        out.money(row, 9, line.sold);
        if (line.margin && line.rate) {
            out.number(row, 10, static_cast<double>(line.rate->millionths()) / 10'000);
            out.formula(row, 11, QStringLiteral("=MAX(0,J%1-F%1)").arg(r), std::max(line.margin->margin.minor(), qint64(0)) == 0 ? Money(0, books.currency) : line.margin->margin);
            out.formula(row, 12, QStringLiteral("=ROUND(L%1*K%1/(100+K%1),%2)").arg(r).arg(out.decimals()), line.margin->tax);
        }
        out.money(row, 13, line.costs);
        if (line.profit)
            out.formula(row, 14, QStringLiteral("=J%1-F%1-N%1-M%1").arg(r), line.profit);
        ++row;
    }
    out.strong(row, 1, QStringLiteral("Together"));
    if (row > 1) {
        out.formula(row, 11, QStringLiteral("=SUM(L2:L%1)").arg(row), books.margin, true);
        out.formula(row, 12, QStringLiteral("=SUM(M2:M%1)").arg(row), books.tax, true);
    }
}

void writeCosts(Sheets &out, const QList<UnitCosts> &costs, const QString &code)
{
    static const QList<CostKey> paid{CostKey::BoughtFor, CostKey::CarriageIn, CostKey::Parts, CostKey::Consumables, CostKey::OutsideWork, CostKey::Other, CostKey::Refunds, CostKey::Overhead};
    out.sheet("Cost sheets", {QStringLiteral("Tag"), QStringLiteral("Unit"), QStringLiteral("Stage"), QStringLiteral("Bought for"), QStringLiteral("Carriage in"), QStringLiteral("Parts"), QStringLiteral("Consumables"),
                              QStringLiteral("Outside work"), QStringLiteral("Other"), QStringLiteral("Refunds"), QStringLiteral("Bench overhead"), QStringLiteral("Spent ") + code, QStringLiteral("Selling fee"),
                              QStringLiteral("Carriage out"), QStringLiteral("Everything but hours"), QStringLiteral("Resale"), QStringLiteral("Profit before hours"), QStringLiteral("Hours"), QStringLiteral("Earned per hour")},
              {7, 30, 11, 11, 11, 11, 12, 12, 11, 11, 14, 12, 11, 12, 18, 11, 18, 9, 15});
    int row = 1;
    for (const UnitCosts &unit : costs) {
        const QString r = QString::number(row + 1);
        out.number(row, 0, unit.tag);
        out.text(row, 1, unit.name);
        out.text(row, 2, unit.stage);
        for (int i = 0; i < paid.size(); ++i)
            out.money(row, 3 + i, unit.sheet.toDate(paid.at(i)));
        out.formula(row, 11, QStringLiteral("=SUM(D%1:K%1)").arg(r), unit.sheet.toDate(CostKey::Spent));
        out.money(row, 12, unit.sheet.toDate(CostKey::SellingFee));
        out.money(row, 13, unit.sheet.toDate(CostKey::CarriageOut));
        out.formula(row, 14, QStringLiteral("=SUM(L%1:N%1)").arg(r), unit.sheet.toDate(CostKey::EverythingButHours));
        if (const auto resale = unit.sheet.toDate(CostKey::Resale)) {
            out.money(row, 15, resale);
            out.formula(row, 16, QStringLiteral("=P%1-O%1").arg(r), unit.sheet.toDate(CostKey::ProfitBeforeHours));
        }
        out.number(row, 17, unit.sheet.hours.minutes() / 60.0);
        if (unit.sheet.toDate(CostKey::EarnedPerHour))
            out.formula(row, 18, QStringLiteral("=IF(R%1>0,Q%1/R%1,\"\")").arg(r), unit.sheet.toDate(CostKey::EarnedPerHour));
        ++row;
    }
}

void writeAbout(Sheets &out, const YearBooks &books, const QString &bench)
{
    out.sheet("About", {QStringLiteral("About")}, {100});
    int row = 1;
    out.text(row++, 0, books.year > 0 ? QStringLiteral("Books of %1").arg(books.year) : QStringLiteral("Books of all years"));
    if (!bench.isEmpty())
        out.text(row++, 0, bench);
    out.text(row++, 0, QStringLiteral("All sums are in %1 but those under \"Paid\".").arg(books.currency.code()));
    if (books.withoutRate > 0)
        out.text(row++, 0, QStringLiteral("%1 sums in another currency have no rate and are in no total.").arg(books.withoutRate));
    out.text(row++, 0, QStringLiteral("Margin and the tax in it: one item at a time, sold less bought, a loss counts as nothing (Directive 2006/112/EC, articles 312 to 325). Rates and rules are yours to set; this is no tax advice."));
    out.text(row++, 0, QStringLiteral("Sums, margin, profit and earned per hour are formulas: change a figure and they follow."));
}

} // namespace

Expected<QByteArray> yearSpreadsheet(const YearBooks &books, const QList<UnitCosts> &costs, const QString &bench)
{
    const QString did = QStringLiteral("Cannot make the spreadsheet");
    const QTemporaryDir folder;
    if (!folder.isValid())
        return Trouble{did, folder.errorString(), {}};
    const QString name = folder.filePath(QStringLiteral("year.xlsx"));
    {
        Sheets out(QFile::encodeName(name), books.currency);
        writeLines(out, books);
        writeStock(out, books);
        writeCosts(out, costs, books.currency.code());
        writeAbout(out, books, bench);
        if (!out.finish())
            return Trouble{did, QStringLiteral("it could not be written"), QStringLiteral("is there room on the disk?")};
    }
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return Trouble{did, file.errorString(), {}};
    return file.readAll();
}

} // namespace ts
