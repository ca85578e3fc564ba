#include "views/take_in/like_units.h"

#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QLabel>

namespace ts {

namespace {

constexpr int pauseMs = 150;
constexpr int mostOffers = 2;
constexpr int leastLetters = 3;

} // namespace

LikeUnits::LikeUnits(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_row = new QHBoxLayout(this);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(gap::tight);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseMs);
    connect(&m_pause, &QTimer::timeout, this, &LikeUnits::look);
    hide();
}

void LikeUnits::lookFor(const QString &name)
{
    m_name = name.simplified();
    m_pause.start();
}

void LikeUnits::clear()
{
    m_pause.stop();
    while (QLayoutItem *item = m_row->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    hide();
}

void LikeUnits::look()
{
    clear();
    QStringList words = m_name.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    // "Pellworth KD-7 cassette deck, no lid" is like a "Pellworth KD-7 cassette deck": words are let go from the end, as long as what is
    // left still says which model is meant.
    for (; !words.isEmpty() && words.join(QLatin1Char(' ')).size() >= leastLetters; words.removeLast()) {
        const auto found = m_work.desk().search(words.join(QLatin1Char(' ')), 20);
        if (!found)
            return;
        int offered = 0;
        for (const Found &each : *found)
            if (each.kind == QLatin1String("unit") && offered < mostOffers && each.unitName.contains(words.first(), Qt::CaseInsensitive)) {
                offer(each);
                ++offered;
            }
        if (offered > 0) {
            m_row->addStretch(1);
            show();
            return;
        }
        if (words.size() <= 2)
            return;
    }
}

void LikeUnits::offer(const Found &unit)
{
    if (m_row->count() == 0)
        m_row->addWidget(styledLabel("quiet", tr("Alt+L  like"), this));
    auto *copy = wordButton(tagText(unit.tag) + QLatin1Char(' ') + QString(unit.unitName).replace(QLatin1Char('&'), QLatin1String("&&")), this);
    copy->setAccessibleName(tr("Copy from %1 %2").arg(tagText(unit.tag), unit.unitName));
    copy->setToolTip(tr("Copies its name, maker, model, category, mains, protection class and test points"));
    connect(copy, &QPushButton::clicked, this, [this, id = unit.unit] { Q_EMIT chosen(id); });
    m_row->addWidget(copy);
}

bool LikeUnits::chooseFirst()
{
    if (m_pause.isActive()) {
        m_pause.stop();
        look();
    }
    if (auto *first = findChild<QPushButton *>()) {
        first->click();
        return true;
    }
    return false;
}

} // namespace ts
