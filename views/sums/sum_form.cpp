#include "views/sums/sum_form.h"

#include "model/jot/jot.h"
#include "model/records/tag_text.h"
#include "model/values/plain_text.h"
#include "views/style/style.h"
#include "views/sums/curve_chart.h"
#include "views/sums/sum_words.h"
#include "views/widgets/ask_line.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

namespace ts {

SumForm::SumForm(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_title = styledLabel("heading", {}, this);
    m_says = styledLabel("quiet", {}, this);
    m_says->setWordWrap(true);
    m_trouble = styledLabel("quiet", {}, this);
    m_trouble->setWordWrap(true);
    m_source = styledLabel("quiet", {}, this);
    m_source->setWordWrap(true);
    m_source->setTextFormat(Qt::PlainText);
    m_curve = new CurveChart(workplace.style(), this);
    m_note = button(tr("Note it in the log"), this);
    m_reading = button(tr("Take it as a reading…"), this);
    connect(m_note, &QPushButton::clicked, this, &SumForm::note);
    connect(m_reading, &QPushButton::clicked, this, &SumForm::askPoint);
    m_ask = new AskLine(this);
    auto *does = new QHBoxLayout;
    does->setSpacing(gap::small);
    does->addWidget(m_note);
    does->addWidget(m_reading);
    does->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, gap::small, gap::normal);
    column->setSpacing(gap::small);
    column->addWidget(m_title);
    column->addWidget(m_says);
    column->addWidget(m_trouble);
    column->addWidget(m_curve);
    column->addWidget(m_source);
    column->addWidget(m_ask);
    column->addLayout(does);
    column->addStretch(1);
}

void SumForm::show(const Sum &sum)
{
    m_sum = sum;
    m_ask->putAway();
    m_title->setText(sumTitle(sum));
    m_says->setText(sum.says.left(1).toUpper() + sum.says.mid(1) + QLatin1Char('.'));
    m_source->setText(sum.formula.isEmpty() ? tr("Source: %1").arg(sum.source) : tr("Formula: %1\nSource: %2").arg(sum.formula, sum.source));
    m_fields.clear();
    delete m_asks;
    m_asks = new QWidget(this);
    auto *grid = new QGridLayout(m_asks);
    grid->setContentsMargins(0, gap::small, 0, gap::small);
    grid->setHorizontalSpacing(gap::normal);
    grid->setVerticalSpacing(gap::small);
    grid->setColumnMinimumWidth(1, 240);
    grid->setColumnStretch(2, 1);
    for (int row = 0; row < sum.keys.size(); ++row)
        addField(sum.keys.at(row), row);
    static_cast<QVBoxLayout *>(layout())->insertWidget(2, m_asks);
    m_asks->show(); // now, so that Tab finds its fields
    QWidget *before = nullptr;
    for (const SumKey &key : sum.keys) {
        if (before)
            setTabOrder(before, m_fields.value(key.name));
        before = m_fields.value(key.name);
    }
    work();
}

void SumForm::addField(const SumKey &key, int row)
{
    QWidget *field = nullptr;
    if (!key.choices.isEmpty()) {
        auto *choices = new QComboBox(m_asks);
        if (!key.required && key.usual.isEmpty())
            choices->addItem(tr("not given"), QString());
        for (const QString &each : key.choices)
            choices->addItem(each, each);
        choices->setCurrentIndex(std::max(0, choices->findData(key.usual)));
        connect(choices, &QComboBox::currentIndexChanged, this, &SumForm::work);
        field = choices;
    } else {
        auto *line = new QLineEdit(m_asks);
        line->setMaxLength(2000);
        line->setPlaceholderText(!key.usual.isEmpty() ? tr("usually %1").arg(key.usual) : key.required ? key.unit : tr("may be left out"));
        connect(line, &QLineEdit::textChanged, this, &SumForm::work);
        field = line;
    }
    field->setAccessibleName(keyTitle(key.name));
    field->setAccessibleDescription(key.meaning);
    auto *name = new QLabel(keyTitle(key.name), m_asks);
    name->setBuddy(field);
    auto *meaning = styledLabel("quiet", key.unit.isEmpty() ? key.meaning : tr("%1, in %2").arg(key.meaning, key.unit), m_asks);
    meaning->setWordWrap(true);
    auto *grid = static_cast<QGridLayout *>(m_asks->layout());
    grid->addWidget(name, row, 0);
    grid->addWidget(field, row, 1);
    grid->addWidget(meaning, row, 2);
    m_fields.insert(key.name, field);
}

void SumForm::focusFirst()
{
    if (!m_sum.keys.isEmpty())
        m_fields.value(m_sum.keys.first().name)->setFocus();
}

SumInput SumForm::given() const
{
    SumInput given;
    for (auto it = m_fields.begin(); it != m_fields.end(); ++it) {
        const auto *line = qobject_cast<QLineEdit *>(it.value());
        const QString text = line ? line->text() : qobject_cast<QComboBox *>(it.value())->currentData().toString();
        if (!text.trimmed().isEmpty())
            given.insert(it.key(), text);
    }
    return given;
}

void SumForm::work()
{
    const SumInput asked = given();
    QStringList missing;
    for (const SumKey &key : m_sum.keys)
        if (key.required && !asked.contains(key.name))
            missing << keyTitle(key.name).toLower();
    m_out.clear();
    QString says;
    bool wrong = false;
    if (!missing.isEmpty()) {
        says = tr("Still to be said: %1.").arg(missing.join(QStringLiteral(", ")));
    } else if (const auto out = reckon(m_sum.name, asked)) {
        m_out = *out;
    } else {
        says = out.trouble().sentence();
        wrong = true;
    }
    m_trouble->setText(says);
    m_trouble->setVisible(!says.isEmpty());
    restyle(m_trouble, "role", wrong ? QStringLiteral("warning") : QStringLiteral("quiet"));
    showOutput(m_out);
    m_curve->setVisible(m_sum.name == QLatin1String("replay-curve") && !m_out.isEmpty());
    if (!m_curve->isHidden())
        m_curve->show(asked);
    refreshUnit();
}

void SumForm::showOutput(const SumOutput &out)
{
    delete m_results;
    m_results = new QWidget(this);
    auto *grid = new QGridLayout(m_results);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(gap::normal);
    grid->setVerticalSpacing(gap::tight);
    grid->setColumnStretch(2, 1);
    int row = 0;
    for (const auto &[name, value] : out) {
        if (value.isNull() || (value.isString() && value.toString().isEmpty()))
            continue;
        SumKey key{.name = name, .meaning = {}};
        for (const SumKey &each : m_sum.gives)
            if (each.name == name)
                key = each;
        const bool words = value.isString() || value.isArray();
        auto *shown = styledLabel(name == QLatin1String("caution") ? "warning" : words ? "plain" : "strong", sumValue(key, value), m_results);
        shown->setTextFormat(Qt::PlainText);
        shown->setTextInteractionFlags(Qt::TextSelectableByMouse);
        shown->setWordWrap(words);
        auto *title = new QLabel(keyTitle(name), m_results);
        title->setToolTip(key.meaning);
        grid->addWidget(title, row, 0, Qt::AlignTop);
        grid->addWidget(shown, row, 1, 1, words ? 2 : 1, Qt::AlignTop);
        if (!words) {
            // "null where …" is for programs: here nothing stands that did not come out.
            auto *meaning = styledLabel("quiet", key.meaning.section(QStringLiteral("; null"), 0, 0).section(QStringLiteral(", else null"), 0, 0), m_results);
            meaning->setWordWrap(true);
            grid->addWidget(meaning, row, 2, Qt::AlignTop);
        }
        ++row;
    }
    grid->setColumnMinimumWidth(1, 160);
    m_results->setVisible(row > 0);
    static_cast<QVBoxLayout *>(layout())->insertWidget(layout()->indexOf(m_trouble) + 1, m_results);
}

QString SumForm::readingText() const
{
    for (const auto &[name, value] : m_out)
        for (const SumKey &key : m_sum.gives)
            if (key.name == name && value.isDouble() && !key.unit.isEmpty())
                return QString::number(value.toDouble(), 'g', 6) + QLatin1Char(' ') + key.unit;
    return {};
}

void SumForm::refreshUnit()
{
    const QString tag = m_work.hasUnit() ? tagText(m_work.file().unit.tag) : QString();
    m_note->setText(tag.isEmpty() ? tr("Note it in the log") : tr("Note it in the log of %1").arg(tag));
    m_note->setEnabled(!m_out.isEmpty() && m_work.hasUnit());
    m_reading->setEnabled(!readingText().isEmpty() && m_work.hasUnit());
    m_reading->setVisible(!m_sum.gives.isEmpty());
}

void SumForm::note()
{
    const auto text = plainText(sumLine(m_sum, given(), m_out), tr("The note"));
    if (!text)
        return m_work.refuse(text.trouble());
    Note note = m_work.maker().fresh<Note>();
    note.unit = m_work.file().unit.id;
    note.text = *text;
    m_work.record(Change(tr("Note: %1").arg(sumTitle(m_sum))).add(note));
}

void SumForm::askPoint()
{
    m_ask->ask(tr("At which test point is %1?").arg(readingText()), {}, tr("idle current L"), [this](const QString &typed) { return takeReading(typed); });
}

bool SumForm::takeReading(const QString &point)
{
    if (point.trimmed().isEmpty()) {
        m_work.refuse(tr("Name the test point that the reading is of."));
        return false;
    }
    Maker maker = m_work.maker();
    const auto jotted = jot(point.simplified() + QStringLiteral(" = ") + readingText(), m_work.file(), m_work.bench(), maker);
    if (!jotted) {
        m_work.refuse(jotted.trouble());
        return false;
    }
    return m_work.record(jotted->change);
}

} // namespace ts
