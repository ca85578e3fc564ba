#include "views/photos/photo_side.h"

#include "model/records/rehome.h"
#include "model/records/tag_text.h"
#include "model/values/plain_text.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/names.h"
#include "views/widgets/unit_field.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ts {

namespace {

// What is said of a photo: its caption, else the name of its file.
QString wordsOf(const Photo &photo)
{
    return photo.caption.isEmpty() ? photo.originalName : photo.caption;
}

} // namespace

PhotoSide::PhotoSide(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    setFixedWidth(m_work.style().space(60));
    m_caption = new QLineEdit(this);
    m_caption->setAccessibleName(tr("Caption"));
    m_caption->setPlaceholderText(tr("What it shows"));
    m_caption->installEventFilter(this);
    connect(m_caption, &QLineEdit::returnPressed, this, [this] {
        commitCaption();
        Q_EMIT finished();
    });
    m_phases = new QButtonGroup(this);
    auto *phases = new QVBoxLayout;
    phases->setSpacing(gap::tight);
    const std::pair<Phase, QString> keys[]{{Phase::AsFound, tr("F")}, {Phase::DuringWork, tr("D")}, {Phase::AsItLeaves, tr("L")}};
    for (const auto &[phase, key] : keys) {
        auto *choice = button(tr("%1  ·  %2").arg(phaseName(phase), key), this);
        choice->setAccessibleName(phaseName(phase));
        choice->setCheckable(true);
        m_phases->addButton(choice, static_cast<int>(phase));
        phases->addWidget(choice);
    }
    connect(m_phases, &QButtonGroup::idClicked, this, [this](int phase) { setPhase(static_cast<Phase>(phase)); });
    m_onSheet = new QCheckBox(tr("On the restoration sheet  ·  S"), this);
    m_onSheet->setAccessibleName(tr("On the restoration sheet"));
    connect(m_onSheet, &QCheckBox::clicked, this, &PhotoSide::toggleOnSheet);
    m_facts = styledLabel("faint", {}, this);
    m_facts->setWordWrap(true);
    m_zoom = styledLabel("faint", {}, this);
    m_move = new UnitField(m_work, tr("Move the photo to another unit"), this);
    connect(m_move, &UnitField::chosen, this, &PhotoSide::moveTo);
    auto *remove = button(tr("Remove  ·  Del"), this);
    remove->setAccessibleName(tr("Remove the photo"));
    connect(remove, &QPushButton::clicked, this, &PhotoSide::removePhoto);

    const auto label = [this](const QString &text, QWidget *buddy) {
        auto *word = styledLabel("quiet", text, this);
        word->setBuddy(buddy);
        return word;
    };
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::tight);
    column->addWidget(label(tr("Caption  ·  C"), m_caption));
    column->addWidget(m_caption);
    column->addSpacing(gap::small);
    column->addWidget(styledLabel("quiet", tr("Phase"), this));
    column->addLayout(phases);
    column->addSpacing(gap::small);
    column->addWidget(m_onSheet);
    column->addSpacing(gap::small);
    column->addWidget(label(tr("Belongs to another unit  ·  M"), m_move));
    column->addWidget(m_move);
    column->addSpacing(gap::small);
    column->addWidget(remove, 0, Qt::AlignLeft);
    column->addStretch(1);
    column->addWidget(m_facts);
    column->addWidget(m_zoom);
}


const Photo *PhotoSide::photo() const
{
    return m_work.file().find(m_photo);
}

void PhotoSide::showPhoto(const Id<Photo> &photo, int place, int total)
{
    if (m_photo != photo)
        commitCaption();
    const bool another = m_photo != photo;
    m_photo = photo;
    const Photo *shown = this->photo();
    if (!shown)
        return;
    // What is being typed is not written over.
    if (another || !m_caption->isModified()) {
        m_caption->setText(shown->caption);
        m_caption->setCursorPosition(0);
    }
    m_phases->button(static_cast<int>(shown->phase))->setChecked(true);
    m_onSheet->setChecked(shown->onSheet);
    QStringList facts{tr("%1 of %2").arg(place).arg(total)};
    if (shown->takenAt.isValid())
        facts << tr("taken %1").arg(shown::dayAndTime(shown->takenAt));
    facts << tr("%1 × %2 pixels").arg(shown->width).arg(shown->height) << shown->originalName;
    m_facts->setText(facts.join(QLatin1Char('\n')));
}

void PhotoSide::showZoom(const QString &zoom)
{
    m_zoom->setText(zoom);
}

void PhotoSide::focusCaption()
{
    m_caption->setFocus();
    m_caption->selectAll();
}

void PhotoSide::focusMove()
{
    m_move->setFocus();
}

void PhotoSide::record(const Photo &after, const QString &sentence)
{
    if (const Photo *before = photo())
        m_work.record(Change(tagText(m_work.file().unit.tag) + QLatin1Char(' ') + sentence).edit(*before, after));
}

void PhotoSide::commitCaption()
{
    const Photo *before = photo();
    if (!before || !m_caption->isModified())
        return;
    m_caption->setModified(false);
    const auto text = plainText(m_caption->text(), tr("The caption"));
    if (!text)
        return m_work.refuse(text.trouble());
    Photo after = *before;
    after.caption = *text;
    m_work.record(Change(tagText(m_work.file().unit.tag) + QLatin1Char(' ') + tr("Photo caption: %1").arg(*text)).edit(*before, after));
}

void PhotoSide::setPhase(Phase phase)
{
    if (!photo())
        return;
    Photo after = *photo();
    after.phase = phase;
    record(after, tr("Photo %1: %2").arg(wordsOf(after), phaseName(phase)));
}

void PhotoSide::toggleOnSheet()
{
    if (!photo())
        return;
    Photo after = *photo();
    after.onSheet = !after.onSheet;
    record(after, (after.onSheet ? tr("Photo onto the sheet: %1") : tr("Photo off the sheet: %1")).arg(wordsOf(after)));
}

void PhotoSide::moveTo(const Id<Unit> &unit)
{
    if (!photo())
        return;
    const auto to = m_work.desk().unitFile(unit);
    if (!to)
        return m_work.refuse(to.trouble());
    Maker maker = m_work.maker();
    m_work.record(rehomed({{&description<Photo>(), m_photo.value}}, m_work.file(), *to, maker));
    Q_EMIT finished();
}

void PhotoSide::removePhoto()
{
    if (!photo())
        return;
    const RecordKey key{&description<Photo>(), m_photo.value};
    Change change(tagText(m_work.file().unit.tag) + QLatin1Char(' ') + tr("Photo removed: %1").arg(wordsOf(*photo())));
    const QList<KindRow> gone = withWhatHangs({key}, m_work.file(), Hanging::Needs); // its pins
    QList<RecordKey> keys;
    for (const KindRow &each : gone) {
        keys << each.key();
        change.addItem({each.kind, each.row, std::nullopt});
    }
    for (const ChangeItem &item : lettingGo(keys, m_work.file()))
        change.addItem(item);
    m_work.record(change);
    Q_EMIT finished();
}

bool PhotoSide::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_caption && event->type() == QEvent::FocusOut)
        commitCaption();
    if (watched == m_caption && event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->key() == Qt::Key_Escape) {
        m_caption->setText(photo() ? photo()->caption : QString());
        Q_EMIT finished();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ts
