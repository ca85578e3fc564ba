#include "views/sums/sums_place.h"

#include "views/style/style.h"
#include "views/sums/sum_form.h"
#include "views/sums/sum_words.h"
#include "views/widgets/card.h"
#include "views/widgets/page_scroll.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

namespace ts {

SumsPlace::SumsPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent), m_sums(allSums())
{
    m_filter = new QLineEdit(this);
    m_filter->setAccessibleName(tr("Narrow the sums"));
    m_filter->setPlaceholderText(tr("Which sum?"));
    m_filter->setClearButtonEnabled(true);
    m_filter->installEventFilter(this);
    connect(m_filter, &QLineEdit::textChanged, this, &SumsPlace::fillList);
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("Bench sums"));
    m_list->setSpacing(1);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_form = new SumForm(workplace);
    auto *sheet = new Card({}, this);
    sheet->body()->addWidget(m_form);
    auto *left = new QVBoxLayout;
    left->setSpacing(gap::small);
    left->addWidget(m_filter);
    left->addWidget(m_list, 1);
    auto *both = new QHBoxLayout;
    both->setSpacing(gap::normal);
    both->addLayout(left, 1);
    both->addWidget(new PageScroll(sheet, {}, this), 3);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addWidget(styledLabel("heading", tr("Bench sums"), this));
    column->addLayout(both, 1);
    connect(m_list, &QListWidget::currentItemChanged, this, [this](QListWidgetItem *item) {
        if (item && item->data(Qt::UserRole).isValid())
            m_form->show(m_sums.at(item->data(Qt::UserRole).toInt()));
    });
    connect(m_list, &QListWidget::itemActivated, m_form, &SumForm::focusFirst);
    fillList();
}

void SumsPlace::fillList()
{
    const QString wanted = m_filter->text().simplified();
    const auto matches = [&wanted](const Sum &sum) {
        return wanted.isEmpty() || sumTitle(sum).contains(wanted, Qt::CaseInsensitive) || sum.says.contains(wanted, Qt::CaseInsensitive) || sumGroup(sum.name).contains(wanted, Qt::CaseInsensitive);
    };
    m_list->clear();
    QString group;
    for (int i = 0; i < m_sums.size(); ++i) {
        if (!matches(m_sums.at(i)))
            continue;
        if (const QString own = sumGroup(m_sums.at(i).name); own != group) {
            group = own;
            auto *head = new QListWidgetItem(group, m_list);
            head->setFlags(Qt::NoItemFlags);
            QFont face = work().style().text(0.88);
            face.setWeight(QFont::DemiBold);
            head->setFont(face);
        }
        auto *item = new QListWidgetItem(QStringLiteral("   ") + sumTitle(m_sums.at(i)), m_list);
        item->setData(Qt::UserRole, i);
        item->setToolTip(m_sums.at(i).says);
        if (!m_list->currentItem())
            m_list->setCurrentItem(item);
    }
}

// From the filter straight into the list and on to the fields.
bool SumsPlace::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_filter && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        if (key == Qt::Key_Down) {
            m_list->setFocus();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            m_form->focusFirst();
            return true;
        }
    }
    return Place::eventFilter(watched, event);
}

void SumsPlace::refresh()
{
    m_form->refreshUnit();
}

void SumsPlace::focusFirst()
{
    m_filter->setFocus();
    m_filter->selectAll();
}

QString SumsPlace::help() const
{
    return tr("Sums of the bench: markings, fuses, discharge, levels, speeds, statistics, money. Type a few letters of what is wanted, Enter, fill the fields; what comes out stands below at once, with its "
              "formula and where it comes from. It can be put into the log of the unit in hand, as a note or as a reading.");
}

} // namespace ts
