#include "views/find/find_field.h"

#include "views/find/found_delegate.h"
#include "views/find/found_model.h"
#include "views/style/style.h"
#include "views/widgets/card.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace ts {

namespace {
constexpr int restMs = 150; // after the last key
constexpr int mostFound = 40;
constexpr int longestTag = 9; // figures that an int holds

// What a scanner types, or somebody who reads the tag.
std::optional<int> tagOf(const QString &text)
{
    const QString plain = text.trimmed();
    const bool figures = !plain.isEmpty() && plain.size() <= longestTag && std::all_of(plain.begin(), plain.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
    return figures ? std::optional(plain.toInt()) : std::nullopt;
}

} // namespace

FindField::FindField(Workplace &workplace, QWidget *parent) : QLineEdit(parent), m_work(workplace)
{
    setPlaceholderText(tr("Find anything: tag, part, reading, words…"));
    setAccessibleName(tr("Find anything"));
    setMaximumWidth(460);
    m_found = new FoundModel(this);
    // Part of the window and no window of its own, so that the keyboard stays in the field.
    m_sheet = new QFrame(parent);
    m_sheet->setObjectName(QStringLiteral("found"));
    m_list = new QListView(m_sheet);
    m_list->setModel(m_found);
    m_list->setItemDelegate(new FoundDelegate(m_work.style(), m_list));
    m_list->setFocusPolicy(Qt::NoFocus);
    m_list->setAccessibleName(tr("What was found"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_none = styledLabel("quiet", {}, m_sheet);
    m_none->setWordWrap(true);
    m_none->setMargin(gap::normal);
    auto *column = new QVBoxLayout(m_sheet);
    column->setContentsMargins(1, 1, 1, 1);
    column->addWidget(m_list);
    column->addWidget(m_none);
    m_sheet->hide();
    m_typed = new QTimer(this);
    m_typed->setSingleShot(true);
    m_typed->setInterval(restMs);
    connect(this, &QLineEdit::textEdited, m_typed, qOverload<>(&QTimer::start));
    connect(m_typed, &QTimer::timeout, this, &FindField::search);
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex &index) { goTo(index.row()); });
}

void FindField::begin()
{
    if (!hasFocus())
        m_before = window()->focusWidget();
    setFocus();
    selectAll();
    if (!text().trimmed().isEmpty())
        search();
}

bool FindField::isOpen() const
{
    return !m_sheet->isHidden();
}

void FindField::search()
{
    m_typed->stop();
    const QString words = text().trimmed();
    if (words.isEmpty()) {
        putAway();
        return;
    }
    auto found = m_work.desk().search(words, mostFound);
    if (!found) {
        m_work.refuse(found.trouble());
        return;
    }
    // Figures alone are a tag before they are anything else.
    if (const auto tag = tagOf(words))
        std::stable_partition(found->begin(), found->end(), [&](const Found &each) { return each.kind == QLatin1String("unit") && each.tag == *tag; });
    m_found->show(*found);
    m_none->setText(tr("Nothing in this workbook has “%1”.").arg(words));
    m_none->setVisible(found->isEmpty());
    m_list->setVisible(!found->isEmpty());
    open();
    m_list->setCurrentIndex(m_found->index(m_found->nextFrom(0, 1)));
    m_list->scrollToTop();
}

void FindField::open()
{
    QWidget *whole = window();
    if (m_sheet->parentWidget() != whole)
        m_sheet->setParent(whole);
    const QPoint at = mapTo(whole, QPoint(0, height() + 3));
    const int width = qMin(qMax(this->width(), m_work.style().space(130)), whole->width() - at.x() - gap::normal);
    int wanted = 2;
    if (m_list->isVisibleTo(m_sheet))
        for (int row = 0; row < m_found->rowCount(); ++row)
            wanted += m_list->sizeHintForIndex(m_found->index(row)).height();
    else
        wanted += m_none->heightForWidth(width) + gap::normal;
    m_sheet->setGeometry(at.x(), at.y(), width, qMin(wanted + 2, whole->height() - at.y() - m_work.style().space(10)));
    m_sheet->show();
    m_sheet->raise();
}

void FindField::putAway()
{
    m_typed->stop();
    m_sheet->hide();
}

void FindField::goBack()
{
    putAway();
    if (m_before && m_before->isVisible())
        m_before->setFocus();
}

void FindField::goTo(int row)
{
    const Found *found = m_found->at(row);
    if (!found)
        return;
    const Found there = *found;
    putAway();
    if (there.unit.isNull()) {
        m_work.goTo(placeOfKind(there.kind));
        return;
    }
    const bool unit = there.kind == QLatin1String("unit");
    // A unit that was found by its serial or its shelf, not by what it is called, is shown where that stands.
    const QStringList words = text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const bool called = !unit || tagOf(text()) == there.tag || std::any_of(words.begin(), words.end(), [&](const QString &word) { return there.unitName.contains(word, Qt::CaseInsensitive); });
    m_work.goTo(there.unit, called ? pageOfKind(there.kind) : PageKey::Details, unit ? QString() : there.kind, unit ? QUuid() : there.id);
}

void FindField::enter()
{
    if (const auto tag = tagOf(text())) {
        if (const auto unit = m_work.desk().unitByTag(*tag)) { // at once: a scanner does not wait for the list
            putAway();
            m_work.goTo(*unit, PageKey::Log);
            return;
        }
    }
    if (m_typed->isActive() || !isOpen())
        search();
    if (isOpen())
        goTo(m_list->currentIndex().row());
}

void FindField::step(int by)
{
    if (!isOpen()) {
        search();
        return;
    }
    const int row = m_found->nextFrom(m_list->currentIndex().row() + by, by);
    if (row >= 0)
        m_list->setCurrentIndex(m_found->index(row));
}

void FindField::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Down:
        return step(1);
    case Qt::Key_Up:
        return step(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return enter();
    case Qt::Key_Escape:
        return goBack();
    default:
        QLineEdit::keyPressEvent(event);
    }
}

void FindField::focusOutEvent(QFocusEvent *event)
{
    QLineEdit::focusOutEvent(event);
    // A click on the list takes no keyboard away; everything else that does closes it.
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        putAway();
}

} // namespace ts
