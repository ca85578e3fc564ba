#include "model/paper/order_sheet.h"

#include "model/paper/ink.h"
#include "model/paper/paper_files.h"
#include "model/paper/plain_words.h"
#include "model/paper/template_filler.h"
#include "model/paper/write_pdf.h"

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QList<Filling> linesOf(const QList<OrderFacts::Line> &lines)
{
    QList<Filling> list;
    for (const OrderFacts::Line &line : lines) {
        QList<Filling> look;
        for (const QString &text : line.look)
            look << Filling().put("text", isolated(text));
        list << Filling()
                    .put("pieces", line.pieces)
                    .put("what", isolated(line.what))
                    .put("rating", isolated(line.rating))
                    .put("units", isolated(line.units))
                    .put("each", line.each)
                    .put("sum", line.sum)
                    .put("look", look)
                    .put("place", isolated(line.place))
                    .put("due", line.due);
    }
    return list;
}

QList<Filling> ordersOf(const QList<OrderFacts::Order> &orders)
{
    QList<Filling> list;
    for (const OrderFacts::Order &order : orders)
        list << Filling()
                    .put("supplier", isolated(order.supplier))
                    .put("frees", order.frees)
                    .put("helps", isolated(order.helps))
                    .put("total", order.total)
                    .put("lines", linesOf(order.lines));
    return list;
}

Filling fillingOf(const OrderFacts &facts)
{
    Filling filling;
    for (const auto &[role, colour] : ink::roles)
        filling.texts.insert(u'@' + QLatin1String(role), QString::fromLatin1(colour));
    filling.put("sheet", sheetName(facts)).put("name", isolated(facts.title)).put("about", isolated(facts.about));
    filling.put("bench", facts.benchName).put("worker", facts.worker).put("date", facts.date);
    filling.put("shelf", linesOf(facts.shelf)).put("shelf_frees", facts.shelfFrees);
    filling.put("orders", ordersOf(facts.orders)).put("under_way", ordersOf(facts.underWay));
    return filling;
}

QString named(const OrderFacts &facts)
{
    return facts.tag.isEmpty() ? facts.title : facts.title + u", tag "_s + facts.tag;
}

} // namespace

QString sheetName(const OrderFacts &facts)
{
    return facts.number > 0 ? u"Order list %1, edition %2"_s.arg(facts.number).arg(facts.edition) : u"Order list, draft"_s;
}

QByteArray orderHtml(const OrderFacts &facts)
{
    return filled(paperFile(u"order.html"_s), fillingOf(facts)).toUtf8();
}

Expected<QByteArray> orderPdf(const OrderFacts &facts, PageSize size)
{
    const auto did = u"Cannot make the order list"_s;
    if (auto can = canDraw(did); !can)
        return can.trouble();
    const auto footer = u"Check size and rating of what arrives before it goes on the shelf."_s;
    const DocumentPages pages(filled(paperFile(u"order-print.html"_s), fillingOf(facts)),
                              {isolated(named(facts)) + u" · order list"_s, facts.date, footer, footer}, size);
    return writePdf({did, u"%1: %2"_s.arg(sheetName(facts), named(facts)), facts.madeAt, size, pages.count(),
                     [&pages](QPainter &painter, int number) { pages.paint(painter, number); }});
}

} // namespace ts
