#include "model/exchange/notes_json.h"

#include "model/exchange/notes_json_form.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace ts {

namespace {

void put(QJsonObject &object, const char *key, const QString &text)
{
    if (!text.isEmpty())
        object.insert(QLatin1String(key), text);
}

template <class T>
void put(QJsonObject &object, const char *key, const std::optional<T> &number)
{
    if (number)
        object.insert(QLatin1String(key), *number);
}

template <class R, class Write>
QJsonArray listOf(const NotesFile &notes, Write write)
{
    QJsonArray list;
    for (const R &record : notes.all<R>()) {
        QJsonObject object;
        write(object, record);
        list << object;
    }
    return list;
}

QJsonArray checksOf(const NotesFile &notes)
{
    return listOf<KnownCheck>(notes, [&](QJsonObject &object, const KnownCheck &check) {
        put(object, "symptom", check.symptom);
        put(object, "text", check.text);
        put(object, "minutes", check.minutes);
        put(object, "wanted", check.wanted);
        QJsonArray marks;
        for (const KnownMark &mark : notes.all<KnownMark>())
            for (const KnownCause &cause : notes.all<KnownCause>())
                if (mark.check == check.id && mark.cause == cause.id)
                    marks << QJsonObject{{QStringLiteral("cause"), cause.text},
                                         {QStringLiteral("abnormal_if"), mark.abnormalIf},
                                         {QStringLiteral("abnormal_if_not"), mark.abnormalIfNot}};
        object.insert(QStringLiteral("bears_on"), marks);
    });
}

QJsonObject modelOf(const NotesFile &notes)
{
    QJsonObject model{{QStringLiteral("maker"), notes.notes.maker},
                      {QStringLiteral("maker_model"), notes.notes.makerModel},
                      {QStringLiteral("category"), toWord(notes.notes.category)}};
    for (const auto &[key, text] : notesform::texts())
        if (!(notes.notes.*text).isEmpty())
            model.insert(key, notes.notes.*text);
    model.insert(QStringLiteral("test_points"), listOf<TestPoint>(notes, [](QJsonObject &object, const TestPoint &point) {
                     put(object, "name", point.name);
                     put(object, "wanted", point.wanted.isNone() ? QString() : point.wanted.text());
                     put(object, "conditions", point.conditions);
                     put(object, "source", point.source);
                 }));
    model.insert(QStringLiteral("causes"), listOf<KnownCause>(notes, [](QJsonObject &object, const KnownCause &cause) {
                     put(object, "symptom", cause.symptom);
                     put(object, "text", cause.text);
                     put(object, "weight", cause.weight);
                     put(object, "fix_minutes", cause.fixMinutes);
                     put(object, "fix_odds", cause.fixOdds);
                     put(object, "note", cause.note);
                 }));
    model.insert(QStringLiteral("checks"), checksOf(notes));
    model.insert(QStringLiteral("comes_off"), listOf<KnownTeardown>(notes, [](QJsonObject &object, const KnownTeardown &step) {
                     put(object, "what", step.what);
                     put(object, "fasteners", step.fasteners);
                     put(object, "fastener_count", step.fastenerCount);
                     put(object, "connectors", step.connectors);
                     put(object, "springs", step.springs);
                     put(object, "marks", step.marks);
                     put(object, "caution", step.caution);
                 }));
    model.insert(QStringLiteral("known_parts"), listOf<KnownPart>(notes, [](QJsonObject &object, const KnownPart &part) {
                     put(object, "position", part.position);
                     put(object, "text", part.text);
                     put(object, "rating", part.rating);
                     object.insert(QStringLiteral("quantity"), part.quantity);
                     put(object, "note", part.note);
                 }));
    model.insert(QStringLiteral("proofs"), listOf<KnownProof>(notes, [](QJsonObject &object, const KnownProof &proof) {
                     put(object, "text", proof.text);
                     object.insert(QStringLiteral("kind"), toWord(proof.kind));
                 }));
    model.insert(QStringLiteral("papers"), listOf<KnownPaper>(notes, [](QJsonObject &object, const KnownPaper &paper) {
                     put(object, "title", paper.title);
                     put(object, "link", paper.link);
                 }));
    return model;
}

} // namespace

QByteArray notesJson(const QList<NotesFile> &notes)
{
    QJsonArray models;
    for (const NotesFile &each : notes)
        models << modelOf(each);
    return QJsonDocument(QJsonObject{{QStringLiteral("form"), notesform::name()},
                                     {QStringLiteral("edition"), notesform::edition},
                                     {QStringLiteral("models"), models}})
        .toJson(QJsonDocument::Indented);
}

} // namespace ts
