#pragma once

#include "views/rack/tag_words.h"

#include "model/desk/desk.h"

#include <QAbstractListModel>
#include <QSet>

namespace ts {

/// The units of the rack under the headings of their stages, what is worked on first on top. Where each hangs is known at once; what its
/// tag says is read by page, when it is looked at. Follows the desk by the records that changed, not by reading everything anew.
class RackModel : public QAbstractListModel {
    Q_OBJECT
public:
    /// A heading has a stage, a count and whether it is folded; a tag has a unit and, once read, its words.
    enum Role { UnitId = Qt::UserRole + 1, Words, IsHeading, StageOf, Count, Folded };

    explicit RackModel(Desk &desk, QObject *parent = nullptr);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;

    void setWords(const QString &words); ///< narrows to the units that match
    void setSort(RackSort sort);
    void setFolded(Stage stage, bool folded);
    [[nodiscard]] const QString &words() const { return m_words; }
    [[nodiscard]] RackSort sort() const { return m_sort; }
    [[nodiscard]] const QSet<Stage> &folded() const { return m_folded; }
    void setFolding(const QSet<Stage> &folded, RackSort sort); ///< as it was remembered
    /// The unit in hand hangs here even where its stage is folded away; not where the rack is narrowed.
    void setInHand(const Id<Unit> &unit, Stage stage);
    [[nodiscard]] Stage inHandAt() const { return m_inHandAt; }

    /// Reads everything again.
    void reload();
    /// Brings in what was recorded since the last time.
    void refresh();
    /// Reads what the tags of these rows and of those next to them say, as far as it is not there yet.
    void load(int first, int last);

    [[nodiscard]] int rowOf(const QUuid &unit) const; ///< -1 where it does not hang here
    [[nodiscard]] bool isHeading(int row) const { return m_lines.at(row).unit.isNull(); }
    [[nodiscard]] const QList<int> &headings() const { return m_headings; } ///< their rows, ascending
    [[nodiscard]] int units() const { return m_units; } ///< that match, those folded away too

Q_SIGNALS:
    void troubled(const QString &sentence);

private:
    struct Line {
        Stage stage = Stage::Shelved;
        Id<Unit> unit; ///< null: the stage's heading
        bool operator==(const Line &) const = default;
        friend size_t qHash(const Line &line, size_t seed = 0) { return ::qHash(line.unit.value, seed) ^ static_cast<size_t>(line.stage); }
    };
    struct Hung {
        QList<Line> lines;
        QHash<Stage, int> counts;
        bool sound = false;
    };

    void note(const QString &kind, const QUuid &unit, const QStringList &fields);
    [[nodiscard]] Hung hang();
    [[nodiscard]] bool isFolded(Stage stage) const;
    [[nodiscard]] bool keepsInHand(Stage stage) const; ///< under the heading of this stage, which is folded away
    void place(const Hung &hung, const QSet<QUuid> &changed);
    void number(); ///< rows by unit and by heading, after the lines changed
    [[nodiscard]] int firstBelow(Stage stage) const; ///< where the stage's heading would hang
    [[nodiscard]] int rowOf(const Line &line) const;
    void putAfter(const Line &above, const Line &line);
    void insert(int row, const Line &line);
    void remove(int row);
    void readAgain(const QList<Id<Unit>> &units);

    Desk &m_desk;
    QString m_words;
    RackSort m_sort = RackSort::MovedLast;
    QSet<Stage> m_folded{Stage::Closed};
    Id<Unit> m_inHand;
    Stage m_inHandAt = Stage::Shelved;
    bool m_onlyClosed = false; ///< what matches is closed, so it is shown all the same

    QList<Line> m_lines;
    QHash<QUuid, int> m_rows;
    QList<int> m_headings;
    QHash<Stage, int> m_counts;
    int m_units = 0;
    QHash<QUuid, TagWords> m_tags; ///< those read so far
    QDate m_day;                   ///< for which they were read

    QSet<QUuid> m_changed; ///< units with something new
    bool m_moved = false;  ///< something may hang elsewhere
    bool m_all = false;
};

} // namespace ts
