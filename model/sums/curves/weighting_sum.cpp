#include "model/sums/curves/weighting_sum.h"

#include "model/sums/given.h"
#include "model/values/number.h"
#include "model/values/weighting.h"

using namespace Qt::StringLiterals;

namespace ts {

Sum weightingSum()
{
    static const QStringList curves{u"A"_s, u"itu468"_s, u"flutter"_s};
    return {u"weighting"_s,
            u"how much a weighting curve takes away or adds at a frequency"_s,
            {{u"curve"_s, u"A for sound level, itu468 for noise, flutter for speed"_s, true, {}, {}, curves},
             {u"frequency"_s, u"of the tone, or of the speed fluctuation"_s, true, u"Hz"_s}},
            {{u"db"_s, u"against 1 kHz; flutter against 4 Hz"_s, true, u"dB"_s}},
            u"IEC 61672-1:2013; ITU-R BS.468-4 table 1; IEC 60386 (flutter, table from memory)"_s,
            worked(u"weighting"_s,
                   [](Given &given) -> SumOutput {
                       constexpr std::array ways{aWeighting, itu468Weighting, flutterWeighting};
                       const auto curve = static_cast<size_t>(given.choice(u"curve", curves));
                       const double frequency = given.positive(u"frequency", u"Hz");
                       const auto level = ways[curve](frequency);
                       if (!level)
                           return given.refuse(level.trouble());
                       return {{u"db"_s, withoutBinaryDust(*level, 100)}};
                   }),
            u"A: analytic form, poles at 20.6, 107.7, 737.9 and 12194 Hz; the others by table"_s};
}

} // namespace ts
