#pragma once

#include "model/jot/jot.h"
#include "model/records/settings.h"
#include "testing.h"

namespace ts::testing {

/// A bench without a workbook for jotting on: one cassette deck, two meters, pounds, Wednesday 25 November 2026, noon where the test runs (days are those of the bench).
class JotBench {
public:
    JotBench()
        : m_clock(QDateTime(QDate(2026, 11, 25), QTime(12, 0)).toUTC()), m_ids(m_clock, 7),
          m_maker(m_ids)
    {
        file.unit = m_maker.fresh<Unit>();
        file.unit.tag = 42;
        file.unit.name = QStringLiteral("Pellworth KD-7 cassette deck");
        file.unit.stage = Stage::Bench;
        addSetting(settings::currency, QStringLiteral("GBP"));
        addSetting(settings::worker, QStringLiteral("R. M."));
        const Meter meter = addMeter(QStringLiteral("bench meter"));
        addRange(meter, QStringLiteral("mV"), 400, 0.1, 0.5, 3);
        addRange(meter, QStringLiteral("V"), 4, 0.001, 0.5, 3);
        addRange(meter, QStringLiteral("V"), 40, 0.01, 0.5, 2);
        addRange(addMeter(QStringLiteral("insulation tester")), QStringLiteral("MΩ"), 1000, 1, 5, 5);
    }

    /// What the line would record; fails the test where it is refused.
    Jotted preview(const QString &line)
    {
        auto result = jot(line, file, bench, m_maker);
        if (result)
            return *std::move(result);
        QTest::qFail(qPrintable(line.left(80) + QStringLiteral(": ") + result.trouble().sentence()), __FILE__, __LINE__);
        return {};
    }
    /// Records the line in the copies here, as a desk would in a workbook.
    Jotted put(const QString &line)
    {
        m_clock.advance(60);
        const Jotted jotted = preview(line);
        apply(jotted.change);
        return jotted;
    }
    void apply(const Change &change)
    {
        for (const ChangeItem &item : change.items()) {
            QVERIFY(item.after);
            const auto sound = item.kind->check(*item.after);
            QVERIFY2(sound.ok(), sound ? "" : qPrintable(sound.trouble().sentence()));
            if (item.kind->table() == QLatin1String("unit")) {
                const auto unit = description<Unit>().fromRow(*item.after);
                QVERIFY(unit.ok());
                file.unit = *unit;
            }
#define TS_APPLY(R) applyTo<R>(item);
            TS_RECORDS(TS_APPLY)
#undef TS_APPLY
        }
    }
    [[nodiscard]] QString refused(const QString &line)
    {
        return refusal(jot(line, file, bench, m_maker));
    }
    template <class R>
    [[nodiscard]] R last() const
    {
        return file.all<R>().isEmpty() ? R() : file.all<R>().last();
    }
    template <class R>
    [[nodiscard]] qsizetype count() const
    {
        return file.all<R>().size();
    }
    [[nodiscard]] QDateTime now() const
    {
        return m_clock.now();
    }
    [[nodiscard]] Maker &maker()
    {
        return m_maker;
    }

    UnitFile file;
    BenchFile bench;

private:
    template <class R>
    void applyTo(const ChangeItem &item)
    {
        if constexpr (detail::OfUnit<R>::value) {
            if (item.kind != &description<R>())
                return;
            const auto record = description<R>().fromRow(*item.after);
            QVERIFY(record.ok());
            QVERIFY(record->unit == file.unit.id);
            for (R &each : file.all<R>())
                if (each.id == record->id) {
                    QVERIFY2(item.before && Kind::sameContent(*item.before, description<R>().toRow(each)),
                             "the copy before is not what is recorded");
                    each = *record;
                    return;
                }
            QVERIFY2(!item.before, "edits what was never recorded");
            file.all<R>() << *record;
        }
    }
    void addSetting(const QString &name, const QString &value)
    {
        Setting setting = m_maker.fresh<Setting>();
        setting.name = name;
        setting.value = value;
        bench.all<Setting>() << setting;
    }
    Meter addMeter(const QString &name)
    {
        Meter meter = m_maker.fresh<Meter>();
        meter.name = name;
        bench.all<Meter>() << meter;
        return meter;
    }
    void addRange(const Meter &meter, const QString &measure, double fullScale, double resolution, double percent, double counts)
    {
        MeterRange range = m_maker.fresh<MeterRange>();
        range.meter = meter.id;
        range.measure = measure;
        range.fullScale = fullScale;
        range.resolution = resolution;
        range.percentOfReading = percent;
        range.counts = counts;
        bench.all<MeterRange>() << range;
    }

    SetClock m_clock;
    IdMaker m_ids;
    Maker m_maker;
};

inline Money pounds(qint64 pence)
{
    return {pence, *Currency::parse(u"GBP")};
}

} // namespace ts::testing
