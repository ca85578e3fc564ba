#include "views/handover/earlier_sheets.h"

#include "model/keeping/outgoing_sheet.h"
#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/ask.h"
#include "views/widgets/buttons.h"
#include "views/widgets/locale_text.h"

#include <QFile>
#include <QHBoxLayout>
#include <QLabel>

namespace ts {

EarlierSheets::EarlierSheets(Workplace &workplace, QWidget *parent) : Card(tr("Handed over"), parent), m_work(workplace) {}

void EarlierSheets::refresh()
{
    QList<Paper> papers = m_work.file().all<Paper>();
    papers.removeIf([](const Paper &paper) { return paper.kind != PaperKind::Restoration; });
    setRemark(papers.isEmpty() ? tr("none yet") : QString());
    if (papers == m_shown)
        return;
    m_shown = papers;
    while (QLayoutItem *item = body()->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (qsizetype i = papers.size() - 1; i >= 0; --i) { // the newest first
        const Paper &paper = papers.at(i);
        const QString words = tr("No. %1 · edition %2 · %3 · %4").arg(paper.number).arg(paper.edition).arg(shown::dayAndTime(paper.madeAt), paper.format.toUpper());
        auto *line = new QWidget(this);
        auto *row = new QHBoxLayout(line);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(styledLabel("quiet", words, line), 1);
        auto *see = wordButton(tr("Open"), line);
        see->setAccessibleName(tr("Open edition %1").arg(paper.edition));
        connect(see, &QPushButton::clicked, this, [this, paper] { open(paper); });
        row->addWidget(see);
        body()->addWidget(line);
    }
}

void EarlierSheets::open(const Paper &paper)
{
    const auto bytes = m_work.desk().kept(paper.sha256);
    if (!bytes)
        return m_work.refuse(bytes.trouble());
    // The copy is read-only: what is written into it would look like what was handed over.
    const QString file = m_folder.filePath(tr("%1 restoration sheet %2").arg(tagText(m_work.file().unit.tag)).arg(paper.edition) + QLatin1Char('.') + paper.format);
    if (!QFile::exists(file)) {
        if (auto written = writeWhole(file, *bytes); !written)
            return m_work.refuse(written.trouble());
        QFile::setPermissions(file, QFile::ReadOwner | QFile::ReadUser);
    }
    if (!ask::show(this, file))
        m_work.refuse(tr("Nothing on this computer opens %1 files; write the sheet again and take it to one that does.").arg(paper.format.toUpper()));
}

} // namespace ts
