#pragma once

#include "model/records/description.h"

#include <optional>

namespace ts {

/// One record's part in a change: its row before and after. No before: it is new. No after: it goes out of sight.
struct ChangeItem {
    const Kind *kind = nullptr;
    std::optional<Row> before;
    std::optional<Row> after;
};

/// Something done to the workbook, whole or not at all: copies before and after, and the sentence that people see in
/// the journal and beside Undo ("Reading CN2.4: 11.92 V"). Holds no pointers to records.
class Change {
public:
    Change() = default;
    explicit Change(QString sentence) : m_sentence(std::move(sentence)) {}

    template <class R>
    Change &add(const R &record)
    {
        m_items << ChangeItem{&description<R>(), std::nullopt, description<R>().toRow(record)};
        return *this;
    }
    /// Does nothing where both are the same.
    template <class R>
    Change &edit(const R &before, const R &after)
    {
        if (!(before == after))
            m_items << ChangeItem{&description<R>(), description<R>().toRow(before), description<R>().toRow(after)};
        return *this;
    }
    template <class R>
    Change &remove(const R &record)
    {
        m_items << ChangeItem{&description<R>(), description<R>().toRow(record), std::nullopt};
        return *this;
    }
    Change &addItem(ChangeItem item)
    {
        m_items << std::move(item);
        return *this;
    }
    /// Takes over another change's items; keeps this sentence.
    Change &join(const Change &other)
    {
        m_items << other.m_items;
        return *this;
    }

    [[nodiscard]] const QString &sentence() const { return m_sentence; }
    void setSentence(QString sentence) { m_sentence = std::move(sentence); }
    [[nodiscard]] const QList<ChangeItem> &items() const { return m_items; }
    [[nodiscard]] bool isEmpty() const { return m_items.isEmpty(); }
    /// The change that takes this one back.
    [[nodiscard]] Change reversed() const
    {
        Change back(m_sentence);
        for (auto it = m_items.crbegin(); it != m_items.crend(); ++it)
            back.m_items << ChangeItem{it->kind, it->after, it->before};
        return back;
    }

private:
    QString m_sentence;
    QList<ChangeItem> m_items;
};

} // namespace ts
