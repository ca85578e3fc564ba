#include "model/paper/tag_label.h"

#include "model/paper/plain_words.h"
#include "model/paper/unit_words.h"
#include "model/records/tag_text.h"
#include "model/sums/standing.h"

#include <QRegularExpression>


using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString stageText(const Unit &unit)
{
    QString word = QString(toWord(unit.stage)).replace(u'_', u' ');
    word[0] = word.at(0).toUpper();
    if (unit.stageSince.isValid())
        word += u" since "_s + dayText(unit.stageSince.toLocalTime().date());
    if (unit.stage == Stage::Held && !unit.heldBecause.isEmpty())
        word += u": "_s + plainText(unit.heldBecause);
    return word;
}

} // namespace

QStringList commonLabelSizes()
{
    return {u"54x25"_s, u"57x32"_s, u"62x29"_s, u"62x100"_s, u"89x36"_s, u"102x152"_s};
}

Expected<QSizeF> labelSize(const QString &text)
{
    static const QRegularExpression form(u"^\\s*([0-9]+(?:[.,][0-9]+)?)\\s*[x×*]\\s*([0-9]+(?:[.,][0-9]+)?)\\s*(?:mm)?\\s*$"_s, QRegularExpression::CaseInsensitiveOption);
    const auto match = form.match(text);
    const auto number = [&](int which) { return match.captured(which).replace(u',', u'.').toDouble(); };
    if (!match.hasMatch())
        return Trouble{u"\"%1\" is no size of a label"_s.arg(text.left(40)), {}, u"give width and height in millimetres, such as 62x29"_s};
    const QSizeF size(number(1), number(2));
    if (size.width() < 25 || size.height() < 12 || size.width() > 210 || size.height() > 297)
        return Trouble{u"\"%1\" is no size of a label"_s.arg(text.left(40)), u"a label is from 25 x 12 to 210 x 297 mm"_s, {}};
    return size;
}

Labels tagLabels(const UnitFile &file, const BenchFile &bench, const QSizeF &millimetres, const QDateTime &now, int boxes)
{
    const Unit &unit = file.unit;
    const Standing stand = standing(file, bench);
    LabelFacts label;
    label.tag = tagText(unit.tag);
    label.name = nameOf(unit);
    label.doNotPower = plainText(stand.doNotPower);
    if (!unit.place.isEmpty())
        label.lines << u"Place: "_s + plainText(unit.place);
    label.lines << stageText(unit);
    QStringList awaited;
    for (const Need &need : stand.awaited)
        awaited << plainText(need.text);
    if (!awaited.isEmpty())
        label.lines << u"Waits for: "_s + awaited.join(u", "_s);
    if (unit.kind == UnitKind::Owners) {
        const Contact *owner = bench.find(unit.owner);
        label.lines << u"Owner: "_s + (owner ? plainText(owner->name) : u"not the bench's own"_s);
    }
    if (!unit.serial.isEmpty())
        label.lines << u"Serial: "_s + plainText(unit.serial);
    label.lines << u"In: "_s + dayText(unit.at.toLocalTime().date());
    Labels labels{u"Tag label %1"_s.arg(label.tag), now, millimetres, {}};
    for (int box = 1; box <= boxes; ++box) {
        label.beside = boxes > 1 ? u"box %1 of %2"_s.arg(box).arg(boxes) : QString();
        labels.labels << label;
    }
    return labels;
}

Expected<Labels> bagLabels(const UnitFile &file, const QSizeF &millimetres, const QDateTime &now)
{
    const QString tag = tagText(file.unit.tag);
    Labels labels{u"Bag labels %1"_s.arg(tag), now, millimetres, {}};
    for (const TeardownItem &item : file.all<TeardownItem>()) {
        if (item.removed || item.state != TeardownState::Off)
            continue;
        LabelFacts label;
        label.tag = tag;
        label.beside = u"step %1"_s.arg(item.position);
        label.name = plainText(item.what);
        QString fasteners = plainText(item.fasteners);
        if (fasteners.isEmpty() && item.fastenerCount)
            fasteners = u"%1 fasteners"_s.arg(*item.fastenerCount);
        for (const QString &text : {fasteners, plainText(item.springs), plainText(item.connectors), plainText(item.marks)})
            if (!text.isEmpty())
                label.lines << text;
        if (!item.keptIn.isEmpty())
            label.lines << u"Kept in: "_s + plainText(item.keptIn);
        labels.labels << label;
    }
    if (labels.labels.isEmpty())
        return Trouble{u"There are no bag labels of unit %1"_s.arg(tag), u"nothing of it is off"_s, {}};
    return labels;
}

} // namespace ts
