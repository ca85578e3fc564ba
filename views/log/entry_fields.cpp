#include "views/log/entry_fields.h"

#include <QCoreApplication>

namespace ts {

namespace {

struct FieldWords {
    Q_DECLARE_TR_FUNCTIONS(FieldWords)
public:
    using Fields = QList<EntryField>;
    static EntryField field(const char *column, const QString &label, FieldForm form = FieldForm::Line) { return {QString::fromLatin1(column), label, form}; }
    static EntryField when() { return field("at", tr("When"), FieldForm::Instant); }

    static EntryField ofSymptom() { return field("symptom", tr("For"), FieldForm::Symptom); }

    static Fields reading()
    {
        return {field("name", tr("Where")),
                field("value", tr("Reading"), FieldForm::Value),
                field("wanted", tr("Wanted"), FieldForm::Wanted),
                field("uncertainty", tr("± 95 %"), FieldForm::Spread),
                field("phase", tr("Phase"), FieldForm::Choice),
                field("conditions", tr("Conditions")),
                when()};
    }
    static Fields cause(bool settled)
    {
        if (settled)
            return {field("text", tr("Cause"), FieldForm::Long), field("reason", tr("Because"), FieldForm::Long), ofSymptom(), field("settled_at", tr("When"), FieldForm::Instant)};
        return {field("text", tr("Cause"), FieldForm::Long),
                field("weight", tr("Weight"), FieldForm::Share),
                field("fix_minutes", tr("Time to fix"), FieldForm::Minutes),
                field("fix_cost", tr("Cost to fix"), FieldForm::Price),
                field("fix_odds", tr("Odds of the fix"), FieldForm::Share),
                ofSymptom(),
                when()};
    }
    static Fields need(bool later)
    {
        Fields fields{field("text", tr("Part"), FieldForm::Long),
                      field("quantity", tr("Pieces"), FieldForm::Count),
                      field("price", tr("Price each"), FieldForm::Price),
                      field("state", tr("State"), FieldForm::Choice),
                      field("position", tr("Where")),
                      field("old_value", tr("In place of")),
                      field("supplier", tr("From")),
                      field("due", tr("Due"), FieldForm::Day),
                      ofSymptom()};
        fields << (later ? field("state_since", tr("Since"), FieldForm::Instant) : when());
        return fields;
    }
    static Fields check(bool came)
    {
        Fields fields{field("text", tr("Check"), FieldForm::Long), field("minutes", tr("Minutes"), FieldForm::Minutes), field("came_out", tr("Came out"), FieldForm::Choice),
                      field("result", tr("Result")), ofSymptom()};
        fields << (came ? field("done_at", tr("When"), FieldForm::Instant) : when());
        return fields;
    }
    static Fields teardown(bool back)
    {
        if (back)
            return {field("what", tr("What")), field("left_out_because", tr("Left out because")), field("back_at", tr("When"), FieldForm::Instant)};
        return {field("what", tr("What came off"), FieldForm::Long), field("fasteners", tr("Fasteners")), field("kept_in", tr("Kept in")), field("connectors", tr("Connectors")),
                field("springs", tr("Springs, washers")), field("marks", tr("Marks made")), field("caution", tr("Caution")), when()};
    }
    static Fields unit()
    {
        return {field("claim", tr("Claim"), FieldForm::Long), field("looks", tr("Looks")), field("function", tr("Function")),
                field("earlier_work", tr("Earlier work")), field("accessories", tr("With it")), when()};
    }
    static Fields spend()
    {
        return {field("text", tr("For what"), FieldForm::Long), field("amount", tr("Amount"), FieldForm::Price), field("kind", tr("Kind"), FieldForm::Choice),
                field("in_bench_currency", tr("In the bench's money"), FieldForm::Price), field("paid_on", tr("Day"), FieldForm::Day), when()};
    }
    static Fields step()
    {
        return {field("text", tr("What was done"), FieldForm::Long), field("minutes", tr("Minutes"), FieldForm::Minutes), field("kind", tr("Kind"), FieldForm::Choice),
                field("position", tr("Where")), field("before", tr("Before")), field("after", tr("After")), ofSymptom(), when()};
    }
    static Fields soak(bool ended)
    {
        Fields fields{field("name", tr("Soak")), field("wanted", tr("Wanted"), FieldForm::Wanted), field("conditions", tr("Conditions")),
                      field("interruptions", tr("Interrupted")), field("started_at", tr("Begun"), FieldForm::Instant)};
        if (ended)
            fields << field("ended_at", tr("Ended"), FieldForm::Instant);
        return fields;
    }
    static Fields proof()
    {
        return {field("text", tr("Proof"), FieldForm::Long), field("came_out", tr("Came out"), FieldForm::Choice), field("result", tr("Result")),
                field("kind", tr("Kind"), FieldForm::Choice), field("rule_set", tr("By which rules")), field("instrument", tr("Instrument")),
                field("done_on", tr("Day"), FieldForm::Day), field("initials", tr("Initials")), when()};
    }
    static Fields clock()
    {
        return {field("started_at", tr("From"), FieldForm::Instant), field("ended_at", tr("To"), FieldForm::Instant),
                field("counted_minutes", tr("Counts as"), FieldForm::Minutes), field("note", tr("Note"))};
    }
    static Fields leftOff()
    {
        return {field("where_at", tr("Where")), field("next", tr("Next")), field("loose", tr("Loose")), field("do_not_power", tr("Do not power")), when()};
    }
};

} // namespace

QList<EntryField> fieldsOf(const Event &event)
{
    using W = FieldWords;
    switch (event.what) {
    case EventKind::TakenIn:
        return W::unit();
    case EventKind::Bought:
    case EventKind::Spend:
        return W::spend();
    case EventKind::Symptom:
        return {W::field("text", FieldWords::tr("Symptom"), FieldForm::Long), W::field("conditions", FieldWords::tr("Conditions")), W::when()};
    case EventKind::SymptomCleared:
        return {W::field("text", FieldWords::tr("Symptom"), FieldForm::Long), W::field("cleared_at", FieldWords::tr("When"), FieldForm::Instant)};
    case EventKind::Cause:
        return W::cause(false);
    case EventKind::CauseRuledOut:
    case EventKind::CauseConfirmed:
        return W::cause(true);
    case EventKind::Check:
        return W::check(event.later);
    case EventKind::Reading:
        return W::reading();
    case EventKind::Soak:
        return W::soak(event.later);
    case EventKind::Step:
        return W::step();
    case EventKind::Need:
    case EventKind::Fitted:
        return W::need(event.later);
    case EventKind::Photo:
        return {W::field("caption", FieldWords::tr("Caption"), FieldForm::Long), W::field("phase", FieldWords::tr("Phase"), FieldForm::Choice), W::when()};
    case EventKind::Teardown:
        return W::teardown(false);
    case EventKind::PutBack:
        return W::teardown(true);
    case EventKind::Stage:
        return {W::field("because", FieldWords::tr("Because")), W::field("until", FieldWords::tr("Until"), FieldForm::Day), W::when()};
    case EventKind::Proof:
        return W::proof();
    case EventKind::FirstPower: // a value is not talked away: the step is done again
        return {W::field("saw", FieldWords::tr("Seen"), FieldForm::Long), W::field("initials", FieldWords::tr("Initials")), W::when()};
    case EventKind::Paper:
        return {W::field("title", FieldWords::tr("Title"))};
    case EventKind::Note:
        return {W::field("text", FieldWords::tr("Note"), FieldForm::Long), W::field("kind", FieldWords::tr("Kind"), FieldForm::Choice), W::when()};
    case EventKind::LeftOff:
        return W::leftOff();
    case EventKind::Decision:
        return {W::field("way", FieldWords::tr("Way out"), FieldForm::Choice), W::field("reason", FieldWords::tr("Because"), FieldForm::Long), W::when()};
    case EventKind::Clock:
        return W::clock();
    }
    return {};
}

} // namespace ts
