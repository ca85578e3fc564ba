#include "model/exchange/workbook_json.h"

#include "model/records/all_records.h"
#include "model/records/tag_text.h"
#include "model/values/quoted.h"

#include <QIODevice>
#include <QJsonArray>
#include <QJsonDocument>
#include <QSet>

namespace ts {

namespace {

constexpr int formatVersion = 1;
constexpr qint64 longestFile = qint64(1) << 30; // the document is held in memory whole

QString formatName()
{
    return QStringLiteral("turnscrew-workbook");
}

class Reader {
public:
    explicit Reader(const QList<Setting> &settings)
    {
        for (const Setting &setting : settings)
            m_settings.insert(setting.name, setting);
        m_leftOut = {QString::fromLatin1(Photo::table), QString::fromLatin1(Paper::table)};
    }

    Imported imported;

    void take(const Kind &kind, const QJsonArray &list)
    {
        if (cannotStandAlone(kind))
            m_leftOut.insert(kind.table());
        QSet<QString> &ids = m_ids[kind.table()];
        qint64 leftOut = 0;
        for (qsizetype i = 0; i < list.size(); ++i) {
            const auto refuse = [&](const QString &wrong) {
                imported.problems.add(0, QStringLiteral("%1 number %2: %3").arg(kind.noun()).arg(i + 1).arg(wrong));
            };
            if (!list.at(i).isObject()) {
                refuse(QStringLiteral("it is no object"));
                continue;
            }
            auto row = kind.fromJson(list.at(i).toObject());
            if (!row) {
                refuse(row.trouble().sentence());
                continue;
            }
            (*row)[Kind::versionColumn] = QVariant(0LL);
            if (m_leftOut.contains(kind.table())) {
                ++leftOut;
                continue;
            }
            if (const auto reads = kind.reads(*row); !reads) {
                refuse(reads.trouble().sentence());
                continue;
            }
            const QString id = row->at(Kind::idColumn).toString();
            if (QUuid::fromString(id).isNull() || ids.contains(id)) {
                refuse(ids.contains(id) ? QStringLiteral("its id %1 stands twice").arg(id)
                                        : QStringLiteral("%1 is no id").arg(quoted(id)));
                continue;
            }
            ids.insert(id);
            if (const QString wrong = wrongReference(kind, *row); !wrong.isEmpty())
                refuse(wrong);
            else
                add(kind, *std::move(row), refuse);
        }
        if (leftOut > 0)
            imported.warnings.add(0,
                                  QStringLiteral("%1 of kind %2 left out: the pictures and papers themselves are not in the file")
                                      .arg(leftOut)
                                      .arg(kind.noun()));
    }

private:
    [[nodiscard]] bool cannotStandAlone(const Kind &kind) const
    {
        for (const FieldInfo &field : kind.fields())
            if (field.required && m_leftOut.contains(field.refersTo))
                return true;
        return false;
    }

    /// Empties references to what was left out; says which of the others point nowhere.
    [[nodiscard]] QString wrongReference(const Kind &kind, Row &row) const
    {
        for (qsizetype i = 0; i < row.size(); ++i) {
            const FieldInfo &field = kind.fields().at(i);
            if (field.refersTo.isEmpty() || row.at(i).isNull())
                continue;
            if (m_leftOut.contains(field.refersTo))
                row[i] = QVariant();
            else if (!m_ids.value(field.refersTo).contains(row.at(i).toString()))
                return QStringLiteral("its %1 is not in the file").arg(field.name);
        }
        return {};
    }

    template <class Refuse>
    void add(const Kind &kind, Row row, const Refuse &refuse)
    {
        if (const int tagColumn = kind.column(u"tag"); kind.table() == QLatin1String(Unit::table)) {
            const int tag = row.at(tagColumn).toInt();
            if (tag < 1 || m_tags.contains(tag))
                return refuse(QStringLiteral("its tag %1 is missing or stands twice").arg(tagText(tag)));
            m_tags.insert(tag);
        }
        std::optional<Row> before;
        if (kind.table() == QLatin1String(Setting::table)) {
            const auto there = m_settings.constFind(row.at(kind.column(u"name")).toString());
            if (there != m_settings.constEnd()) {
                before = description<Setting>().toRow(*there);
                const QVariant value = row.at(kind.column(u"value"));
                row = *before;
                row[kind.column(u"value")] = value;
                if (row == *before) {
                    ++imported.skipped;
                    return;
                }
            }
        }
        imported.change.addItem({&kind, std::move(before), std::move(row)});
        ++imported.added;
    }

    QHash<QString, Setting> m_settings;
    QSet<QString> m_leftOut;
    QHash<QString, QSet<QString>> m_ids;
    QSet<int> m_tags;
};

} // namespace

Expected<qint64> writeWorkbookJson(QIODevice &device, const RowsOf &rowsOf)
{
    qint64 written = 0;
    device.write("{\"format\": \"" + formatName().toUtf8() + "\", \"version\": " + QByteArray::number(formatVersion) +
                 ", \"records\": {");
    bool firstKind = true;
    for (const Kind *kind : allKinds()) {
        const auto rows = rowsOf(*kind);
        if (!rows)
            return rows.trouble();
        device.write((firstKind ? "\n\"" : ",\n\"") + kind->table().toUtf8() + "\": [");
        firstKind = false;
        const char *between = "\n";
        for (const Row &row : *rows) {
            device.write(between + QJsonDocument(kind->toJson(row)).toJson(QJsonDocument::Compact));
            between = ",\n";
            ++written;
        }
        device.write("]");
    }
    device.write("\n}}\n");
    return written;
}

Expected<Imported> readWorkbookJson(QIODevice &device, const QString &did, const QList<Setting> &settings)
{
    if (device.size() > longestFile)
        return Trouble{did, QStringLiteral("the file is longer than 1 GiB"), {}};
    const QByteArray bytes = device.readAll();
    if (bytes.trimmed().isEmpty())
        return Trouble{did, QStringLiteral("the file is empty"), {}};
    QJsonParseError error;
    const QJsonObject document = QJsonDocument::fromJson(bytes, &error).object();
    if (error.error != QJsonParseError::NoError)
        return Trouble{did,
                       QStringLiteral("line %1: this is no JSON (%2)")
                           .arg(bytes.left(error.offset).count('\n') + 1)
                           .arg(error.errorString()),
                       QStringLiteral("the file may be cut off")};
    if (document.value(QLatin1String("format")).toString() != formatName() ||
        !document.value(QLatin1String("records")).isObject())
        return Trouble{did, QStringLiteral("this JSON is no exported workbook"),
                       QStringLiteral("choose a file that was made by export --as json")};
    if (const int version = document.value(QLatin1String("version")).toInt(); version < 1 || version > formatVersion)
        return Trouble{did, QStringLiteral("the file is of version %1 and this program reads %2").arg(version).arg(formatVersion),
                       QStringLiteral("use the program that wrote it, or a newer one")};
    const QJsonObject records = document.value(QLatin1String("records")).toObject();
    Reader reader(settings);
    for (auto it = records.begin(); it != records.end(); ++it)
        if (kindNamed(it.key()) == nullptr || !it.value().isArray())
            reader.imported.problems.add(0, QStringLiteral("%1 is no kind of record").arg(quoted(it.key())));
    for (const Kind *kind : allKinds())
        reader.take(*kind, records.value(kind->table()).toArray());
    return std::move(reader.imported);
}

} // namespace ts
