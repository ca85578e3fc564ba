#include "views/readings/point_run.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/measured_text.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>

namespace ts {

PointRun::PointRun(Workplace &workplace, Take take, QWidget *parent) : QFrame(parent), m_work(workplace), m_take(std::move(take))
{
    setObjectName(QStringLiteral("card"));
    m_place = styledLabel("quiet", {}, this);
    m_name = styledLabel("big", {}, this);
    m_name->setWordWrap(true);
    m_wanted = styledLabel("title", {}, this);
    m_wanted->setWordWrap(true);
    m_last = styledLabel("plain", {}, this);
    m_last->setWordWrap(true);
    m_other = styledLabel("plain", {}, this);
    m_other->setWordWrap(true);
    m_mean = styledLabel("quiet", {}, this);
    m_mean->setWordWrap(true);
    for (QLabel *each : {m_name, m_wanted, m_last, m_other})
        each->setTextFormat(Qt::PlainText);
    m_field = new QLineEdit(this);
    m_field->setObjectName(QStringLiteral("runField"));
    m_field->setMaxLength(300);
    m_field->installEventFilter(this);
    auto *keys = styledLabel("quiet", tr("Enter takes the value and goes on · Space, Enter on nothing, or any key of a foot switch goes on without one · Shift+Enter keeps it for a mean of several · "
                                         "Up goes back · OL is over range · Esc ends the run"),
                             this);
    keys->setWordWrap(true);
    auto *back = button(tr("Back"), this);
    auto *next = button(tr("Next without a value"), this);
    auto *over = button(tr("Over range"), this);
    auto *end = button(tr("End the run"), this);
    m_switch = button({}, this);
    m_switch->setFocusPolicy(Qt::TabFocus);
    connect(m_switch, &QPushButton::clicked, this, [this] { begin(QList<PointRow>(m_points), m_phase == Phase::AsFound ? Phase::AsItLeaves : Phase::AsFound, m_points.at(m_at).key()); });
    for (QPushButton *each : {back, next, over, end})
        each->setFocusPolicy(Qt::TabFocus);
    connect(back, &QPushButton::clicked, this, [this] { step(-1); });
    connect(next, &QPushButton::clicked, this, [this] { step(1); });
    connect(over, &QPushButton::clicked, this, [this] {
        m_field->setText(QStringLiteral("OL"));
        this->take();
    });
    connect(end, &QPushButton::clicked, this, &PointRun::finish);
    auto *does = new QHBoxLayout;
    does->setSpacing(gap::small);
    for (QPushButton *each : {back, next, over})
        does->addWidget(each);
    does->addStretch(1);
    does->addWidget(m_switch);
    does->addWidget(end);
    auto *sides = new QHBoxLayout;
    sides->setSpacing(gap::wide);
    sides->addWidget(m_last, 1);
    sides->addWidget(m_other, 1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::wide, gap::wide, gap::wide);
    column->setSpacing(gap::normal);
    column->addWidget(m_place);
    column->addWidget(m_name);
    column->addWidget(m_wanted);
    column->addWidget(m_field);
    column->addWidget(m_mean);
    column->addLayout(sides);
    column->addStretch(1);
    column->addWidget(keys);
    column->addLayout(does);
}

bool PointRun::readNow(const PointRow &point) const
{
    const QList<Reading> &readings = m_phase == Phase::AsFound ? point.found : point.after;
    return std::any_of(readings.begin(), readings.end(), [this](const Reading &each) { return each.phase == m_phase; });
}

void PointRun::begin(const QList<PointRow> &points, Phase phase, const QUuid &from)
{
    m_points = points;
    m_phase = phase;
    m_at = 0;
    if (m_points.isEmpty())
        return;
    const auto unread = std::find_if(m_points.begin(), m_points.end(), [this](const PointRow &each) { return !readNow(each); });
    if (unread != m_points.end())
        m_at = static_cast<int>(unread - m_points.begin());
    for (int i = 0; i < m_points.size(); ++i)
        if (!from.isNull() && m_points.at(i).key() == from)
            m_at = i;
    m_running = true;
    m_repeats.clear();
    show();
    m_field->setFocus();
}

void PointRun::refresh(const QList<PointRow> &points)
{
    if (!m_running)
        return;
    const QString name = at();
    const QString conditions = m_points.at(m_at).conditions;
    m_points = points;
    const auto same = std::find_if(m_points.begin(), m_points.end(), [&](const PointRow &each) { return each.name == name && each.conditions == conditions; });
    if (m_points.isEmpty())
        return finish();
    m_at = same != m_points.end() ? static_cast<int>(same - m_points.begin()) : std::min(m_at, static_cast<int>(m_points.size()) - 1);
    show();
}

QString PointRun::at() const
{
    return m_running ? m_points.at(m_at).name : QString();
}

const PointRow *PointRun::partner(const PointRow &point) const
{
    static const QRegularExpression side(QStringLiteral(R"((?<![\p{L}\d])([LR])(?![\p{L}\d]))"));
    const auto match = side.match(point.name);
    if (!match.hasMatch())
        return nullptr;
    QString other = point.name;
    other[match.capturedStart(1)] = match.captured(1) == QLatin1String("L") ? QLatin1Char('R') : QLatin1Char('L');
    const auto found = std::find_if(m_points.begin(), m_points.end(), [&](const PointRow &each) { return each.name == other && each.conditions == point.conditions; });
    return found == m_points.end() ? nullptr : &*found;
}

QString PointRun::lastRead(const PointRow &point) const
{
    QStringList lines;
    const auto add = [&lines](const QList<Reading> &readings) {
        if (readings.isEmpty() || !readings.last().value)
            return;
        const Reading &reading = readings.last();
        QString text = tr("%1: %2").arg(shown::phase(reading.phase), shown::quantity(*reading.value));
        if (reading.uncertainty)
            text += QLatin1Char(' ') + shown::spread(*reading.uncertainty, reading.value->measure());
        if (const Verdict verdict = verdictOf(reading); verdict != Verdict::NoLimit)
            text += tr(", %1").arg(shown::verdict(verdict));
        lines << text;
    };
    add(point.found);
    add(point.after);
    return lines.isEmpty() ? tr("%1: not read yet").arg(point.name) : point.name + QLatin1Char('\n') + lines.join(QLatin1Char('\n'));
}

void PointRun::show()
{
    const PointRow &point = m_points.at(m_at);
    m_place->setText(tr("%1 of %2 · %3").arg(m_at + 1).arg(m_points.size()).arg(m_phase == Phase::AsFound ? tr("as found") : tr("after work")));
    m_switch->setText(m_phase == Phase::AsFound ? tr("Read after work instead") : tr("Read as found instead"));
    m_switch->setAccessibleName(m_switch->text());
    m_name->setText(point.conditions.isEmpty() ? point.name : tr("%1, %2").arg(point.name, point.conditions));
    m_wanted->setText(point.wanted.isNone() ? tr("nothing is wanted of it") : tr("wanted %1").arg(shown::limit(point.wanted)));
    m_field->setAccessibleName(tr("Value at %1").arg(point.name));
    m_field->setPlaceholderText(point.wanted.measure().isNone() ? tr("value and unit") : point.wanted.measure().text());
    m_last->setText(lastRead(point));
    const PointRow *other = partner(point);
    m_other->setText(other ? lastRead(*other) : QString());
    m_mean->setText(m_repeats.isEmpty() ? QString() : tr("Kept for the mean: %1").arg(m_repeats.join(QStringLiteral("; "))));
}

void PointRun::step(int by)
{
    if (!m_running)
        return;
    if (m_at + by >= m_points.size()) {
        m_work.say(tr("That was the last test point."));
        return finish();
    }
    m_at = std::max(0, m_at + by);
    m_repeats.clear();
    m_field->clear();
    show();
    m_field->setFocus();
}

void PointRun::keepForMean()
{
    const QString typed = m_field->text().simplified();
    if (typed.isEmpty())
        return;
    const PointRow &point = m_points.at(m_at);
    const auto value = Quantity::parse(typed, point.wanted.measure());
    if (!value)
        return m_work.refuse(value.trouble());
    m_repeats << typed;
    m_field->clear();
    show();
}

void PointRun::take()
{
    QString typed = m_field->text().simplified();
    if (typed.isEmpty() && m_repeats.isEmpty())
        return step(1);
    if (!m_repeats.isEmpty())
        typed = (typed.isEmpty() ? m_repeats : m_repeats + QStringList{typed}).join(QStringLiteral("; "));
    const QString before = at();
    if (!m_take(PointRow(m_points.at(m_at)), typed))
        return;
    m_repeats.clear();
    m_field->clear();
    if (m_running && at() == before)
        step(1);
}

bool PointRun::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_field || event->type() != QEvent::KeyPress)
        return QFrame::eventFilter(watched, event);
    const auto *pressed = static_cast<QKeyEvent *>(event);
    switch (pressed->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        pressed->modifiers() & Qt::ShiftModifier ? keepForMean() : take();
        return true;
    case Qt::Key_Escape:
        finish();
        return true;
    case Qt::Key_Up:
    case Qt::Key_PageUp:
        step(-1);
        return true;
    case Qt::Key_Down:
        step(1);
        return true;
    default:
        break;
    }
    // A foot switch sends one key, and which one is its maker's choice: one that writes nothing, or Space into nothing, goes on.
    const bool writes = !pressed->text().isEmpty() && pressed->text().at(0).isPrint() && pressed->text() != QLatin1String(" ");
    const bool space = pressed->text() == QLatin1String(" ") && m_field->text().isEmpty();
    const bool switchKey = pressed->key() == Qt::Key_PageDown || (pressed->key() >= Qt::Key_F13 && pressed->key() <= Qt::Key_F35) || pressed->key() == Qt::Key_MediaPlay || pressed->key() == Qt::Key_ScrollLock;
    if ((space || switchKey) && !writes) {
        step(1);
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

void PointRun::finish()
{
    if (!m_running)
        return;
    m_running = false;
    m_repeats.clear();
    m_field->clear();
    Q_EMIT finished();
}

} // namespace ts
