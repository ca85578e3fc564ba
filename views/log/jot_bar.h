#pragma once

#include "model/jot/jotted.h"
#include "views/workplace.h"

#include <QFrame>
#include <QHash>

class QLabel;

namespace ts {

class JotLine;
class Pill;

/// The foot of the log: the line, and under it what will be recorded. Keeps what is being typed for each unit, and what was
/// recorded through it since the window was opened.
class JotBar : public QFrame {
    Q_OBJECT
public:
    /// `over` is the page around it.
    JotBar(Workplace &workplace, QWidget *over);

    [[nodiscard]] JotLine *line() const { return m_line; }
    /// What stands under the line: badge and sentence.
    [[nodiscard]] QString badge() const;
    [[nodiscard]] QString sentence() const;
    /// Types on: what was typed elsewhere on the page.
    void typeOn(const QString &text);

Q_SIGNALS:
    void recorded(); ///< a line was, and the page shows it already

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void preview();
    void say(const QString &badge, const QString &sentence, const char *role);
    void enter();
    void changeUnit();
    void keepHeight();
    void reserve(int least);

    Workplace &m_work;
    JotLine *m_line;
    Pill *m_badge;
    QLabel *m_sentence;
    QUuid m_unit;
    QHash<QUuid, QString> m_drafts;
    QHash<QUuid, QStringList> m_recorded;
    QString m_asked; ///< the line whose question was shown
};

} // namespace ts
