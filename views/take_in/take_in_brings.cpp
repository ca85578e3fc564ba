#include "views/take_in/take_in_brings.h"

#include "model/sums/coming_in.h"
#include "views/style/style.h"
#include "views/widgets/card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ts {

namespace {

QLabel *paragraph(const char *role, Card *card)
{
    QLabel *label = styledLabel(role, {}, card);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    card->body()->addWidget(label);
    return label;
}

} // namespace

TakeInBrings::TakeInBrings(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_mains = new Card(tr("Before it is plugged in"), this);
    restyle(m_mains, "tone", QStringLiteral("outside"));
    m_mainsText = paragraph("trouble", m_mains);
    m_cautions = new Card(tr("Cautions"), this);
    m_cautionText = paragraph("warning", m_cautions);
    m_proofs = new Card(tr("To be proved before handover"), this);
    m_proofText = paragraph("quiet", m_proofs);
    m_points = styledLabel("faint", {}, this);
    m_points->setWordWrap(true);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::normal);
    for (QWidget *each : QWidgetList{m_mains, m_cautions, m_proofs, m_points})
        column->addWidget(each);
    column->addStretch(1);
}

void TakeInBrings::showFor(const Arrival &arrival)
{
    Maker maker = m_work.maker();
    const ComingIn brings = comingIn(arrival.unit, m_work.bench(), maker);
    m_mainsText->setText(brings.mains.join(QLatin1Char('\n')));
    m_mains->setHidden(brings.mains.isEmpty());
    m_cautionText->setText(brings.cautions.join(QStringLiteral("\n\n")));
    m_cautions->setHidden(brings.cautions.isEmpty());
    QStringList proofs;
    for (const Proof &proof : brings.proofs)
        proofs << proof.text;
    m_proofText->setText(proofs.join(QLatin1Char('\n')));
    m_proofs->setHidden(proofs.isEmpty());
    m_points->setText(arrival.points.isEmpty() ? QString() : tr("%n test point(s) are copied over.", nullptr, static_cast<int>(arrival.points.size())));
}

} // namespace ts
