#pragma once

// Two units on a real workbook, jotted on as in the Log.
#include "model/jot/jot.h"
#include "tests/workbooks.h"

namespace ts::testing {

class LogDesk {
public:
    LogDesk()
    {
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        one = unit(QStringLiteral("Pellworth KD-7 cassette deck"));
        two = unit(QStringLiteral("Ardmoor RX-440 receiver"));
    }
    void put(const Id<Unit> &on, const char *line)
    {
        desk.clock.advance(60);
        Maker maker = desk->maker();
        const auto jotted = jot(QString::fromUtf8(line), file(on), bench(), maker);
        wantOk(jotted);
        wantOk(desk->apply(jotted->change));
    }
    void apply(const Expected<Change> &change)
    {
        wantOk(change);
        if (change)
            wantOk(desk->apply(*change));
    }
    template <class R>
    R add(R record, const Id<Unit> &on)
    {
        const R fresh = desk->maker().fresh<R>();
        record.id = fresh.id;
        record.at = fresh.at;
        record.unit = on;
        wantOk(desk->apply(Change(QStringLiteral("added")).add(record)));
        return *desk->get(record.id);
    }
    [[nodiscard]] UnitFile file(const Id<Unit> &id) { return *desk->unitFile(id); }
    [[nodiscard]] BenchFile bench() { return *desk->benchFile(); }
    /// Everything of both units, to hold against a later state; versions and the units' own rows aside.
    [[nodiscard]] QStringList everything()
    {
        QStringList lines;
        for (const auto &id : {one, two}) {
            const UnitFile now = file(id);
            std::apply(
                [&lines](const auto &...lists) {
                    const auto take = [&lines]<class R>(const QList<R> &records) {
                        for (R record : records) {
                            record.version = 0;
                            lines << QString::fromLatin1(R::table) + QLatin1Char(' ') + QVariant(description<R>().toRow(record)).toStringList().join(u'|');
                        }
                    };
                    (take(lists), ...);
                },
                now.lists);
        }
        return lines;
    }

    OpenDesk desk;
    Id<Unit> one;
    Id<Unit> two;

private:
    Id<Unit> unit(const QString &name)
    {
        Unit made = desk->maker().fresh<Unit>();
        made.name = name;
        made.stage = Stage::Bench;
        made.stageSince = made.at;
        wantOk(desk->apply(Change(QStringLiteral("unit")).add(made)));
        return made.id;
    }

    Workbooks m_books;
};

} // namespace ts::testing
