#include "model/sums/markings/digit_code.h"

#include "model/sums/given.h"
#include "model/values/lettercode.h"
#include "model/values/number.h"
#include "model/values/quoted.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

Expected<double> resistorDigits(QStringView text)
{
    const QStringView code = text.trimmed();
    const bool figures = std::all_of(code.begin(), code.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
    const bool link =
        !code.isEmpty() && code.size() <= 4 && std::all_of(code.begin(), code.end(), [](QChar c) { return c == u'0'; });
    if (figures && link)
        return 0.0;
    if (!figures || code.size() < 3 || code.size() > 4)
        return Trouble{quoted(text) + u" is no marking in figures"_s, {}, u"give three or four figures, such as 472 or 1002"_s};
    return shiftDecimal(code.chopped(1).toInt(), code.back().digitValue());
}

Sum digitCodeSum()
{
    static const QStringList parts{u"resistor"_s, u"capacitor"_s};
    return {u"digit-code"_s,
            u"what a marking in three or four figures stands for"_s,
            {{u"text"_s, u"the marking, such as 472, 1002, 104 or 473J"_s},
             {u"part"_s, u"what it stands on; the figures alone do not say"_s, true, {}, {}, parts}},
            {{u"value"_s, u"in ohms or farads"_s},
             {u"unit"_s, u"Ω or F"_s},
             {u"tolerance_percent"_s, u"of a letter behind the figures; null where there is none"_s, true, u"%"_s}},
            u"IEC 60062:2016; 8 and 9 as the last figure of a capacitor from memory"_s,
            worked(u"digit-code"_s,
                   [](Given &given) -> SumOutput {
                       const bool resistor = given.choice(u"part", parts) == 0;
                       const QString text = given.text(u"text");
                       if (resistor) {
                           const auto ohms = resistorDigits(text);
                           if (!ohms)
                               return given.refuse(ohms.trouble());
                           return SumOutput{
                               {u"value"_s, *ohms}, {u"unit"_s, u"Ω"_s}, {u"tolerance_percent"_s, QJsonValue(QJsonValue::Null)}};
                       }
                       const auto marking = decodeMarking(text);
                       if (!marking || marking->value.measure().symbol() != QLatin1String("F"))
                           return given.refuse(marking ? Trouble{quoted(text) + u" is the marking of a resistor"_s, {}, {}}
                                                       : marking.trouble());
                       return SumOutput{{u"value"_s, marking->value.base()},
                                        {u"unit"_s, u"F"_s},
                                        {u"tolerance_percent"_s, orNull(marking->tolerancePercent)}};
                   }),
            u"figures × 10^last; capacitors in pF, a last 9 is × 0.1 and 8 is × 0.01"_s};
}

} // namespace ts
