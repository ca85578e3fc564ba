#pragma once

#include <QPlainTextEdit>

namespace ts {

/// A text of a line or more that is as tall as what is in it. Enter and leaving it commit, Esc puts back what was there, Tab goes on.
class GrowingText : public QPlainTextEdit {
    Q_OBJECT
public:
    explicit GrowingText(const QString &name, QWidget *parent = nullptr); ///< its accessible name

    /// What is recorded. It is shown unless something else is being typed.
    void setRecorded(const QString &text);
    [[nodiscard]] bool isEdited() const { return toPlainText().simplified() != m_recorded; }
    void commit();
    /// What was committed was refused: it stays to be mended, and this is still what is recorded.
    void refuse(const QString &recorded) { m_recorded = recorded; }

Q_SIGNALS:
    void committed(const QString &text); ///< another text than the recorded one, on one line

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void grow();

    QString m_recorded;
};

} // namespace ts
