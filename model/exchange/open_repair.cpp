#include "model/exchange/open_repair.h"

#include <QDate>
#include <QHash>

#include <algorithm>
#include <cmath>

namespace ts::openrepair {

const QStringList &columns()
{
    static const QStringList list =
        QStringLiteral("id,data_provider,country,partner_product_category,product_category,product_category_id,"
                       "brand,year_of_manufacture,product_age,repair_status,repair_barrier_if_end_of_life,"
                       "group_identifier,event_date,problem")
            .split(QLatin1Char(','));
    return list;
}

const QStringList &requiredColumns()
{
    static const QStringList list{QStringLiteral("id"), QStringLiteral("product_category"), QStringLiteral("repair_status"),
                                  QStringLiteral("event_date"), QStringLiteral("problem")};
    return list;
}

std::optional<Status> status(const QString &text)
{
    for (const Status each : {Status::Unknown, Status::Fixed, Status::Repairable, Status::EndOfLife})
        if (text.trimmed().compare(word(each), Qt::CaseInsensitive) == 0)
            return each;
    return std::nullopt;
}

QString word(Status status)
{
    switch (status) {
    case Status::Fixed:
        return QStringLiteral("Fixed");
    case Status::Repairable:
        return QStringLiteral("Repairable");
    case Status::EndOfLife:
        return QStringLiteral("End of life");
    case Status::Unknown:
        break;
    }
    return QStringLiteral("Unknown");
}

QString barrier(const QString &text)
{
    // Today's wording on the right; releases before 0.3 have the left one.
    static const QHash<QString, QString> wordings = [] {
        QHash<QString, QString> list{{QStringLiteral("item too worn out"), QStringLiteral("Product too worn out")},
                                     {QStringLiteral("no way to open the product"), QStringLiteral("No way to open product")}};
        for (const auto &each : {QStringLiteral("Spare parts not available"), QStringLiteral("Spare parts too expensive"),
                                 QStringLiteral("No way to open product"), QStringLiteral("Repair information not available"),
                                 QStringLiteral("Lack of equipment"), QStringLiteral("Product too worn out")})
            list.insert(each.toLower(), each);
        return list;
    }();
    return wordings.value(text.trimmed().toLower());
}

int categoryNumber(const QString &productCategory)
{
    // The code list of version 0.3; a category's number is its place.
    static const QHash<QString, int> numbers = [] {
        const QStringList names =
            QStringLiteral(
                "aircon/dehumidifier|battery/charger/adapter|decorative or safety lights|desktop computer|digital compact camera|"
                "dslr/video camera|fan|flat screen|hair & beauty item|handheld entertainment device|headphones|hi-fi integrated|"
                "hi-fi separates|kettle|lamp|laptop|large home electrical|misc|mobile|musical instrument|paper shredder|"
                "pc accessory|portable radio|power tool|printer/scanner|projector|sewing machine|small home electrical|"
                "small kitchen item|tablet|toaster|toy|tv and gaming-related accessories|vacuum|watch/clock|coffee maker|"
                "food processor|games console|hair dryer|iron")
                .split(QLatin1Char('|'));
        QHash<QString, int> list;
        for (qsizetype i = 0; i < names.size(); ++i)
            list.insert(names.at(i), static_cast<int>(i + 1));
        return list;
    }();
    return numbers.value(productCategory.trimmed().toLower().replace(QStringLiteral(" / "), QStringLiteral("/")));
}

Place place(Status status)
{
    switch (status) {
    case Status::Fixed:
        return {Stage::Closed, Outcome::ReturnedToOwner};
    case Status::EndOfLife:
        return {Stage::Closed, Outcome::Scrapped};
    case Status::Repairable:
        return {Stage::Held, std::nullopt};
    case Status::Unknown:
        break;
    }
    return {};
}

Made made(const SourceRecord &source)
{
    bool yearOk = false;
    bool ageOk = false;
    const int year = source.yearOfManufacture.trimmed().toInt(&yearOk);
    const double age = source.productAge.trimmed().toDouble(&ageOk);
    const QString ageText = ageOk ? QStringLiteral("said to be %1 years old").arg(source.productAge.trimmed()) : QString();
    if (yearOk)
        return {year, ageText};
    const QDate event = QDate::fromString(source.eventDate.trimmed(), Qt::ISODate);
    if (ageOk && event.isValid())
        return {event.year() - static_cast<int>(std::lround(age)), ageText};
    return {};
}

QString maker(const SourceRecord &source)
{
    const QString brand = source.brand.trimmed();
    return brand.compare(QLatin1String("unknown"), Qt::CaseInsensitive) == 0 ? QString() : brand;
}

} // namespace ts::openrepair
