#pragma once

#include "model/desk/desk.h"

#include <QObject>

#include <memory>

namespace ts {

class Memory;
class MoneyInHand;
class Style;
class Thumbnails;

/// Which of a unit's pages. The first eight have a tab each; the details are opened from the unit's head.
enum class PageKey { Log, FaultFinding, Readings, Teardown, Parts, Proving, Money, Handover, Details };
/// The places beside the units.
enum class PlaceKey { Units, ModelNotes, PartsStore, Ledger, Overview, History, Exchange, Settings, Photos, Sums, BenchToday };

/// What every page works with: the desk, the unit in hand as plain copies, and where to say something. One a window.
class Workplace : public QObject {
    Q_OBJECT
public:
    Workplace(Desk &desk, Style &style, QObject *parent = nullptr);

    [[nodiscard]] Desk &desk() const { return m_desk; }
    [[nodiscard]] Style &style() const { return m_style; }
    [[nodiscard]] Thumbnails &thumbnails() const { return *m_thumbnails; }
    /// What this computer remembers; none where the window remembers nothing, as in most tests.
    [[nodiscard]] Memory *memory() const { return m_memory; }
    void setMemory(Memory *memory) { m_memory = memory; }
    /// The money of the unit in hand, worked out beside the window.
    [[nodiscard]] MoneyInHand &money() const { return *m_money; }
    /// Opens the workbook a second time, for work in a thread of its own; none where the window cannot.
    using OpenDesk = std::function<Expected<std::unique_ptr<Desk>>()>;
    [[nodiscard]] const OpenDesk &again() const { return m_again; }
    void setAgain(OpenDesk again) { m_again = std::move(again); }
    [[nodiscard]] Maker maker() const { return m_desk.maker(); }
    [[nodiscard]] QDateTime now() const { return m_desk.maker().now(); }
    [[nodiscard]] QDate today() const { return now().toLocalTime().date(); }

    [[nodiscard]] bool hasUnit() const { return !m_file->unit.id.isNull(); }
    /// Everything of the unit in hand; an empty one where there is none.
    [[nodiscard]] const UnitFile &file() const { return *m_file; }
    [[nodiscard]] const BenchFile &bench() const { return *m_bench; }
    [[nodiscard]] Currency currency() const { return m_bench->currency(); }

    /// Takes a unit in hand; says why where it cannot be read.
    void takeInHand(const Id<Unit> &unit);
    void putDown();

    /// Applies a change, says its sentence with the offer to undo it, and has every page show it before it returns. Where it
    /// is refused, says why, changes nothing and answers false. An empty change is no change, and true.
    bool record(const Change &change);
    /// The same for what may not have come about: says the trouble.
    bool record(const Expected<Change> &change);
    /// The change that gives a setting of the workbook a value, or unsets it.
    [[nodiscard]] Expected<Change> settingChange(const QString &name, const QString &value) const;

    void undo();
    void redo();

    void say(const QString &sentence) const;       ///< done, for a few seconds
    void refuse(const QString &sentence) const;    ///< stays until it is put away
    void refuse(const Trouble &trouble) const { refuse(trouble.sentence()); }

    /// Goes to a unit's page, and to a record on it where one is named.
    void goTo(const Id<Unit> &unit, PageKey page, const QString &kind = {}, const QUuid &record = {});
    void goTo(PlaceKey place);

    /// Shows a photo large, among the others of its unit.
    void showPhoto(const Id<Unit> &unit, const Id<Photo> &photo);

    /// Starts long work beside the window, with progress and Stop (frame/long_work.h); says so where something is being done already.
    using Job = std::function<Expected<QString>(Desk &desk, const Progress &progress)>;
    void startWork(const QString &what, Job job);
    /// Whether anything was recorded through this window since it was opened.
    [[nodiscard]] bool hasRecorded() const { return m_recorded; }

    /// Looks whether someone else changed the workbook; the window calls it by a timer.
    void poll();

Q_SIGNALS:
    void unitLeaving(); ///< another will be in hand, or none: what is being edited is kept now
    void unitTaken();   ///< another unit is in hand, or none
    void unitChanged(); ///< the unit in hand has other records than before; follows unitTaken, too
    void benchChanged();
    void rackChanged(); ///< units came, went or moved; or something that a rack row shows changed
    void journalChanged(); ///< something can be undone or done again that could not
    void said(const QString &sentence, bool undoable) const;
    void refused(const QString &sentence) const;
    void pageWanted(ts::PageKey page, const QString &kind, const QUuid &record);
    void placeWanted(ts::PlaceKey place);
    void photoWanted(const QUuid &photo);
    void photoFilesWanted(); ///< files are to be chosen as photos of the unit in hand
    void workWanted(const QString &what, const ts::Workplace::Job &job);

private:
    void note(const QString &kind, const QUuid &unit);
    void catchUp();
    bool readUnit(const Id<Unit> &unit);
    bool readBench();
    void letGo(std::shared_ptr<const void> before);

    Desk &m_desk;
    Style &m_style;
    Memory *m_memory = nullptr;
    Thumbnails *m_thumbnails;
    OpenDesk m_again;
    // What was shown before is let go when the event loop comes round again: who is just working with it may go on.
    std::shared_ptr<const UnitFile> m_file = std::make_shared<UnitFile>();
    std::shared_ptr<const BenchFile> m_bench = std::make_shared<BenchFile>();
    bool m_unitStale = false;
    bool m_benchStale = false;
    bool m_rackStale = false;
    bool m_waiting = false;
    bool m_recorded = false;
    MoneyInHand *m_money;
};

} // namespace ts
