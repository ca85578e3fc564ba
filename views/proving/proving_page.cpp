#include "views/proving/proving_page.h"

#include "model/records/settings.h"
#include "model/sums/acceptance.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/power_ladder.h"
#include "model/sums/stage_rules.h"
#include "model/values/name_key.h"
#include "views/proving/first_power_view.h"
#include "views/proving/proof_rows.h"
#include "views/proving/safety_view.h"
#include "views/style/style.h"
#include "views/unit/bring_notes.h"
#include "views/unit/page_tabs.h"
#include "views/unit/record_edit.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/empty_place.h"
#include "views/widgets/grid_view.h"

#include <QAction>
#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

namespace ts {

ProvingPage::ProvingPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent)
{
    m_none = new EmptyPlace(tr("Nothing is to be proved yet. The list of its category says what is tried before such a unit is handed over: what it does, how it looks, and "
                               "that it is safe to plug in. Lines can be changed, added and taken off."),
                            tr("Bring in the list"));
    connect(m_none, &EmptyPlace::actionWanted, this, &ProvingPage::bringIn);
    m_whole = new QStackedWidget(this);
    m_whole->addWidget(makeList());
    m_whole->addWidget(m_none);
    m_firstPower = new FirstPowerView(workplace);
    m_safety = new SafetyView(workplace);
    m_shown = new QStackedWidget(this);
    m_parts = new PageTabs(workplace.style(), this);
    m_parts->setAccessibleName(tr("Parts of proving"));
    const QList<std::pair<QString, QWidget *>> parts{{tr("Acceptance"), m_whole}, {tr("First power"), m_firstPower}, {tr("Electrical safety"), m_safety}}; // in the order of Part
    for (const auto &[name, widget] : parts) {
        m_parts->addTab(name);
        m_shown->addWidget(widget);
    }
    connect(m_parts, &QTabBar::currentChanged, m_shown, &QStackedWidget::setCurrentIndex);
    auto *head = new QHBoxLayout;
    head->setContentsMargins(gap::wide, 0, gap::wide, 0);
    head->addWidget(m_parts);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_shown);
}

void ProvingPage::showPart(Part part)
{
    m_parts->setCurrentIndex(static_cast<int>(part));
}

QWidget *ProvingPage::makeList()
{
    auto *list = new QWidget;
    m_table = new GridView(work().style(), tr("Proofs"), proofColumns(), list);
    m_table->setCommit([this](const GridRow &row, int column, const QString &typed) { return commit(row, column, typed); });
    m_table->setAddsInARow(true);
    m_table->setLetterColumn(static_cast<int>(ProofColumn::CameOut), [this](const QUuid &row, const QString &word) { afterLetter(row, word); });
    m_table->addRowAction(tr("Take off the list"), QKeySequence::Delete, [this](const QUuid &key) { remove(key); });

    m_bring = button(tr("Bring in the list"), list);
    m_bring->setToolTip(tr("What its category, and electrical safety where it runs from the mains, ask for and is not here yet"));
    connect(m_bring, &QPushButton::clicked, this, &ProvingPage::bringIn);
    auto *addButton = button(tr("Add a proof"), list);
    connect(addButton, &QPushButton::clicked, m_table, [this] { m_table->editAdding(); });
    m_total = styledLabel("quiet", {}, list);
    m_keys = styledLabel("faint", keysText(), list);
    m_keys->setWordWrap(true);

    m_way = new Card(tr("Not ready yet"), list);
    restyle(m_way, "tone", QStringLiteral("outside"));
    m_wayText = styledLabel("warning", {}, m_way);
    m_wayText->setWordWrap(true);
    m_way->body()->addWidget(m_wayText);
    m_way->body()->addStretch(1);
    m_care = new Card(tr("Before any of the electrical tests"), list);
    auto *care = styledLabel("warning",
                             tr("A unit from the mains can kill, and insulation testers put hundreds of volts on it: unplug and discharge before leads are touched, keep the cover on for "
                                "whatever is tested live, and never be alone with it. Which tests, limits and intervals hold is said by your local codes; where they ask for licensed "
                                "practice, that comes first. What is recorded here is your own check with its instrument, date and initials. It is no certificate."),
                             m_care);
    care->setWordWrap(true);
    m_care->body()->addWidget(care);
    m_care->body()->addStretch(1);

    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(m_bring);
    top->addWidget(notesButton(tr("From the model notes"), work(), {.testPoints = false, .teardown = false, .proofs = true, .parts = false}, list));
    top->addWidget(addButton);
    top->addStretch(1);
    top->addWidget(m_total);
    auto *cards = new QHBoxLayout;
    cards->setSpacing(gap::normal);
    cards->addWidget(m_way, 2);
    cards->addWidget(m_care, 3);
    auto *column = new QVBoxLayout(list);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addWidget(m_table, 1);
    column->addWidget(m_keys);
    column->addLayout(cards);
    column->addStretch(0);
    return list;
}

QString ProvingPage::keysText()
{
    return tr("P passed · F failed · N not applicable · T not tested. Each sets the row at hand and goes on to the next; F goes to what was found.");
}

void ProvingPage::focusFirst()
{
    if (m_shown->currentWidget() == m_firstPower)
        return m_firstPower->focusFirst();
    if (m_shown->currentWidget() == m_safety)
        return m_safety->focusFirst();
    m_whole->currentIndex() == 0 ? m_table->setFocus() : m_none->setFocus();
}

void ProvingPage::reveal(const QString &kind, const QUuid &record)
{
    const Rung *rung = kind == QLatin1String(Rung::table) ? file().find(Id<Rung>{record}) : nullptr;
    if (rung) {
        showPart(Part::FirstPower);
        m_firstPower->reveal(rung->step);
    }
    if (kind != QLatin1String(Proof::table))
        return;
    showPart(Part::Acceptance);
    m_table->setCurrent(record);
}

QString ProvingPage::help() const
{
    return tr("What is tried before the unit is handed over. P, F, N and T say of the row at hand that it passed, failed, is not applicable or is not tested, and go on to the next row; F "
              "goes to what was found. The line under the table says where the place is now; date and initials fill themselves. A failed proof keeps the unit from being called ready unless you "
              "say why it goes all the same; a failed electrical safety proof is put right first. Under First power each step is passed or stopped by what was found, and a stop flags the unit; "
              "under Electrical safety the verdict follows from the value and the rule set. Your local codes and licensed practice come before anything that this list says.");
}

void ProvingPage::commitEdits()
{
    m_table->commitEdit();
    m_firstPower->commitEdits();
    m_safety->commitEdits();
}

QString ProvingPage::keysLine() const
{
    return m_keys->text();
}

QString ProvingPage::inTheWayText() const
{
    return m_way->isHidden() ? QString() : m_wayText->text();
}

void ProvingPage::refresh()
{
    m_firstPower->refresh();
    m_safety->refresh();
    m_parts->setBadge(1, ladderOf(file()).stopped, Tone::Outside);
    m_parts->setBadge(2, static_cast<int>(failedSafety(file()).size()), Tone::Outside);
    const QList<Proof> &proofs = file().all<Proof>();
    m_whole->setCurrentIndex(proofs.isEmpty() && !m_table->isEditing() ? 1 : 0);
    if (m_of != file().unit.id) {
        m_of = file().unit.id;
        m_keys->setText(keysText());
    }
    m_table->setRows(proofRows(file(), work().today()));
    m_total->setText(proofTotalText(file()));
    const InTheWay way = inTheWay(file(), Stage::Ready);
    m_way->setHidden(way.reasons.isEmpty());
    m_wayText->setText(way.reasons.join(QLatin1Char('\n')) +
                       (way.canBeOverruled ? tr("\nIt can be called ready all the same, with a reason that stays on record.") : tr("\nThis is put right first: no reason overrules it.")));
    m_care->setVisible(std::any_of(proofs.begin(), proofs.end(), [](const Proof &proof) { return proof.kind == ProofKind::ElectricalSafety; }));
    const auto wanted = acceptanceFor(file().unit);
    m_bring->setEnabled(std::any_of(wanted.begin(), wanted.end(), [&proofs](const AcceptanceLine &line) {
        return std::none_of(proofs.begin(), proofs.end(), [&line](const Proof &proof) { return nameKey(proof.text) == nameKey(line.text); });
    }));
}

std::optional<QUuid> ProvingPage::commit(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding)
        return add(row.name, typed);
    const Proof *before = file().find(Id<Proof>{row.key});
    if (!before)
        return std::nullopt;
    const auto at = static_cast<ProofColumn>(column);
    if (at == ProofColumn::CameOut)
        return setOutcome(*before, typed);
    const auto after = editedProof(*before, at, typed, work().today());
    if (!after) {
        work().refuse(after.trouble());
        return std::nullopt;
    }
    const QString title = proofColumns().at(column).title; // as it is: another language writes it with a capital anywhere
    return recordEdit(work(), *before, *after, typed.isEmpty() ? tr("Proof %1, %2: nothing").arg(after->text, title) : tr("Proof %1, %2: %3").arg(after->text, title, typed));
}

std::optional<QUuid> ProvingPage::add(const QString &kind, const QString &typed)
{
    if (typed.isEmpty())
        return QUuid();
    Proof proof = freshOfUnit<Proof>(work());
    proof.kind = fromWord<ProofKind>(kind).value_or(ProofKind::Function);
    const auto named = editedProof(proof, ProofColumn::Text, typed, work().today());
    if (!named) {
        work().refuse(named.trouble());
        return std::nullopt;
    }
    return recordNew(work(), *named, tr("To be proved: %1").arg(named->text));
}

// Instrument and rule set are usually those of the last proof of that kind, so that they are typed once.
std::optional<QUuid> ProvingPage::setOutcome(const Proof &before, const QString &word)
{
    const auto outcome = fromWord<ProofOutcome>(word);
    if (!outcome)
        return std::nullopt;
    const bool said = *outcome == ProofOutcome::Passed || *outcome == ProofOutcome::Failed;
    if (before.value && said && *outcome != outcomeOf(before)) {
        work().refuse(Trouble{tr("Its verdict follows from its value"), proofResult(before), tr("measure again under Electrical safety")});
        return std::nullopt;
    }
    Proof after = provedAs(before, *outcome, work().today(), bench().setting(settings::worker));
    if (after.doneOn.isValid() && before.kind == ProofKind::ElectricalSafety)
        for (const Proof &each : file().all<Proof>()) {
            if (each.kind != before.kind || each.doneOn != after.doneOn)
                continue;
            if (before.instrument.isEmpty() && !each.instrument.isEmpty())
                after.instrument = each.instrument;
            if (before.ruleSet.isEmpty() && !each.ruleSet.isEmpty())
                after.ruleSet = each.ruleSet;
        }
    return recordEdit(work(), before, after, tr("Proof %1: %2").arg(proofOutcomeText(*outcome), after.text));
}

// One key a line, down the list; what failed wants a word of what was found. Where the place has gone is said, so that the next key
// is not pressed for the wrong line.
void ProvingPage::afterLetter(const QUuid &row, const QString &word)
{
    const bool failed = word == toWord(ProofOutcome::Failed);
    if (failed)
        m_table->editAt(row, static_cast<int>(ProofColumn::Result));
    else
        m_table->step(1);
    const Proof *set = file().find(Id<Proof>{row});
    const Proof *next = file().find(Id<Proof>{m_table->currentKey()});
    if (!set || !next)
        return;
    const QString done = tr("%1: %2.").arg(set->text, proofOutcomeText(set->cameOut));
    m_keys->setText(done + QLatin1Char(' ') + (failed ? tr("Say what was found.") : next->id == set->id ? tr("That was the last row.") : tr("Now at: %1").arg(next->text)));
}

void ProvingPage::bringIn()
{
    Maker maker = work().maker();
    if (!work().record(bringAcceptance(file(), maker)))
        return;
    m_table->setFocus();
    for (const Proof &proof : file().all<Proof>())
        if (proof.cameOut == ProofOutcome::NotTested)
            return m_table->setCurrent(proof.id.value, 0);
}

void ProvingPage::remove(const QUuid &key)
{
    if (const Proof *proof = file().find(Id<Proof>{key}))
        work().record(Change(tr("Proof taken off the list: %1").arg(proof->text)).remove(*proof));
}

} // namespace ts
