#pragma once

#include "views/workplace.h"

#include <QWidget>

namespace ts {

/// One page of the unit in hand. It is filled anew when the unit or its records change while it is seen, or when it is next shown.
class Page : public QWidget {
    Q_OBJECT
public:
    explicit Page(Workplace &workplace, QWidget *parent = nullptr);

    /// Whether "As it stands" has room beside it.
    [[nodiscard]] virtual bool showsStanding() const { return false; }
    /// Where typing goes when the page is opened.
    virtual void focusFirst() { setFocus(); }
    /// Brings a record into view and makes it the current one, as far as the page shows its kind.
    virtual void reveal(const QString &kind, const QUuid &record)
    {
        Q_UNUSED(kind)
        Q_UNUSED(record)
    }
    /// What F1 says of the page: a few sentences, plain text.
    [[nodiscard]] virtual QString help() const { return {}; }
    /// Commits what is being edited in place; called before another unit is taken in hand and before closing.
    virtual void commitEdits() {}
    /// What this computer remembers of the page between two starts: what is folded away, how it is sorted.
    [[nodiscard]] virtual QByteArray keptState() const { return {}; }
    virtual void restoreState(const QByteArray &state) { Q_UNUSED(state) }

protected:
    [[nodiscard]] Workplace &work() const { return m_work; }
    [[nodiscard]] const UnitFile &file() const { return m_work.file(); }
    [[nodiscard]] const BenchFile &bench() const { return m_work.bench(); }

    /// Shows what is recorded now; the unit may be another than before. Called only while the page is seen.
    virtual void refresh() = 0;

    void showEvent(QShowEvent *event) override;

private:
    void refreshIfSeen();

    Workplace &m_work;
    bool m_stale = true;
};

} // namespace ts
