#pragma once

#include "model/paper/restoration.h"
#include "model/records/settings.h"
#include "model/values/clock.h"

#include <QBuffer>
#include <QImage>
#include <QLinearGradient>
#include <QPainter>
#include <QTimeZone>

namespace ts::testing {

/// Units for the paper tests, of invented makers, built by hand and the same each time.
class PaperSample {
public:
    PaperSample() : m_clock(QDateTime({2026, 11, 22}, {9, 30}, Qt::UTC)), m_maker(m_clock, 42) {}

    template <class R>
    R &add(R record)
    {
        record.id = m_maker.next<R>();
        record.at = m_clock.now();
        m_clock.advance(600);
        if constexpr (requires { record.unit; })
            record.unit = file.unit.id;
        auto &list = listOf<R>();
        list << record;
        return list.last();
    }
    void setting(const QString &name, const QString &value)
    {
        Setting setting;
        setting.name = name;
        setting.value = value;
        add(setting);
    }

    Id<TestPoint> point(const QString &name, const QString &wanted, const QString &conditions, const QString &source,
                        int position)
    {
        TestPoint point;
        point.name = name;
        point.wanted = wanted.isEmpty() ? Limit() : *Limit::parse(wanted);
        point.conditions = conditions;
        point.source = source;
        point.position = position;
        return add(point).id;
    }
    void reading(const Id<TestPoint> &point, const QString &value, Phase phase, std::optional<double> uncertainty = {},
                 const QString &meter = {}, const Id<Soak> &soak = {})
    {
        const TestPoint *at = file.find(point);
        Reading reading;
        reading.point = point;
        reading.name = at->name;
        reading.value = *Quantity::parse(value);
        reading.wanted = at->wanted;
        reading.uncertainty = uncertainty;
        reading.phase = phase;
        reading.meterName = meter;
        reading.soak = soak;
        add(reading);
    }
    Id<Symptom> symptom(const QString &text, const QString &conditions, SymptomState state)
    {
        Symptom symptom;
        symptom.text = text;
        symptom.conditions = conditions;
        symptom.state = state;
        return add(symptom).id;
    }
    void cause(const Id<Symptom> &of, const QString &text, CauseState state)
    {
        Cause cause;
        cause.symptom = of;
        cause.text = text;
        cause.state = state;
        add(cause);
    }
    void step(const Id<Symptom> &of, StepKind kind, const QString &text, const QString &position = {}, const QString &before = {},
              const QString &after = {})
    {
        Step step;
        step.symptom = of;
        step.kind = kind;
        step.text = text;
        step.position = position;
        step.before = before;
        step.after = after;
        step.minutes = 20;
        add(step);
    }
    void fitted(const Id<Symptom> &of, const QString &text, const QString &position = {}, const QString &old = {},
                int quantity = 1)
    {
        Need need;
        need.symptom = of;
        need.text = text;
        need.position = position;
        need.oldValue = old;
        need.quantity = quantity;
        need.state = NeedState::Fitted;
        add(need);
    }
    void proof(ProofKind kind, ProofOutcome cameOut, const QString &text, const QString &result = {},
               const QString &instrument = {}, const QString &rules = {})
    {
        Proof proof;
        proof.kind = kind;
        proof.cameOut = cameOut;
        proof.text = text;
        proof.result = result;
        proof.instrument = instrument;
        proof.ruleSet = rules;
        if (cameOut == ProofOutcome::Passed || cameOut == ProofOutcome::Failed) {
            proof.doneOn = QDate(2026, 11, 28);
            proof.initials = QStringLiteral("R. M.");
        }
        add(proof);
    }
    void note(NoteKind kind, const QString &text)
    {
        Note note;
        note.kind = kind;
        note.text = text;
        add(note);
    }
    void photo(Phase phase, const QString &caption, QSize size, bool onSheet, QColor colour)
    {
        Photo photo;
        photo.phase = phase;
        photo.caption = caption;
        photo.width = size.width();
        photo.height = size.height();
        photo.onSheet = onSheet;
        photo.takenAt = m_clock.now();
        photos << PaperPhoto{add(photo), drawn(size, colour)};
    }
    void later(int days) { m_clock.advance(days * 86400); }

    static QByteArray drawn(QSize size, QColor colour)
    {
        QImage image(size, QImage::Format_RGB32);
        QPainter painter(&image);
        QLinearGradient light(0, 0, size.width(), size.height());
        light.setColorAt(0, colour.lighter(150));
        light.setColorAt(1, colour.darker(160));
        painter.fillRect(image.rect(), light);
        painter.setPen(QPen(colour.darker(250), size.width() / 60));
        painter.setBrush(colour.lighter(120));
        painter.drawRoundedRect(QRectF(size.width() * 0.12, size.height() * 0.3, size.width() * 0.76, size.height() * 0.4), 12,
                                12);
        for (int i = 0; i < 4; ++i)
            painter.drawEllipse(QPointF(size.width() * (0.3 + 0.13 * i), size.height() * 0.5), size.width() * 0.04,
                                size.width() * 0.04);
        painter.end();
        QByteArray bytes;
        QBuffer buffer(&bytes);
        image.save(&buffer, "jpeg", 85);
        return bytes;
    }

    /// As of a sheet that is handed over.
    [[nodiscard]] RestorationFacts facts() const
    {
        RestorationFacts facts = gatherRestoration(file, bench, photos, now);
        facts.number = 17;
        facts.edition = 2;
        return facts;
    }

    UnitFile file;
    BenchFile bench;
    QList<PaperPhoto> photos;
    QDateTime now{QDate(2026, 11, 28), QTime(16, 5), Qt::UTC};

private:
    template <class R>
    QList<R> &listOf()
    {
        if constexpr (detail::OfUnit<R>::value)
            return file.all<R>();
        else
            return bench.all<R>();
    }

    SetClock m_clock;
    IdMaker m_maker;
};

/// A cassette deck with a full story.
inline PaperSample richSample(bool withPhotos)
{
    PaperSample sample;
    Unit &unit = sample.file.unit;
    unit.tag = 42;
    unit.name = QStringLiteral("Pellworth KD-7 cassette deck");
    unit.maker = QStringLiteral("Pellworth");
    unit.makerModel = QStringLiteral("KD-7");
    unit.category = Category::CassetteDeck;
    unit.serial = QStringLiteral("1180427");
    unit.year = 1988;
    unit.yearBasis = QStringLiteral("date codes on the integrated circuits");
    unit.mains = QStringLiteral("230 V 50 Hz");
    unit.protectionClass = ProtectionClass::II;
    unit.claim = QStringLiteral("Powers on, one side quiet, tape stops by itself");
    unit.looks = QStringLiteral("good; lid scratched, all lettering clear");
    unit.function = QStringLiteral("good on every function that was tried");
    unit.earlierWork = QStringLiteral("two screws of the lid are not original; solder on the head board re-done once");
    unit.accessories = QStringLiteral("mains lead; no remote control (none was made)");
    sample.setting(settings::benchName, QStringLiteral("Harbour Lane Audio Bench"));
    sample.setting(settings::worker, QStringLiteral("R. M."));
    sample.setting(settings::terms,
                   QStringLiteral("Returns within 30 days.\nCarriage both ways is paid by the bench where a fault shows that "
                                  "this sheet does not name. Write to the bench, quoting the tag."));

    if (withPhotos) {
        sample.photo(Phase::AsFound, {}, {1280, 853}, true, QColor(0x78, 0x80, 0x76));
        sample.photo(Phase::DuringWork, QStringLiteral("Take-up clutch, glazed felt"), {1280, 853}, true,
                     QColor(0x90, 0x78, 0x60));
        sample.photo(Phase::DuringWork, QStringLiteral("not for the sheet"), {600, 800}, false, QColor(0x60, 0x60, 0x60));
    }
    const auto reel = sample.symptom(QStringLiteral("Take-up reel stopped after a few seconds"),
                                     QStringLiteral("cold and warm, both directions"), SymptomState::Cleared);
    const auto weak = sample.symptom(QStringLiteral("Left channel 12 dB weak"), {}, SymptomState::Cleared);
    const auto flutter = sample.symptom(QStringLiteral("Flutter 0.19 %"), QStringLiteral("3150 Hz test tape, middle of the side"),
                                        SymptomState::Cleared);
    sample.cause(reel, QStringLiteral("Glazed clutch felt, idler tyre hard"), CauseState::Confirmed);
    sample.cause(reel, QStringLiteral("motor weak"), CauseState::RuledOut);
    sample.cause(weak, QStringLiteral("Broken strand in the left head lead"), CauseState::Confirmed);
    sample.cause(flutter, QStringLiteral("Capstan bearing dry, belt stretched"), CauseState::Confirmed);
    sample.step(reel, StepKind::Clean, QStringLiteral("clutch felt cleaned and re-faced"));
    sample.step(reel, StepKind::Renew, QStringLiteral("idler tyre renewed"));
    sample.step(weak, StepKind::Solder, QStringLiteral("lead re-made and soldered"), QStringLiteral("left head"));
    sample.step(weak, StepKind::Align, QStringLiteral("azimuth set"), {}, QStringLiteral("70° at 10 kHz"),
                QStringLiteral("under 10°"));
    sample.step(flutter, StepKind::Lubricate, QStringLiteral("capstan bearing oiled, one drop"));
    sample.step(flutter, StepKind::Renew, QStringLiteral("belt renewed"));
    sample.step({}, StepKind::Clean, QStringLiteral("source switch cleaned"));
    sample.step({}, StepKind::Other, QStringLiteral("fully serviced"));

    const auto meter = QStringLiteral("Tarrick 41 multimeter");
    const auto analyser = QStringLiteral("sound card and test tape");
    const auto manual = QStringLiteral("service manual, page 14");
    const auto speed = sample.point(QStringLiteral("Speed, 3150 Hz tone"), QStringLiteral("3150 Hz 1%"), {}, manual, 1);
    const auto wow = sample.point(QStringLiteral("Flutter, weighted peak (IEC 60386)"), QStringLiteral("<= 0.12 %"),
                                  QStringLiteral("middle of the side"), manual, 2);
    const auto torque = sample.point(QStringLiteral("Take-up torque"), QStringLiteral("35..65 gf.cm"),
                                     QStringLiteral("play, torque cassette"), manual, 3);
    const auto left = sample.point(QStringLiteral("Line out, left"), QStringLiteral("387 mV 2dB"),
                                   QStringLiteral("315 Hz at 0 dB, volume at full"), manual, 4);
    const auto right = sample.point(QStringLiteral("Line out, right"), QStringLiteral("387 mV 2dB"),
                                    QStringLiteral("315 Hz at 0 dB, volume at full"), manual, 5);
    const auto rail =
        sample.point(QStringLiteral("CN2.4"), QStringLiteral("12 V 2%"), {}, QStringLiteral("printed on the board"), 6);
    const auto insulation = sample.point(QStringLiteral("Insulation, mains to touchable metal"), QStringLiteral(">= 2 MΩ"),
                                         QStringLiteral("500 V DC"), {}, 7);
    const auto head = sample.point(QStringLiteral("Motor current"), {}, QStringLiteral("play"), {}, 8);
    sample.reading(speed, QStringLiteral("3121 Hz"), Phase::AsFound, 2.0, analyser);
    sample.reading(wow, QStringLiteral("0.19 %"), Phase::AsFound, 0.02, analyser);
    sample.reading(torque, QStringLiteral("14 gf.cm"), Phase::AsFound, 2.0, QStringLiteral("torque cassette"));
    sample.reading(left, QStringLiteral("96 mV"), Phase::AsFound, 0.6, meter);
    sample.reading(right, QStringLiteral("371 mV"), Phase::AsFound, 2.1, meter);
    sample.reading(head, QStringLiteral("about 118 mA"), Phase::AsFound, {}, meter);
    sample.reading(rail, QStringLiteral("11.74 V"), Phase::DuringWork, 0.069, meter);
    sample.later(5);
    sample.reading(speed, QStringLiteral("3148 Hz"), Phase::AsItLeaves, 2.0, analyser);
    sample.reading(wow, QStringLiteral("0.08 %"), Phase::AsItLeaves, 0.02, analyser);
    sample.reading(torque, QStringLiteral("47 gf.cm"), Phase::AsItLeaves, 2.0, QStringLiteral("torque cassette"));
    sample.reading(left, QStringLiteral("382 mV"), Phase::AsItLeaves, 2.2, meter);
    sample.reading(right, QStringLiteral("379 mV"), Phase::AsItLeaves, 2.2, meter);
    sample.reading(rail, QStringLiteral("11.80 V"), Phase::AsItLeaves, 0.069, meter);
    sample.reading(insulation, QStringLiteral("> 200 MΩ"), Phase::AsItLeaves, {}, QStringLiteral("insulation tester"));

    Soak soak;
    soak.name = QStringLiteral("Play, both directions");
    soak.wanted = *Limit::parse(u"<= 45 °C");
    soak.startedAt = QDateTime({2026, 11, 27}, {18, 0}, Qt::UTC);
    soak.endedAt = QDateTime({2026, 11, 27}, {22, 10}, Qt::UTC);
    soak.interruptions = QStringLiteral("stopped once for 10 minutes to turn the tape");
    soak.conditions = QStringLiteral("lid on, 21 °C in the room");
    const auto soakId = sample.add(soak).id;
    const auto warm = sample.point(QStringLiteral("Motor, by thermometer"), {}, {}, {}, 9);
    for (const char *value : {"31.5 °C", "36.2 °C", "38.0 °C", "38.4 °C"})
        sample.reading(warm, QString::fromUtf8(value), Phase::AsItLeaves, 0.5, {}, soakId);

    sample.proof(ProofKind::Function, ProofOutcome::Passed, QStringLiteral("All keys, counter, meters, headphone outlet"));
    sample.proof(ProofKind::Function, ProofOutcome::Passed, QStringLiteral("Record and erase on normal and chrome tape"));
    sample.proof(ProofKind::Function, ProofOutcome::NotTested, QStringLiteral("Metal tape"));
    sample.proof(ProofKind::Function, ProofOutcome::Failed, QStringLiteral("Counter lamp"),
                 QStringLiteral("dark; lamp no longer made"));
    sample.proof(ProofKind::Cosmetic, ProofOutcome::NotApplicable, QStringLiteral("Remote control"));
    sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Passed,
                 QStringLiteral("Visual: plug, lead, cover, no live parts through slots"), {}, {},
                 QStringLiteral("EN 50699, class II"));
    sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Passed, QStringLiteral("Insulation at 500 V DC"),
                 QStringLiteral("> 200 MΩ, at least 2 MΩ wanted"), QStringLiteral("insulation tester"),
                 QStringLiteral("EN 50699, class II"));
    sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Passed, QStringLiteral("Touch current"),
                 QStringLiteral("0.02 mA, up to 0.25 mA wanted"), QStringLiteral("leakage clamp"),
                 QStringLiteral("EN 50699, class II"));

    sample.fitted(flutter, QStringLiteral("capstan belt 78 × 4 × 0.6 mm"), QStringLiteral("capstan"),
                  QStringLiteral("stretched, 81 mm"));
    sample.fitted(reel, QStringLiteral("idler tyre 13 × 10 × 1.5 mm"), QStringLiteral("take-up idler"), QStringLiteral("hard"));
    sample.fitted(weak, QStringLiteral("head lead, screened, 180 mm"));
    sample.fitted({}, QStringLiteral("10 µF 50 V 105 °C"), QStringLiteral("C214, C215"), QStringLiteral("10 µF 16 V"), 2);
    sample.note(NoteKind::Flaw, QStringLiteral("Scratch on the left of the lid, 40 mm."));
    sample.note(NoteKind::Flaw, QStringLiteral("Playback head shows light wear; the response was not corrected for it."));
    sample.note(NoteKind::Use, QStringLiteral("Let it warm up for ten minutes before recording."));
    sample.note(NoteKind::Note, QStringLiteral("private: bought too dear"));
    if (withPhotos)
        sample.photo(Phase::AsItLeaves, {}, {1280, 853}, true, QColor(0x70, 0x78, 0x80));
    return sample;
}

/// What an imported record gives: a name, a claim, nothing else.
inline PaperSample bareSample()
{
    PaperSample sample;
    sample.file.unit.tag = 7;
    sample.file.unit.name = QStringLiteral("Brenlow portable radio");
    sample.file.unit.category = Category::Radio;
    sample.file.unit.claim = QStringLiteral("No sound, crackles when the volume is turned");
    SourceRecord source;
    source.brand = QStringLiteral("Brenlow");
    sample.add(source);
    return sample;
}

} // namespace ts::testing
