#pragma once

#include <QLineEdit>
#include <QPointer>
#include <QStringList>

#include <functional>

namespace ts {

class OfferList;
class Style;

/// The line that is jotted into. Tab completes while there is something to complete and leaves the line otherwise; Up and Down
/// go through what was recorded before; what is typed comes back at the end of them.
class JotLine : public QLineEdit {
    Q_OBJECT
public:
    /// What it offers is listed in `over`, which is around it.
    JotLine(const Style &style, QWidget *over, QWidget *parent);

    /// Whole lines that a line may become, best first.
    using Offers = std::function<QStringList(const QString &line)>;
    void setOffers(Offers offers) { m_offers = std::move(offers); }
    /// Lines recorded before, oldest first.
    void setRecall(const QStringList &lines);
    /// As if it had been typed.
    void setLine(const QString &line);

    /// What Tab would add behind the cursor; empty where it would change more than that, or nothing.
    [[nodiscard]] QString ghost() const { return m_ghost; }
    [[nodiscard]] OfferList *offerList() const;

Q_SIGNALS:
    void lineChanged(); ///< by whatever means

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    bool focusNextPrevChild(bool next) override;

private:
    [[nodiscard]] bool complete(int by);
    void take(int index);
    void endOffer();
    void recall(int by);
    void lookAhead();

    const Style &m_style;
    Offers m_offers;
    QPointer<OfferList> m_list;
    QString m_ghost;
    QStringList m_offered; ///< what Tab goes through now
    QString m_stem;        ///< what was typed before it
    int m_offer = -1;
    bool m_offering = false; ///< while a text is set by Tab
    QStringList m_recall;
    qsizetype m_recalled = 0; ///< m_recall.size(): what is being typed
    QString m_typed;          ///< that
};

} // namespace ts
