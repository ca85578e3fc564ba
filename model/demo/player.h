#pragma once

#include "model/demo/row_writer.h"
#include "model/demo/scenario.h"

namespace ts {

/// Does what the lines of the story say, one after the other, each as one change of the workbook.
class Player {
public:
    explicit Player(Desk &desk) : m_desk(desk), m_writer(desk) {}

    Expected<void> play(const DemoEvent &event);

private:
    using Done = Expected<void>;
    // Each plays one verb; the event's unit is open in m_unit.
    Done jotLine(const DemoEvent &event);
    Done photo(const DemoEvent &event);
    Done stage(const DemoEvent &event);
    Done unit(const DemoEvent &event);
    Done bought(const DemoEvent &event);
    Done record(const DemoEvent &event);
    Done edit(const DemoEvent &event);
    Done points(const DemoEvent &event);
    Done bearings(const DemoEvent &event);
    Done comparables(const DemoEvent &event);
    Done plan(const DemoEvent &event);
    Done pins(const DemoEvent &event);
    Done spends(const DemoEvent &event);
    Done safety(const DemoEvent &event);
    Done proofs(const DemoEvent &event);
    Done clockFrom(const DemoEvent &event);
    Done sale(const DemoEvent &event);
    Done paper(const DemoEvent &event);
    Done soak(const DemoEvent &event);
    Done soakReading(const DemoEvent &event);
    Done soakEnd(const DemoEvent &event);
    Done lotShares(const DemoEvent &event);
    Done settings(const DemoEvent &event);
    Done ranges(const DemoEvent &event);
    Done stock(const DemoEvent &event);
    Done notesOn(const DemoEvent &event);

    /// Adds a new row of the kind to the change.
    Expected<Row> add(Change &change, const Kind &kind, const QJsonObject &fields);
    Done addPoints(Change &change, const QJsonArray &points, const QJsonObject &owner);
    Done apply(const Change &change);
    Expected<Money> money(const QJsonValue &value);
    [[nodiscard]] QDate today() { return m_desk.maker().now().date(); }

    Desk &m_desk;
    RowWriter m_writer;
    Id<Unit> m_unit;
};

} // namespace ts
