#include "views/log/jot_bar.h"

#include "model/jot/jot.h"
#include "views/log/jot_line.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/pill.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

namespace ts {

namespace {

constexpr qsizetype mostRecalled = 200;

/// A badge is "kind, how it stands"; what is wrong or must be minded is coloured, and its word says it too.
Tone toneOfBadge(const QString &badge)
{
    const QString stands = badge.section(QStringLiteral(", "), 1);
    for (const Verdict verdict : {Verdict::Within, Verdict::Outside, Verdict::TooCloseToCall})
        if (stands == verdictText(verdict))
            return toneOf(verdict);
    if (stands == QLatin1String("do not power") || stands == QLatin1String("failed"))
        return Tone::Outside;
    return badge == QLatin1String("note") ? Tone::Neutral : Tone::Hint;
}

} // namespace

JotBar::JotBar(Workplace &workplace, QWidget *over) : QFrame(over), m_work(workplace)
{
    setObjectName(QStringLiteral("jotBar"));
    m_line = new JotLine(m_work.style(), over, this);
    m_line->setOffers([this](const QString &line) { return completions(line, m_work.file(), m_work.bench()); });
    m_badge = new Pill({}, Tone::Neutral, this);
    m_sentence = styledLabel("jotted", {}, this);
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setWordWrap(true);
    m_sentence->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto *under = new QHBoxLayout;
    under->setSpacing(gap::small);
    under->addWidget(m_badge, 0, Qt::AlignTop);
    under->addWidget(m_sentence, 1, Qt::AlignTop);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::small, gap::wide, gap::small);
    column->setSpacing(gap::small - 2);
    column->addWidget(m_line);
    column->addLayout(under);
    connect(m_line, &JotLine::lineChanged, this, &JotBar::preview);
    connect(m_line, &QLineEdit::returnPressed, this, &JotBar::enter);
    connect(&m_work, &Workplace::unitTaken, this, &JotBar::changeUnit);
    connect(&m_work, &Workplace::unitChanged, this, &JotBar::preview);
    connect(&m_work.style(), &Style::changed, this, &JotBar::keepHeight);
    changeUnit();
}

QString JotBar::badge() const
{
    return m_badge->text();
}

QString JotBar::sentence() const
{
    return m_sentence->text();
}

void JotBar::typeOn(const QString &text)
{
    m_line->setFocus();
    m_line->end(false);
    m_line->insert(text);
}

void JotBar::changeUnit()
{
    if (!m_unit.isNull())
        m_drafts.insert(m_unit, m_line->text());
    m_unit = m_work.file().unit.id.value;
    m_line->setEnabled(!m_unit.isNull());
    m_line->setRecall(m_recorded.value(m_unit));
    m_line->setLine(m_drafts.value(m_unit));
    preview();
}

void JotBar::preview()
{
    if (m_work.file().unit.id.value != m_unit)
        return; // the unit is just changing
    const QString line = m_line->text();
    if (line != m_asked)
        m_asked.clear();
    if (line.trimmed().isEmpty()) {
        say({}, tr("CN2.4 = 11.92 V want 12 V 5% · saw reel stops · did cleaned the switch 20m · F1 has more"), "jotted");
        keepHeight();
        return;
    }
    Maker maker = m_work.maker();
    const auto jotted = jot(line, m_work.file(), m_work.bench(), maker);
    if (!jotted)
        say(tr("not recorded"), jotted.trouble().sentence(), "jotted_warning");
    else if (!m_asked.isEmpty())
        say(tr("is it so?"), tr("%1 Enter again records it, Esc goes back to the line.").arg(jotted->question), "jotted_warning");
    else
        say(jotted->badge, jotted->preview, "jotted");
}

void JotBar::say(const QString &badge, const QString &sentence, const char *role)
{
    const bool warns = qstrcmp(role, "jotted_warning") == 0;
    m_badge->show(badge, warns ? (m_asked.isEmpty() ? Tone::Outside : Tone::TooClose) : toneOfBadge(badge));
    if (m_sentence->property("role").toString() != QLatin1String(role))
        restyle(m_sentence, "role", QString::fromLatin1(role));
    m_sentence->setText(sentence);
    // What is said under the line is said to who hears it, too.
    m_line->setAccessibleDescription(badge.isEmpty() ? sentence : badge + QStringLiteral(": ") + sentence);
    // The bar grows where a sentence needs a second line, and does not shrink under somebody's typing.
    if (isVisible())
        reserve(m_sentence->minimumHeight());
}

void JotBar::keepHeight()
{
    reserve(m_sentence->fontMetrics().lineSpacing() + 2);
}

void JotBar::reserve(int least)
{
    const int room = width() - 2 * gap::wide - (m_badge->isHidden() ? 0 : m_badge->sizeHint().width() + gap::small);
    m_sentence->setMinimumHeight(0); // a label's height for a width is never below its minimum
    m_sentence->setMinimumHeight(qMax(least, m_sentence->heightForWidth(qMax(1, room))));
}

void JotBar::resizeEvent(QResizeEvent *event)
{
    QFrame::resizeEvent(event);
    keepHeight();
}

void JotBar::enter()
{
    const QString line = m_line->text();
    if (!m_work.hasUnit() || line.trimmed().isEmpty())
        return;
    Maker maker = m_work.maker();
    const auto jotted = jot(line, m_work.file(), m_work.bench(), maker);
    if (!jotted || jotted->change.isEmpty())
        return; // what stands under the line says why
    if (!jotted->question.isEmpty() && m_asked != line) {
        m_asked = line;
        preview();
        return;
    }
    if (!m_work.record(jotted->change))
        return;
    QStringList &recorded = m_recorded[m_unit];
    recorded.removeAll(line);
    recorded << line;
    if (recorded.size() > mostRecalled)
        recorded.removeFirst();
    m_asked.clear();
    m_line->setRecall(recorded);
    m_line->clear();
    Q_EMIT this->recorded();
}

void JotBar::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape && !m_asked.isEmpty()) {
        m_asked.clear();
        preview();
        return;
    }
    QFrame::keyPressEvent(event);
}

} // namespace ts
