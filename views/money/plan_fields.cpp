#include "views/money/plan_fields.h"

#include "views/money/money_in_hand.h"
#include "views/style/style.h"
#include "views/widgets/card.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>

namespace ts {

PlanFields::PlanFields(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(gap::small);
    m_grid->setVerticalSpacing(gap::tight);
    m_grid->setColumnStretch(0, 3);
    for (int column = 1; column < 4; ++column)
        m_grid->setColumnStretch(column, 2);
}

void PlanFields::addHeads(const QStringList &heads)
{
    const int row = m_grid->rowCount();
    for (int column = 0; column < heads.size(); ++column)
        m_grid->addWidget(styledLabel("faint", heads.at(column), this), row, column + 1);
}

void PlanFields::addRow(const QString &label, const QList<PlanField> &fields, const QString &hint)
{
    static constexpr std::array points{QT_TR_NOOP("hardly less"), QT_TR_NOOP("likely"), QT_TR_NOOP("hardly more")};
    const int row = m_grid->rowCount();
    auto *word = styledLabel("quiet", label, this);
    word->setWordWrap(true);
    m_grid->addWidget(word, row, 0);
    for (int i = 0; i < fields.size(); ++i) {
        auto *edit = new QLineEdit(this);
        edit->setAccessibleName(fields.size() == 3 ? tr("%1, %2").arg(label, tr(points.at(static_cast<std::size_t>(i)))) : label);
        edit->setPlaceholderText(hint);
        edit->setAlignment(Qt::AlignRight);
        edit->setMinimumWidth(m_work.style().space(10));
        edit->installEventFilter(this);
        const PlanField field = fields.at(i);
        connect(edit, &QLineEdit::textEdited, this, [this, field](const QString &typed) { tried(field, typed); });
        connect(edit, &QLineEdit::editingFinished, this, [this, field] { commit(field); });
        m_grid->addWidget(edit, row, i + 1, 1, fields.size() == 1 ? 3 : 1);
        if (!word->buddy() || i == 1)
            word->setBuddy(edit);
        m_fields << std::pair(field, edit);
    }
}

QLineEdit *PlanFields::field(PlanField field) const
{
    for (const auto &[each, edit] : m_fields)
        if (each == field)
            return edit;
    return nullptr;
}

void PlanFields::refresh()
{
    const bool another = m_of != m_work.file().unit.id;
    m_of = m_work.file().unit.id;
    for (const auto &[field, edit] : m_fields)
        if (another || !edit->isModified())
            edit->setText(planText(m_work.file(), field));
}

void PlanFields::commitEdits()
{
    for (const auto &[field, edit] : m_fields)
        if (edit->isModified())
            commit(field);
}

void PlanFields::tried(PlanField field, const QString &typed)
{
    Maker maker = m_work.maker();
    // What cannot be read yet is only not finished.
    if (const auto plan = planTyped(m_work.file(), m_work.bench(), field, typed, m_work.today(), maker))
        m_work.money().wantWith(*plan);
}

void PlanFields::commit(PlanField which)
{
    QLineEdit *edit = field(which);
    if (!edit->isModified() || m_of != m_work.file().unit.id)
        return;
    const QString typed = edit->text();
    edit->setModified(false);
    if (typed.trimmed() != planText(m_work.file(), which)) {
        Maker maker = m_work.maker();
        const auto plan = planTyped(m_work.file(), m_work.bench(), which, typed, m_work.today(), maker);
        if (plan)
            m_work.record(planChange(m_work.file(), *plan, typed));
        else
            m_work.refuse(plan.trouble());
    }
    edit->setText(planText(m_work.file(), which));
    m_work.money().want();
}

bool PlanFields::eventFilter(QObject *watched, QEvent *event)
{
    auto *edit = qobject_cast<QLineEdit *>(watched);
    if (edit && event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->key() == Qt::Key_Escape && edit->isModified()) {
        for (const auto &[field, each] : m_fields)
            if (each == edit)
                edit->setText(planText(m_work.file(), field));
        edit->setModified(false);
        m_work.money().want();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ts
