#include "views/unit/unit_head.h"

#include "model/records/tag_text.h"
#include "views/photos/thumbnails.h"
#include "views/style/style.h"
#include "views/unit/stage_panel.h"
#include "views/unit/stage_ribbon.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QTimer>
#include <QVBoxLayout>

namespace ts {

UnitHead::UnitHead(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("unitHeadTop"));
    m_photo = new QLabel(this);
    m_name = styledLabel("title", {}, this);
    m_name->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_name->setWordWrap(true);
    m_line = styledLabel("quiet", {}, this);
    m_line->setWordWrap(true);
    m_line->setTextInteractionFlags(Qt::TextSelectableByMouse);
    for (QLabel *each : {m_name, m_line}) {
        each->installEventFilter(this);
        each->setToolTip(tr("Details  Ctrl+D"));
    }
    m_details = wordButton(tr("Details…"), this);
    m_details->setAccessibleName(tr("The unit’s details"));
    m_details->setToolTip(tr("Ctrl+D"));
    connect(m_details, &QPushButton::clicked, this, &UnitHead::detailsWanted);
    m_ribbon = new StageRibbon(workplace, this);
    auto *words = new QVBoxLayout;
    words->setSpacing(2);
    words->addStretch(1);
    auto *named = new QHBoxLayout;
    named->setSpacing(gap::small);
    named->addWidget(m_name, 1);
    named->addWidget(m_details, 0, Qt::AlignTop);
    words->addLayout(named);
    words->addWidget(m_line);
    words->addStretch(1);
    m_panel = new StagePanel(workplace, this);
    auto *row = new QHBoxLayout;
    row->setSpacing(gap::normal);
    row->addWidget(m_photo, 0, Qt::AlignVCenter);
    row->addLayout(words, 1);
    row->addWidget(m_ribbon, 0, Qt::AlignVCenter);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::tight);
    column->setSpacing(gap::small);
    column->addLayout(row);
    column->addWidget(m_panel);
    connect(m_ribbon, &StageRibbon::stageWanted, m_panel, &StagePanel::ask);
    connect(m_panel, &StagePanel::settled, m_ribbon, &StageRibbon::takeFocus);
    connect(&m_work, &Workplace::unitChanged, this, &UnitHead::refresh);
    connect(&m_work.style(), &Style::changed, this, &UnitHead::refresh);
    refresh();
}

// The name keeps a third of the head; the stages shrink to one button where that leaves them too little.
void UnitHead::resizeEvent(QResizeEvent *event)
{
    const int photo = m_photo->isHidden() ? 0 : m_work.style().space(21) + gap::normal;
    const bool compact = width() - 2 * gap::wide - photo - m_ribbon->wideWidth() < qMax(width() * 3 / 10, m_work.style().space(60));
    if (compact != m_ribbon->isCompact()) {
        m_ribbon->setCompact(compact);
        // In the middle of being laid out nobody listens to a new height: it is said again afterwards.
        QTimer::singleShot(0, this, [this] {
            layout()->invalidate();
            updateGeometry();
        });
    }
    QFrame::resizeEvent(event);
}

void UnitHead::refresh()
{
    const Unit &unit = m_work.file().unit;
    m_name->setText(unit.name);
    m_line->setText(m_work.hasUnit() ? secondLine() : QString());
    // The newest photo as found stands for the unit: what came in the door is what is looked for on the shelf.
    const QList<Photo> &photos = m_work.file().all<Photo>();
    QString sha256;
    for (const Photo &photo : photos)
        if (sha256.isEmpty() || photo.phase == Phase::AsFound) {
            sha256 = photo.sha256;
            if (photo.phase == Phase::AsFound)
                break;
        }
    m_photo->setHidden(sha256.isEmpty());
    if (!sha256.isEmpty())
        m_photo->setPixmap(m_work.thumbnails().coverNow(sha256, QSize(m_work.style().space(21), m_work.style().space(15)), m_work.style().radius(), devicePixelRatioF()));
}

// A click on the words opens what they are taken from; marking some of them to copy does not.
bool UnitHead::eventFilter(QObject *watched, QEvent *event)
{
    const auto *words = qobject_cast<QLabel *>(watched);
    if (words && event->type() == QEvent::MouseButtonRelease && static_cast<QMouseEvent *>(event)->button() == Qt::LeftButton && !words->hasSelectedText())
        Q_EMIT detailsWanted();
    return QFrame::eventFilter(watched, event);
}

QString UnitHead::secondLine() const
{
    const Unit &unit = m_work.file().unit;
    QStringList parts{tagText(unit.tag)};
    if (!unit.serial.isEmpty())
        parts << tr("serial %1").arg(unit.serial);
    QString mains = unit.mains;
    if (unit.protectionClass)
        mains += (mains.isEmpty() ? QString() : QStringLiteral(", ")) + tr("class %1").arg(toWord(*unit.protectionClass));
    if (!mains.isEmpty())
        parts << mains;
    for (const Spend &spend : m_work.file().all<Spend>())
        if (spend.kind == SpendKind::Purchase && spend.flow == Flow::Out) {
            const QDate day = spend.paidOn.isValid() ? spend.paidOn : spend.at.toLocalTime().date();
            parts << tr("bought %1").arg(shown::day(day, m_work.today()));
            break;
        }
    if (!unit.claim.isEmpty())
        parts << (unit.kind == UnitKind::Owners ? tr("owner’s words: “%1”") : tr("seller’s words: “%1”")).arg(unit.claim);
    return parts.join(QStringLiteral(" · "));
}

} // namespace ts
