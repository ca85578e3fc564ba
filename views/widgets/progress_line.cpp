#include "views/widgets/progress_line.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>

namespace ts {

ProgressLine::ProgressLine(QWidget *parent) : QFrame(parent)
{
    m_what = styledLabel("quiet", {}, this);
    m_bar = new QProgressBar(this);
    m_bar->setTextVisible(false);
    m_bar->setFixedWidth(140);
    m_bar->setAccessibleName(tr("How far it is"));
    auto *stopping = wordButton(tr("Stop"), this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::small);
    row->addWidget(m_what);
    row->addWidget(m_bar);
    row->addWidget(stopping);
    connect(stopping, &QPushButton::clicked, this, &ProgressLine::stopWanted);
    hide();
}

void ProgressLine::begin(const QString &what)
{
    m_what->setText(what);
    m_bar->setRange(0, 0);
    show();
}

void ProgressLine::advance(int done, int total)
{
    m_bar->setRange(0, total);
    m_bar->setValue(done);
}

} // namespace ts
