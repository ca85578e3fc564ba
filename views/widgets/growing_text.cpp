#include "views/widgets/growing_text.h"

#include <QKeyEvent>
#include <QTextBlock>

namespace ts {

namespace {
constexpr int aroundText = 14; // frame and padding of the style sheet, above and below
}

GrowingText::GrowingText(const QString &name, QWidget *parent) : QPlainTextEdit(parent)
{
    setAccessibleName(name);
    setTabChangesFocus(true);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    document()->setDocumentMargin(1);
    connect(this, &QPlainTextEdit::textChanged, this, &GrowingText::grow);
    grow();
}

void GrowingText::setRecorded(const QString &text)
{
    const bool typing = hasFocus() && isEdited();
    m_recorded = text;
    if (!typing && toPlainText() != text)
        setPlainText(text);
}

void GrowingText::commit()
{
    if (!isEdited())
        return;
    m_recorded = toPlainText().simplified();
    Q_EMIT committed(m_recorded);
}

void GrowingText::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        commit();
    } else if (event->key() == Qt::Key_Escape && isEdited()) {
        setPlainText(m_recorded);
        selectAll();
    } else if (event->key() == Qt::Key_Escape) {
        event->ignore();
    } else {
        QPlainTextEdit::keyPressEvent(event);
    }
}

void GrowingText::focusOutEvent(QFocusEvent *event)
{
    QPlainTextEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason)
        commit();
}

void GrowingText::resizeEvent(QResizeEvent *event)
{
    QPlainTextEdit::resizeEvent(event);
    grow();
}

void GrowingText::grow()
{
    int lines = 0;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next())
        lines += qMax(1, block.layout()->lineCount());
    const int wanted = qMax(1, lines) * fontMetrics().lineSpacing() + aroundText;
    if (wanted != height())
        setFixedHeight(wanted);
}

} // namespace ts
