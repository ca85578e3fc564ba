#include "views/frame/first_start.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/notice_bar.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ts {

namespace {

QPushButton *choice(Card *card, const QString &says, QPushButton *button)
{
    auto *text = styledLabel("quiet", says, card);
    text->setWordWrap(true);
    card->body()->addWidget(text);
    card->body()->addStretch(1);
    card->body()->addWidget(button, 0, Qt::AlignLeft);
    return button;
}

} // namespace

FirstStart::FirstStart(QWidget *parent) : QWidget(parent)
{
    m_notice = new NoticeBar(this);
    auto *title = styledLabel("big", tr("Turnscrew"), this);
    auto *says = styledLabel("quiet", tr("The workbook of a restorer: from taking a unit in to the buyer’s sheet."), this);
    auto *make = new Card(tr("A new workbook"), this);
    connect(choice(make, tr("One file, wherever you put it. Everything you record goes into it, and nowhere else."), primaryButton(tr("New workbook…"), make)),
            &QPushButton::clicked, this, &FirstStart::newWanted);
    auto *open = new Card(tr("One that is there"), this);
    connect(choice(open, tr("A workbook that you made before, or one that a colleague gave you."), button(tr("Open workbook…"), open)), &QPushButton::clicked, this,
            &FirstStart::openWanted);
    auto *demo = new Card(tr("The demo"), this);
    connect(choice(demo, tr("An invented bench with units over every stage, to look around in and to spoil."), button(tr("Look at the demo"), demo)), &QPushButton::clicked,
            this, &FirstStart::demoWanted);

    auto *cards = new QHBoxLayout;
    cards->setSpacing(gap::normal);
    for (Card *card : {make, open, demo}) {
        card->setMinimumHeight(150);
        cards->addWidget(card, 1);
    }
    m_recent = new QVBoxLayout;
    m_recent->setSpacing(2);
    auto *middle = new QVBoxLayout;
    middle->setSpacing(gap::small);
    middle->addStretch(2);
    middle->addWidget(title);
    middle->addWidget(says);
    middle->addSpacing(gap::wide);
    middle->addLayout(cards);
    middle->addSpacing(gap::wide);
    middle->addLayout(m_recent);
    middle->addStretch(3);
    auto *frame = new QWidget(this);
    frame->setMaximumWidth(860);
    frame->setLayout(middle);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_notice);
    auto *row = new QHBoxLayout;
    row->setContentsMargins(gap::wide, 0, gap::wide, 0);
    row->addStretch(1);
    row->addWidget(frame, 8);
    row->addStretch(1);
    column->addLayout(row, 1);
}

void FirstStart::setRecent(const QStringList &books)
{
    while (QLayoutItem *item = m_recent->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (books.isEmpty())
        return;
    m_recent->addWidget(styledLabel("group", tr("Opened before"), this));
    for (const QString &book : books) {
        const QFileInfo file(book);
        auto *open = wordButton(book.contains(QLatin1String("://")) ? book : file.fileName(), this);
        open->setToolTip(book.toHtmlEscaped());
        connect(open, &QPushButton::clicked, this, [this, book] { Q_EMIT bookWanted(book); });
        auto *row = new QHBoxLayout;
        auto *line = new QWidget(this);
        line->setLayout(row);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(open);
        auto *where = styledLabel("faint", book.contains(QLatin1String("://")) ? QString() : file.absolutePath(), line);
        row->addWidget(where, 1);
        m_recent->addWidget(line);
    }
}

} // namespace ts
