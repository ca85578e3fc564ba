#pragma once

#include "views/unit/page.h"

#include "model/records/purchase.h"

class QLabel;

namespace ts {

class Card;
class DetailField;

/// What the unit is, where it stands and how it came in: each of its own particulars, edited in place beside "As it stands".
class DetailsPage : public Page {
    Q_OBJECT
public:
    explicit DetailsPage(Workplace &workplace, QWidget *parent = nullptr);

    [[nodiscard]] bool showsStanding() const override { return true; }
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

Q_SIGNALS:
    void left(); ///< by Esc or its button: the page that was there before is wanted

protected:
    void refresh() override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    /// What a field shows of the unit in hand.
    using Shows = std::function<QString()>;
    struct Shown {
        DetailField *field;
        Shows shows;
    };

    [[nodiscard]] QWidget *makeInside();
    void makeUnit(Card *card);
    void makeMains(Card *card);
    void makeWhose(Card *card);
    void makeArrival(Card *card);
    void makePurchase(Card *card);
    /// A text of the unit: `noun` is what the journal calls it.
    DetailField *text(QString Unit::*member, const QString &label, const QString &noun, bool lines = false);
    /// One of what is known of the purchase; `set` reads what was typed into it.
    using SetsPurchase = std::function<Expected<void>(Purchase &purchase, const QString &typed)>;
    DetailField *purchase(const QString &label, const QString &noun, Shows shows, SetsPurchase set);
    DetailField *add(DetailField *field, Shows shows);
    static void row(Card *card, const QList<std::pair<DetailField *, int>> &fieldAndShare);

    [[nodiscard]] Expected<void> takeSum(Purchase &wish, std::optional<Money> Purchase::*sum, const QString &label, const QString &typed) const;
    [[nodiscard]] Expected<void> takeSeller(Purchase &wish, const QString &typed) const;
    [[nodiscard]] Expected<void> takeDay(Purchase &wish, const QString &typed) const;
    bool takeText(QString Unit::*member, const QString &label, const QString &noun, const QString &typed);
    bool takeYear(const QString &typed);
    bool takeCategory(const QString &word);
    bool takeClass(const QString &word);
    bool takeKind(const QString &word);
    bool takeOwner(const QString &typed);
    bool record(const Unit &after, const QString &noun, const QString &value, Change change = {});
    [[nodiscard]] QString sentence(const QString &noun, const QString &value) const;
    [[nodiscard]] const Unit &unit() const { return file().unit; }
    void showRemarks();

    Id<Unit> m_of;
    QList<Shown> m_fields;
    DetailField *m_owner = nullptr;
    DetailField *m_seller = nullptr;
    QLabel *m_caution = nullptr;
    QLabel *m_lot = nullptr;
    QLabel *m_dates;
};

} // namespace ts
