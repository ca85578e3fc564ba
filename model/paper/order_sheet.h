#pragma once

#include "model/paper/document_pages.h"
#include "model/records/unit_file.h"
#include "model/sums/parts/order_list.h"
#include "model/values/expected.h"

namespace ts {

/// Everything that an order list says on paper, as plain text.
struct OrderFacts {
    struct Line {
        QString pieces;
        QString what;
        QString rating;
        QString units; ///< "0042 at C214, 0035"
        QString each;
        QString sum;
        QStringList look; ///< what of the shelf might do
        QString place;    ///< where it lies, of the shelf
        QString due;
    };
    struct Order {
        QString supplier;
        QString frees; ///< "frees 0042 and 0035"
        QString helps; ///< "0029 waits for a relay as well"
        QString total;
        QList<Line> lines;
    };
    int number = 0; ///< of the paper; 0: a draft
    int edition = 0;
    QDateTime madeAt;
    QString tag;   ///< empty: of the whole workbook
    QString title; ///< the unit's name, or what it is of
    QString about; ///< identity of the unit, or how many units wait
    QString benchName;
    QString worker;
    QString date;
    QList<Line> shelf;
    QString shelfFrees;
    QList<Order> orders;
    QList<Order> underWay;
};

/// The facts of a list. `unit`: nullptr for all units together. Refused where nothing is needed.
[[nodiscard]] Expected<OrderFacts> gatherOrder(const OrderList &list, const Unit *unit, const BenchFile &bench, const QDateTime &now);

/// "Order list 3, edition 1"; without a number it says that it is a draft.
[[nodiscard]] QString sheetName(const OrderFacts &facts);
/// The list as one web page that needs no other file. UTF-8.
[[nodiscard]] QByteArray orderHtml(const OrderFacts &facts);
/// The list as a PDF with its fonts inside; the same facts give the same bytes. Refuses where there is no QGuiApplication.
[[nodiscard]] Expected<QByteArray> orderPdf(const OrderFacts &facts, PageSize size);

} // namespace ts
