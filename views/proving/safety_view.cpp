#include "views/proving/safety_view.h"

#include "model/records/settings.h"
#include "model/sums/category_facts.h"
#include "model/sums/electrical_safety.h"
#include "views/proving/tried_grid.h"
#include "views/style/style.h"
#include "views/unit/record_edit.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/pill.h"
#include "views/widgets/word_text.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace ts {

namespace {

enum Column { TestColumn, WantedColumn, FoundColumn, CameOutColumn, InstrumentColumn, DoneColumn, InitialsColumn };

QUuid keyOf(SafetyTest test)
{
    return rowKeyOf(QStringLiteral("electrical safety ") + toWord(test));
}

QList<GridColumn> columns()
{
    const QList<GridChoice> outcomes{{QStringLiteral("pass"), SafetyView::tr("passed"), u'p'},
                                     {QStringLiteral("wrong"), SafetyView::tr("failed"), u'f'},
                                     {QStringLiteral("not_applicable"), SafetyView::tr("not applicable"), u'n'}};
    return {{.title = SafetyView::tr("Test"), .width = 22, .stretch = 4},
            {.title = SafetyView::tr("Wanted"), .width = 12, .stretch = 2},
            {.title = SafetyView::tr("Found"), .width = 14, .stretch = 3, .tip = SafetyView::tr("The value, with ± where it is known; a stricter limit of the set itself behind it: want <= 0.15 V")},
            {.title = SafetyView::tr("Came out"), .width = 13, .choices = outcomes},
            {.title = SafetyView::tr("Instrument"), .width = 10, .stretch = 1},
            {.title = SafetyView::tr("Done"), .width = 7},
            {.title = SafetyView::tr("Initials"), .width = 6}};
}

Tone toneOf(const Proof &proof)
{
    switch (proof.cameOut) {
    case ProofOutcome::Passed:
        return Tone::Within;
    case ProofOutcome::Failed:
        return Tone::Outside;
    default:
        return verdictOf(proof) == Verdict::TooCloseToCall ? Tone::TooClose : Tone::Neutral;
    }
}

QString foundWords(const Proof &proof)
{
    QString text = proof.value ? proof.value->text() : QString();
    if (proof.value && proof.uncertainty)
        text += QLatin1Char(' ') + uncertaintyText(*proof.uncertainty, proof.value->measure());
    return text.isEmpty() ? proof.result : text;
}

GridRow rowOf(const SafetyLine &line, QDate today)
{
    const std::optional<Proof> &proof = line.proof;
    const bool valued = proof && proof->value;
    GridCell what = shownCell(safetyTestText(line.test));
    what.strong = true;
    GridCell wanted = shownCell(valued ? proof->wanted.display() : line.limit ? line.limit->limit.display() : SafetyView::tr("protection class?"));
    wanted.second = valued ? proof->limitSource : line.limit && !isLookedAt(line.test) ? line.limit->source : QString();
    if (isLookedAt(line.test))
        wanted = shownCell(SafetyView::tr("in order"));
    else if (line.limit)
        wanted.tip = line.limit->remark;
    GridCell found = typedCell(proof ? foundWords(*proof) : QString(), {});
    found.hint = isLookedAt(line.test) ? SafetyView::tr("what was seen") : SafetyView::tr("value, ± if known");
    if (valued)
        found.second = proof->result;
    if (found.text.isEmpty()) {
        found.text = line.substituted ? SafetyView::tr("another test stands in") : found.hint;
        found.quiet = true;
    }
    GridCell out = typedCell(proof ? shown::word(proof->cameOut) : shown::word(ProofOutcome::NotTested), {}); // any letter is a new try
    if (proof && proof->cameOut == ProofOutcome::NotTested && verdictOf(*proof) == Verdict::TooCloseToCall)
        out.text = shown::word(Verdict::TooCloseToCall);
    out.pill = proof ? toneOf(*proof) : Tone::Neutral;
    return {.key = keyOf(line.test),
            .cells = {what, wanted, found, out, shownCell(proof ? proof->instrument : QString()), shownCell(proof && proof->doneOn.isValid() ? shown::day(proof->doneOn, today) : QString()),
                      shownCell(proof ? proof->initials : QString())}};
}

} // namespace

SafetyView::SafetyView(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_head = makeHead();
    m_table = new TriedGrid(workplace.style(), tr("Electrical safety test"), columns(), FoundColumn, CameOutColumn,
                            [this](const QUuid &row, Said said, const QString &typed) { return record(row, said, typed); }, this);
    m_none = styledLabel("quiet", tr("This unit takes no mains: there is no electrical safety test to make."), this);
    m_remark = styledLabel("faint", {}, this);
    m_remark->setWordWrap(true);
    auto *care = new Card(tr("Before any of the electrical tests"), this);
    auto *text = styledLabel("warning",
                             tr("Insulation testers put 500 V on the unit and charge it; currents are taken with mains on it, hands off, both plug ways, without an isolating transformer. "
                                "Unplug and discharge before leads are touched, and never be alone. Which tests, limits and intervals hold is said by your local codes; where they ask for "
                                "licensed practice, that comes first. This is your own check with its rule set, instrument, date and initials, and no certificate."),
                             care);
    text->setWordWrap(true);
    care->body()->addWidget(text);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addWidget(m_head);
    column->addWidget(m_none);
    column->addWidget(m_table, 1);
    column->addWidget(m_remark);
    column->addWidget(care);
    column->addStretch(0);
}

QWidget *SafetyView::makeHead()
{
    auto *head = new QWidget(this);
    auto *row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::small);
    m_verdict = new Pill;
    row->addWidget(m_verdict);
    const auto labelled = [&](const QString &name, QWidget *field, int stretch) {
        auto *label = styledLabel("quiet", name, head);
        label->setBuddy(field);
        field->setAccessibleName(name);
        row->addWidget(label);
        row->addWidget(field, stretch);
    };
    m_class = new QComboBox(head);
    m_class->addItem(tr("not known"));
    for (const auto &[value, word] : Words<ProtectionClass>::list)
        m_class->addItem(QString::fromLatin1(word), static_cast<int>(value));
    labelled(tr("Class"), m_class, 0);
    connect(m_class, &QComboBox::activated, this, &SafetyView::chooseClass);
    m_rules = new QComboBox(head);
    m_rules->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_rules->setMinimumContentsLength(18);
    for (const auto &[value, word] : Words<SafetyRules>::list)
        m_rules->addItem(rulesName(value), QString::fromLatin1(word));
    labelled(tr("Rule set"), m_rules, 2);
    connect(m_rules, &QComboBox::activated, this, &SafetyView::chooseRules);
    m_instrument = new QLineEdit(head);
    m_instrument->setPlaceholderText(tr("its name"));
    labelled(tr("Instrument"), m_instrument, 2);
    m_lead = new QLineEdit(head);
    m_lead->setPlaceholderText(tr("2 m or 0.05 Ω"));
    labelled(tr("Lead"), m_lead, 1);
    return head;
}

void SafetyView::refresh()
{
    const UnitFile &file = m_work.file();
    const bool mains = mainsPowered(file.unit);
    m_head->setVisible(mains);
    m_table->setVisible(mains);
    m_remark->setVisible(mains);
    m_none->setVisible(!mains);
    const SafetyCase about = safetyCaseOf(file, m_work.bench());
    m_class->setCurrentIndex(about.protectionClass ? m_class->findData(static_cast<int>(*about.protectionClass)) : 0);
    m_rules->setCurrentIndex(m_rules->findData(toWord(about.rules)));
    const SafetySheet sheet = safetySheet(file, about);
    QList<GridRow> rows;
    for (const SafetyLine &line : sheet.lines)
        rows << rowOf(line, m_work.today());
    m_table->setRows(rows);
    m_verdict->show(sheet.verdict == SafetyVerdict::Passed ? tr("passed") : sheet.verdict == SafetyVerdict::Failed ? tr("failed") : tr("open"),
                    sheet.verdict == SafetyVerdict::Passed ? Tone::Within : sheet.verdict == SafetyVerdict::Failed ? Tone::Outside : Tone::Neutral);
    m_remark->setText(about.protectionClass || about.rules == SafetyRules::Makers
                          ? tr("A value that lies within its uncertainty of the limit is too close to call, and not passed. A stricter limit of the set's own manual counts: type it behind the value.")
                          : tr("Limits depend on the protection class: choose it first."));
}

void SafetyView::focusFirst()
{
    m_table->setFocus();
    const SafetySheet sheet = safetySheet(m_work.file(), safetyCaseOf(m_work.file(), m_work.bench()));
    for (const SafetyLine &line : sheet.lines)
        if (!line.substituted && (!line.proof || line.proof->cameOut == ProofOutcome::NotTested))
            return m_table->setCurrent(keyOf(line.test), FoundColumn);
}

void SafetyView::commitEdits()
{
    m_table->commitEdit();
}

bool SafetyView::record(const QUuid &row, Said said, const QString &typed)
{
    const SafetyCase about = safetyCaseOf(m_work.file(), m_work.bench());
    for (const SafetyTest test : safetyTests(about.rules, about.protectionClass)) {
        if (keyOf(test) != row)
            continue;
        QString line = typed;
        const bool measured = said == Said::Nothing && !isLookedAt(test);
        if (measured && test == SafetyTest::Earth && !m_lead->text().trimmed().isEmpty() && !line.contains(QLatin1String("lead ")))
            line += QStringLiteral(" lead ") + m_lead->text().trimmed();
        if (measured && !m_instrument->text().trimmed().isEmpty() && !line.contains(QLatin1String(" with ")) && !line.trimmed().isEmpty())
            line += QStringLiteral(" with ") + m_instrument->text().trimmed();
        Maker maker = m_work.maker();
        const auto jotted = jotSafetyTest(test, said, line, m_work.file(), m_work.bench(), maker);
        if (jotted)
            return m_work.record(jotted->change);
        m_work.refuse(jotted.trouble());
        return false;
    }
    return false;
}

void SafetyView::chooseRules(int at)
{
    m_work.record(m_work.settingChange(settings::safetyRules, m_rules->itemData(at).toString()));
    refresh();
}

void SafetyView::chooseClass(int at)
{
    Unit after = m_work.file().unit;
    after.protectionClass = at == 0 ? std::nullopt : std::optional(static_cast<ProtectionClass>(m_class->itemData(at).toInt()));
    (void)recordEdit(m_work, m_work.file().unit, after, after.protectionClass ? tr("Protection class %1").arg(toWord(*after.protectionClass)) : tr("Protection class not known"));
    refresh();
}

} // namespace ts
