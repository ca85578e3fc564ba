#include "model/demo/bulk_notes.h"

#include "model/records/all_records.h"

namespace ts {

void writeKnown(Change &change, const ModelNotes &notes, Maker &maker, BulkWords &words, Dice &dice)
{
    const auto fresh = [&]<class R>(R) {
        R record = maker.fresh<R>();
        record.modelNotes = notes.id;
        return record;
    };
    const QString symptom = words.symptom(notes.category);
    for (int i = 0; i < 2; ++i) {
        KnownCause cause = fresh(KnownCause());
        cause.symptom = symptom;
        cause.text = words.cause(notes.category);
        cause.weight = dice.whole(1, 9) / 10.0;
        cause.fixMinutes = dice.whole(2, 12) * 5;
        change.add(cause);
        KnownCheck check = fresh(KnownCheck());
        check.symptom = symptom;
        check.text = QStringLiteral("look at the %1").arg(words.piece(notes.category));
        check.minutes = dice.whole(1, 6) * 5;
        change.add(check);
        KnownMark mark = fresh(KnownMark());
        mark.check = check.id;
        mark.cause = cause.id;
        change.add(mark);
    }
    KnownTeardown lid = fresh(KnownTeardown());
    lid.position = 1;
    lid.what = QStringLiteral("lid");
    lid.fasteners = QStringLiteral("5 screws M3x8");
    lid.fastenerCount = 5;
    change.add(lid);
    KnownPart part = fresh(KnownPart());
    part.text = words.piece(notes.category);
    change.add(part);
    KnownProof proof = fresh(KnownProof());
    proof.text = QStringLiteral("an hour of use without a fault");
    change.add(proof);
    KnownPaper paper = fresh(KnownPaper());
    paper.title = QStringLiteral("Service sheet %1").arg(notes.makerModel);
    change.add(paper);
}

} // namespace ts
