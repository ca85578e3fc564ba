#pragma once

#include "model/faults/fault_offer.h"

#include <QFrame>

class QLabel;

namespace ts {

class FlowLayout;

/// The symptoms whose causes are known, to choose from in the page.
class SymptomChoice : public QFrame {
    Q_OBJECT
public:
    explicit SymptomChoice(QWidget *parent = nullptr);
    /// Shows them under a question, and takes the keyboard.
    void offer(const QString &question, const QList<FaultOffer> &offers);
    void putAway();
    [[nodiscard]] QString question() const;

Q_SIGNALS:
    void chosen(const ts::FaultOffer &offer);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QLabel *m_question;
    FlowLayout *m_answers;
};

} // namespace ts
