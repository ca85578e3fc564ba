#include "views/log/entry_form.h"

#include "model/jot/edited_record.h"
#include "model/values/clock.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/flow_layout.h"
#include "views/widgets/word_text.h"

#include <QComboBox>
#include <QDateTimeEdit>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTimer>
#include <QVBoxLayout>

namespace ts {

namespace {

/// How wide a field is, in quarters of a line.
int widthOf(FieldForm form)
{
    switch (form) {
    case FieldForm::Long:
    case FieldForm::Line:
    case FieldForm::Symptom:
        return 50;
    case FieldForm::Wanted:
        return 36;
    case FieldForm::Instant:
        return 40;
    case FieldForm::Choice:
    case FieldForm::Value:
        return 30;
    default:
        return 22;
    }
}

/// The symptoms of the unit to choose from, and none of them.
QComboBox *symptomField(const UnitFile &file, const QString &stored)
{
    auto *box = new QComboBox;
    box->addItem(EntryForm::tr("no symptom, by itself"), QString());
    for (const Symptom &symptom : file.all<Symptom>())
        if (!symptom.removed || symptom.id.text() == stored)
            box->addItem(symptom.text.simplified(), symptom.id.text());
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setCurrentIndex(qMax(0, box->findData(stored)));
    return box;
}

QDateTimeEdit *instantField(const QString &stored)
{
    auto *edit = new QDateTimeEdit(instantFromStored(stored).toLocalTime());
    QString day = QLocale().dateFormat(QLocale::ShortFormat);
    if (!day.contains(QLatin1String("yyyy")))
        day.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    edit->setDisplayFormat(day + QLatin1Char(' ') + QLocale().timeFormat(QLocale::ShortFormat).remove(QStringLiteral(":ss")));
    edit->setButtonSymbols(QAbstractSpinBox::NoButtons);
    return edit;
}

} // namespace

EntryForm::EntryForm(Workplace &workplace, const Event &event, const Row &before, QWidget *parent)
    : QFrame(parent), m_work(workplace), m_kind(kindOf(event.what)), m_before(before), m_fields(fieldsOf(event))
{
    setObjectName(QStringLiteral("entryForm"));
    setAutoFillBackground(true);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::normal, gap::small, gap::normal, gap::small);
    column->setSpacing(gap::small - 2);
    auto *cells = new QWidget(this);
    auto *flow = new FlowLayout(gap::small, cells);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    cells->setSizePolicy(policy);
    m_fields.removeIf([this](const EntryField &field) { return field.form == FieldForm::Instant && m_before.at(m_kind.column(field.column)).isNull(); });
    for (const EntryField &field : m_fields) {
        QWidget *widget = makeField(field);
        m_widgets << widget;
        auto *label = styledLabel("faint", field.label, this);
        label->setBuddy(widget);
        auto *cell = new QWidget(this);
        auto *both = new QVBoxLayout(cell);
        both->setContentsMargins(0, 0, 0, 0);
        both->setSpacing(1);
        both->addWidget(label);
        both->addWidget(widget);
        field.form == FieldForm::Long ? column->addWidget(cell) : flow->addWidget(cell);
    }
    column->addWidget(cells);
    auto *foot = new QHBoxLayout;
    m_trouble = styledLabel("warning", {}, this);
    m_trouble->setWordWrap(true);
    m_trouble->setTextFormat(Qt::PlainText);
    QPushButton *keep = wordButton(tr("Keep"), this);
    QPushButton *leave = wordButton(tr("Leave as it was"), this);
    foot->addWidget(m_trouble, 1);
    foot->addWidget(leave);
    foot->addWidget(keep);
    column->addLayout(foot);
    for (QPushButton *each : {keep, leave})
        each->installEventFilter(this);
    connect(keep, &QPushButton::clicked, this, [this] {
        if (commit())
            finish(true);
    });
    connect(leave, &QPushButton::clicked, this, [this] { finish(true); });
}

QWidget *EntryForm::makeField(const EntryField &field)
{
    const QString text = fieldText(m_kind, m_before, field);
    QWidget *made = nullptr;
    if (field.form == FieldForm::Choice) {
        auto *box = new QComboBox(this);
        for (const QString &word : m_kind.fields().at(m_kind.column(field.column)).words)
            box->addItem(shown::word(word), word);
        box->setCurrentIndex(box->findData(text));
        made = box;
    } else if (field.form == FieldForm::Symptom) {
        made = symptomField(m_work.file(), text);
        made->setParent(this);
    } else if (field.form == FieldForm::Instant) {
        made = instantField(text);
        made->setParent(this);
        // The edit shows minutes; what it began with tells whether anybody touched it.
        made->setProperty("begun", static_cast<QDateTimeEdit *>(made)->dateTime());
    } else if (field.form == FieldForm::Long) {
        auto *edit = new QPlainTextEdit(text, this);
        edit->setTabChangesFocus(true);
        const int lines = qBound(1, static_cast<int>(text.size() / 70 + text.count(u'\n')) + 1, 6);
        edit->setFixedHeight(edit->fontMetrics().lineSpacing() * lines + 5 * gap::tight);
        edit->setVerticalScrollBarPolicy(lines == 1 ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
        edit->moveCursor(QTextCursor::End);
        made = edit;
    } else {
        made = new QLineEdit(text, this);
    }
    made->setAccessibleName(field.label);
    made->setMinimumWidth(m_work.style().space(widthOf(field.form)));
    made->installEventFilter(this);
    return made;
}

void EntryForm::focusFirst()
{
    if (m_widgets.isEmpty())
        return;
    m_widgets.first()->setFocus(Qt::OtherFocusReason);
    if (auto *line = qobject_cast<QLineEdit *>(m_widgets.first()))
        line->selectAll();
}

QWidget *EntryForm::field(const QString &column) const
{
    for (qsizetype i = 0; i < m_fields.size(); ++i)
        if (m_fields.at(i).column == column)
            return m_widgets.at(i);
    return nullptr;
}

QString EntryForm::trouble() const
{
    return m_trouble->text();
}

QString EntryForm::typed(int index) const
{
    QWidget *widget = m_widgets.at(index);
    if (const auto *line = qobject_cast<QLineEdit *>(widget))
        return line->text();
    if (const auto *box = qobject_cast<QComboBox *>(widget))
        return box->currentData().toString();
    if (const auto *text = qobject_cast<QPlainTextEdit *>(widget))
        return text->toPlainText();
    const auto *instant = qobject_cast<QDateTimeEdit *>(widget);
    if (instant->dateTime() == widget->property("begun").toDateTime())
        return fieldText(m_kind, m_before, m_fields.at(index));
    return toStored(instant->dateTime().toUTC());
}

bool EntryForm::commit()
{
    if (m_done)
        return true;
    Row after = m_before;
    // What a limit or an uncertainty is read with is the value as typed, so the value comes first.
    for (const bool value : {true, false})
        for (int i = 0; i < m_fields.size(); ++i) {
            if ((m_fields.at(i).form == FieldForm::Value) != value)
                continue;
            const auto changed = withField(m_kind, after, m_fields.at(i), typed(i), m_work.currency(), m_work.today());
            if (!changed) {
                refuse(changed.trouble().sentence());
                return false;
            }
            after = *changed;
        }
    Maker maker = m_work.maker();
    const auto change = editedRecord(m_kind, m_before, after, m_work.file(), m_work.bench(), maker);
    if (!change) {
        refuse(change.trouble().sentence());
        return false;
    }
    m_done = true; // what follows may take the focus away
    m_work.record(*change);
    return true;
}

void EntryForm::refuse(const QString &sentence)
{
    m_trouble->setText(sentence);
    updateGeometry();
}

void EntryForm::finish(bool byKey)
{
    m_done = true;
    Q_EMIT done(byKey);
}

bool EntryForm::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const auto *key = static_cast<QKeyEvent *>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && !(key->modifiers() & Qt::ShiftModifier) && !qobject_cast<QPushButton *>(watched)) {
            if (commit())
                finish(true);
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            finish(true);
            return true;
        }
    }
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent *>(event)->reason();
        if (reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason && reason != Qt::MenuBarFocusReason)
            QTimer::singleShot(0, this, &EntryForm::lookWhetherLeft);
    }
    return QFrame::eventFilter(watched, event);
}

void EntryForm::lookWhetherLeft()
{
    const QWidget *now = window()->focusWidget();
    if (m_done || !isVisible() || !now || now == this || isAncestorOf(now))
        return;
    if (commit())
        finish(false);
}

} // namespace ts
