#include "model/exchange/notes_json.h"

#include "model/exchange/notes_json_form.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

constexpr qsizetype most = 10'000;

/// Reads one model; the first thing that makes no sense is kept and ends it.
class ModelReader {
public:
    ModelReader(const QJsonObject &model, Maker &maker) : m_model(model), m_maker(maker) {}

    Expected<NotesFile> read()
    {
        m_notes.notes = m_maker.fresh<ModelNotes>();
        m_notes.notes.maker = text(m_model, "maker");
        m_notes.notes.makerModel = text(m_model, "maker_model");
        for (const auto &[key, member] : notesform::texts())
            m_notes.notes.*member = m_model.value(key).toString();
        const auto category = parseWord<Category>(text(m_model, "category"), QStringLiteral("category"));
        if (!category)
            return wrong(category.trouble().did);
        m_notes.notes.category = *category;
        readPoints();
        readFaults();
        readWork();
        return m_trouble ? Expected<NotesFile>(*m_trouble) : Expected<NotesFile>(m_notes);
    }

private:
    [[nodiscard]] Trouble wrong(const QString &what) const
    {
        return Trouble{
            QStringLiteral("Cannot read the notes on %1 %2").arg(m_notes.notes.maker, m_notes.notes.makerModel).simplified(),
            what,
            {}};
    }
    void fail(const QString &what)
    {
        if (!m_trouble)
            m_trouble = wrong(what);
    }
    static QString text(const QJsonObject &object, const char *key)
    {
        return object.value(QLatin1String(key)).toString().trimmed();
    }

    std::optional<int> whole(const QJsonObject &object, const char *key)
    {
        const QJsonValue value = object.value(QLatin1String(key));
        if (value.isUndefined() || value.isNull())
            return std::nullopt;
        const double number = value.toDouble(-1);
        if (!(number >= 0 && number <= 1e6))
            fail(QStringLiteral("%1 is no number from 0 up").arg(QLatin1String(key)));
        return static_cast<int>(std::lround(std::clamp(number, 0.0, 1e6)));
    }
    std::optional<double> chance(const QJsonObject &object, const char *key)
    {
        const QJsonValue value = object.value(QLatin1String(key));
        if (value.isUndefined() || value.isNull())
            return std::nullopt;
        const double number = value.toDouble(-1);
        if (!(number >= 0 && number <= 1))
            fail(QStringLiteral("%1 is no chance from 0 to 1").arg(QLatin1String(key)));
        return number;
    }
    /// Calls with each object of a list and a fresh record that is of these notes.
    template <class R, class Take>
    void each(const char *key, Take take)
    {
        const QJsonArray list = m_model.value(QLatin1String(key)).toArray();
        if (list.size() > most)
            fail(QStringLiteral("it has more than %1 entries").arg(most));
        for (qsizetype i = 0; i < list.size() && !m_trouble; ++i) {
            R record = m_maker.fresh<R>();
            record.modelNotes = m_notes.notes.id;
            take(record, list.at(i).toObject(), static_cast<int>(i) + 1);
            m_notes.all<R>() << record;
        }
    }
    QString needed(const QJsonObject &object, const char *key, const char *what)
    {
        QString said = text(object, key);
        if (said.isEmpty())
            fail(QStringLiteral("a %1 has no text").arg(QLatin1String(what)));
        return said;
    }

    void readPoints()
    {
        each<TestPoint>("test_points", [this](TestPoint &point, const QJsonObject &object, int position) {
            point.name = needed(object, "name", "test point");
            point.conditions = text(object, "conditions");
            point.source = text(object, "source");
            point.position = position;
            if (const QString wanted = text(object, "wanted"); !wanted.isEmpty()) {
                auto limit = Limit::parse(wanted);
                if (limit)
                    point.wanted = *std::move(limit);
                else
                    fail(QStringLiteral("%1: %2").arg(point.name, limit.trouble().sentence()));
            }
        });
    }
    void readFaults()
    {
        each<KnownCause>("causes", [this](KnownCause &cause, const QJsonObject &object, int) {
            cause.text = needed(object, "text", "cause");
            cause.symptom = text(object, "symptom");
            cause.weight = chance(object, "weight");
            cause.fixMinutes = whole(object, "fix_minutes");
            cause.fixOdds = chance(object, "fix_odds");
            cause.note = text(object, "note");
        });
        each<KnownCheck>("checks", [this](KnownCheck &check, const QJsonObject &object, int) {
            check.text = needed(object, "text", "check");
            check.symptom = text(object, "symptom");
            check.minutes = whole(object, "minutes");
            check.wanted = text(object, "wanted");
            for (const QJsonValue &each : object.value(QLatin1String("bears_on")).toArray())
                readMark(check, each.toObject());
        });
    }
    void readMark(const KnownCheck &check, const QJsonObject &object)
    {
        const QString named = text(object, "cause");
        KnownMark mark = m_maker.fresh<KnownMark>();
        mark.modelNotes = m_notes.notes.id;
        mark.check = check.id;
        for (const KnownCause &cause : m_notes.all<KnownCause>())
            if (cause.text == named && cause.symptom == check.symptom)
                mark.cause = cause.id;
        if (mark.cause.isNull())
            fail(QStringLiteral("\"%1\" bears on \"%2\", which is no cause of that symptom").arg(check.text, named));
        mark.abnormalIf = chance(object, "abnormal_if").value_or(mark.abnormalIf);
        mark.abnormalIfNot = chance(object, "abnormal_if_not").value_or(mark.abnormalIfNot);
        m_notes.all<KnownMark>() << mark;
    }
    void readWork()
    {
        each<KnownTeardown>("comes_off", [this](KnownTeardown &step, const QJsonObject &object, int position) {
            step.position = position;
            step.what = needed(object, "what", "teardown step");
            step.fasteners = text(object, "fasteners");
            step.fastenerCount = whole(object, "fastener_count");
            step.connectors = text(object, "connectors");
            step.springs = text(object, "springs");
            step.marks = text(object, "marks");
            step.caution = text(object, "caution");
        });
        each<KnownPart>("known_parts", [this](KnownPart &part, const QJsonObject &object, int) {
            part.position = text(object, "position");
            part.text = needed(object, "text", "part");
            part.rating = text(object, "rating");
            part.quantity = whole(object, "quantity").value_or(1);
            part.note = text(object, "note");
        });
        each<KnownProof>("proofs", [this](KnownProof &proof, const QJsonObject &object, int position) {
            proof.position = position;
            proof.text = needed(object, "text", "proof");
            const auto kind = parseWord<ProofKind>(text(object, "kind"), QStringLiteral("kind of proof"));
            if (kind)
                proof.kind = *kind;
            else
                fail(kind.trouble().did);
        });
        each<KnownPaper>("papers", [this](KnownPaper &paper, const QJsonObject &object, int) {
            paper.title = needed(object, "title", "paper");
            paper.link = text(object, "link");
        });
    }

    const QJsonObject m_model;
    Maker &m_maker;
    NotesFile m_notes;
    std::optional<Trouble> m_trouble;
};

} // namespace

Expected<QList<NotesFile>> readNotesJson(const QByteArray &json, Maker &maker)
{
    const QString did = QStringLiteral("Cannot read the model notes");
    QJsonParseError error;
    const QJsonObject document = QJsonDocument::fromJson(json, &error).object();
    if (error.error != QJsonParseError::NoError)
        return Trouble{did, QStringLiteral("the file is no JSON (%1 at byte %2)").arg(error.errorString()).arg(error.offset), {}};
    if (document.value(QLatin1String("form")).toString() != notesform::name())
        return Trouble{did, QStringLiteral("the file holds something else"),
                       QStringLiteral("choose a file that was exported as model-notes")};
    if (document.value(QLatin1String("edition")).toInt() > notesform::edition)
        return Trouble{did, QStringLiteral("it comes from a later program"), QStringLiteral("bring this program up to date")};
    const QJsonArray models = document.value(QLatin1String("models")).toArray();
    if (models.isEmpty() || models.size() > most)
        return Trouble{did, QStringLiteral("it holds no model"), {}};
    QList<NotesFile> all;
    for (const QJsonValue &model : models) {
        auto notes = ModelReader(model.toObject(), maker).read();
        if (!notes)
            return notes.trouble();
        all << *std::move(notes);
    }
    return all;
}

} // namespace ts
