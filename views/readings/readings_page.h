#pragma once

#include "model/sums/point_rows.h"
#include "views/unit/page.h"

class QButtonGroup;
class QComboBox;
class QStackedWidget;

namespace ts {

class GridView;
class LimitCard;
class PointRun;
class QuestionLine;
class SoakCard;
enum class PointFilter;
enum class ReadingColumn;
struct GridRow;

/// Test points with what is wanted, what was found and what is left after work.
class ReadingsPage : public Page {
    Q_OBJECT
public:
    explicit ReadingsPage(Workplace &workplace, QWidget *parent = nullptr);

    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

    [[nodiscard]] GridView *table() const { return m_table; }
    [[nodiscard]] QuestionLine *question() const { return m_question; }
    [[nodiscard]] LimitCard *limitCard() const { return m_limit; }
    [[nodiscard]] SoakCard *soakCard() const { return m_soak; }
    void setFilter(PointFilter filter);
    [[nodiscard]] PointRun *run() const { return m_run; }
    /// Goes through the points one after the other: as found where something was not read so yet and work has not begun, else after work.
    void startRun();

protected:
    void refresh() override;

private:
    void makeFilters(QLayout *row);
    void makeActions();
    void refreshFilters();
    void refreshMeters();
    void showCurrent();
    [[nodiscard]] const PointRow *pointOf(const QUuid &key) const;

    std::optional<QUuid> commit(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> addPoint(const QString &name);
    std::optional<QUuid> editPoint(const PointRow &row, ReadingColumn column, const QString &typed);
    std::optional<QUuid> takeReading(const PointRow &row, ReadingColumn column, const QString &typed);
    std::optional<QUuid> setRight(const PointRow &row, const QString &typed);
    void startSettingRight();
    void removeReading();
    void removePoint(const QUuid &key);
    void movePoint(const QUuid &key, int by);
    [[nodiscard]] const Reading *readingAtHand() const;

    GridView *m_table;
    QuestionLine *m_question;
    PointRun *m_run;
    QStackedWidget *m_stack; ///< the list, or a run through it
    LimitCard *m_limit;
    SoakCard *m_soak;
    QButtonGroup *m_filters;
    QComboBox *m_meter;
    PointFilter m_filter{};
    QList<PointRow> m_points;
    Id<Unit> m_of;
    Id<Reading> m_settingRight; ///< the one that the open field sets right; null: what is typed is a new one
    QString m_asked;            ///< what was typed when the question was asked
};

} // namespace ts
