#include "views/unit_text.h"

#include "model/records/tag_text.h"
#include "model/sums/cost_sheet.h"
#include "model/sums/standing.h"
#include "model/sums/timeline.h"
#include "views/style.h"

#include <QCoreApplication>
#include <QLocale>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("UnitText", text);
}

QColor verdictColour(Verdict verdict)
{
    return verdict == Verdict::Within ? ink().within : verdict == Verdict::Outside ? ink().outside : ink().tooClose;
}

QString line(const QString &text, const QColor &colour = ink().ink)
{
    return QStringLiteral("<p style='margin:2px 0; color:%1'>%2</p>").arg(colour.name(), text);
}

QString heading(const QString &text)
{
    return QStringLiteral("<p style='margin:12px 0 2px 0'><b>%1</b></p>").arg(text);
}

} // namespace

QString logHtml(const UnitFile &file, const BenchFile &bench)
{
    const QLocale locale;
    QString html = QStringLiteral("<h2 style='margin-bottom:2px'>%1</h2>").arg(file.unit.name.toHtmlEscaped());
    html += line(tagText(file.unit.tag) + (file.unit.serial.isEmpty() ? QString() : QStringLiteral(" · ") + file.unit.serial.toHtmlEscaped())
                     + (file.unit.mains.isEmpty() ? QString() : QStringLiteral(" · ") + file.unit.mains.toHtmlEscaped()),
                 ink().quiet);
    QDate day;
    for (const Event &event : timeline(file, bench)) {
        const QDateTime local = event.at.toLocalTime();
        if (local.date() != day) {
            day = local.date();
            html += heading(locale.toString(day, QLocale::LongFormat));
        }
        QString text = QStringLiteral("<span style='color:%1'>%2</span>&nbsp;&nbsp;<b>%3</b>").arg(ink().quiet.name(), local.toString(QStringLiteral("HH:mm")), event.text.toHtmlEscaped());
        if (event.verdict && *event.verdict != Verdict::NoLimit)
            text += QStringLiteral(" <span style='color:%1'>%2</span>").arg(verdictColour(*event.verdict).name(), verdictText(*event.verdict));
        html += line(text);
        if (!event.detail.isEmpty())
            html += QStringLiteral("<p style='margin:0 0 2px 52px; color:%1'>%2</p>").arg(ink().quiet.name(), event.detail.toHtmlEscaped());
    }
    return html;
}

QString standingHtml(const UnitFile &file, const BenchFile &bench, const QDateTime &now)
{
    const Standing stand = standing(file, bench);
    const CostSheet sheet = costSheet(file, bench, now);
    QString html;
    if (!stand.doNotPower.isEmpty())
        html += line(QStringLiteral("<b>%1 %2</b>").arg(tr("Do not power:"), stand.doNotPower.toHtmlEscaped()), ink().outside);
    if (!stand.next.isEmpty())
        html += line(tr("Next:") + QLatin1Char(' ') + stand.next.toHtmlEscaped());
    for (const TeardownItem &item : stand.loose)
        html += line(tr("Loose:") + QLatin1Char(' ') + item.what.toHtmlEscaped());
    html += heading(tr("As it stands"));
    for (const Symptom &symptom : stand.openSymptoms)
        html += line(tr("Open:") + QLatin1Char(' ') + symptom.text.toHtmlEscaped());
    for (const OutOfSpec &point : stand.outside)
        html += line(point.reading.name.toHtmlEscaped() + QStringLiteral(": ") + verdictText(Verdict::Outside), ink().outside);
    for (const Need &need : stand.awaited)
        html += line(tr("Awaited:") + QLatin1Char(' ') + need.text.toHtmlEscaped());
    html += line(tr("Hours:") + QLatin1Char(' ') + durationText(sheet.hours.minutes()));
    html += line(tr("Spent:") + QLatin1Char(' ') + sheet.spent.total.display());
    if (const auto price = sheet.toDate(CostKey::BreakEven))
        html += line(tr("Break-even price:") + QLatin1Char(' ') + price->display());
    if (!stand.cautions.isEmpty())
        html += heading(tr("Cautions"));
    for (const QString &caution : stand.cautions)
        html += line(caution.toHtmlEscaped(), ink().outside);
    return html;
}

} // namespace ts
