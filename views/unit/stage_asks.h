#pragma once

#include "views/workplace.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ts {

/// What one stage needs to know of a unit that goes there, or stands there.
class StageAsk : public QWidget {
    Q_OBJECT
public:
    explicit StageAsk(Workplace &workplace, QWidget *parent = nullptr) : QWidget(parent), m_work(workplace) {}
    /// Shows what is recorded of the unit in hand.
    virtual void fill() = 0;
    virtual void focusFirst() = 0;
    /// What can be filled in, in the order in which Tab goes through it.
    [[nodiscard]] virtual QWidgetList fields() const = 0;
    /// How it ended, where the stage asks for it.
    [[nodiscard]] virtual std::optional<Outcome> outcome() const { return std::nullopt; }
    /// The move, or what changed where the unit stands there already; `overruling` says why it goes there all the same.
    [[nodiscard]] virtual Expected<Change> change(const QString &overruling) const = 0;

Q_SIGNALS:
    void outcomeChosen();

protected:
    [[nodiscard]] Workplace &work() const { return m_work; }

private:
    Workplace &m_work;
};

/// Held: what it waits for, and until when.
class HeldAsk : public StageAsk {
    Q_OBJECT
public:
    explicit HeldAsk(Workplace &workplace, QWidget *parent = nullptr);
    void fill() override;
    void focusFirst() override;
    [[nodiscard]] QWidgetList fields() const override;
    [[nodiscard]] Expected<Change> change(const QString &overruling) const override;

private:
    QLineEdit *m_because;
    QLineEdit *m_until;
};

/// The channels of the bench to choose from; a name that is typed is a new one.
class ChannelField {
public:
    ChannelField(const QString &name, QWidget *parent);
    [[nodiscard]] QComboBox *box() const { return m_box; }
    void fill(const BenchFile &bench, const Id<Channel> &channel);
    /// The channel chosen; one that is new is added to `change`. Null where nothing is chosen.
    [[nodiscard]] Id<Channel> channel(Workplace &work, Change &change) const;
    [[nodiscard]] Id<Channel> known(const BenchFile &bench) const; ///< null for a new one

private:
    QComboBox *m_box;
};

/// Offered: where, and for how much.
class OfferedAsk : public StageAsk {
    Q_OBJECT
public:
    explicit OfferedAsk(Workplace &workplace, QWidget *parent = nullptr);
    void fill() override;
    void focusFirst() override;
    [[nodiscard]] QWidgetList fields() const override;
    [[nodiscard]] Expected<Change> change(const QString &overruling) const override;

private:
    ChannelField m_channel;
    QLineEdit *m_asked;
};

/// Closed: how it ended; of a sale the price, the fees and the carriage.
class ClosedAsk : public StageAsk {
    Q_OBJECT
public:
    explicit ClosedAsk(Workplace &workplace, QWidget *parent = nullptr);
    void fill() override;
    void focusFirst() override;
    [[nodiscard]] QWidgetList fields() const override;
    [[nodiscard]] std::optional<Outcome> outcome() const override;
    [[nodiscard]] Expected<Change> change(const QString &overruling) const override;

private:
    void showSale();
    void suggestFees();

    QComboBox *m_outcome;
    QWidget *m_sale;
    QLineEdit *m_price;
    ChannelField m_channel;
    QLineEdit *m_fees;
    QLabel *m_rules;
    QLineEdit *m_carriage;
    QLineEdit *m_soldOn;
    bool m_feesTyped = false;
};

} // namespace ts
