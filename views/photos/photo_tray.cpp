#include "views/photos/photo_tray.h"

#include "model/records/tag_text.h"
#include "views/photos/small_pictures.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/unit_field.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QShortcut>

namespace ts {

PhotoTray::PhotoTray(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("tray"));
    m_pictures = new SmallPictures(m_work.style(), this);
    m_says = styledLabel("strong", {}, this);
    m_take = primaryButton(tr("Yes  ·  F8"), this);
    m_take->setAccessibleName(tr("Give the photos to the unit in hand"));
    connect(m_take, &QPushButton::clicked, this, &PhotoTray::acceptForUnitInHand);
    auto *key = new QShortcut(QKeySequence(Qt::Key_F8), this);
    connect(key, &QShortcut::activated, this, &PhotoTray::acceptForUnitInHand);
    auto *or_ = styledLabel("quiet", tr("or for"), this);
    m_other = new UnitField(workplace, tr("Give the photos to another unit"), this);
    m_other->setMaximumWidth(m_work.style().space(50));
    connect(m_other, &UnitField::chosen, this, &PhotoTray::give);
    auto *leave = wordButton(tr("Leave them"), this);
    leave->setToolTip(tr("They stay in the folder and are not offered again"));
    connect(leave, &QPushButton::clicked, this, &PhotoTray::empty);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::normal, gap::small, gap::normal, gap::small);
    row->setSpacing(gap::small);
    row->addWidget(m_pictures);
    row->addWidget(m_says);
    row->addWidget(m_take);
    row->addWidget(or_);
    row->addWidget(m_other, 1);
    row->addStretch(1);
    row->addWidget(leave);
    connect(&m_work, &Workplace::unitTaken, this, &PhotoTray::refresh);
    hide();
}

void PhotoTray::add(const QStringList &files)
{
    for (const QString &file : files) {
        if (m_files.contains(file))
            continue;
        m_files << file;
        m_pictures->add({file, {}});
    }
    refresh();
    show();
}

void PhotoTray::refresh()
{
    const bool inHand = m_work.hasUnit();
    const int count = static_cast<int>(m_files.size());
    m_says->setText(inHand ? tr("%n photo(s) for %1 %2?", nullptr, count).arg(tagText(m_work.file().unit.tag), m_work.file().unit.name) : tr("%n photo(s) came in.", nullptr, count));
    m_take->setVisible(inHand);
}

void PhotoTray::acceptForUnitInHand()
{
    if (m_work.hasUnit() && !m_files.isEmpty())
        give(m_work.file().unit.id);
}

void PhotoTray::give(const Id<Unit> &unit)
{
    const QList<PhotoSource> photos = photoFiles(m_files);
    empty();
    Q_EMIT given(photos, unit);
}

void PhotoTray::empty()
{
    m_files.clear();
    m_pictures->clear();
    hide();
}

} // namespace ts
