#include "model/values/money.h"
#include "model/values/quoted.h"

#include <array>
#include <string_view>

namespace ts {

namespace {

// ISO 4217, list one (current codes and funds of a state), grouped by the decimals of the minor unit.
constexpr std::string_view withNone = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
constexpr std::string_view withThree = "BHD IQD JOD KWD LYD OMR TND";
constexpr std::string_view withFour = "CLF UYW";
constexpr std::string_view withTwo = "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP "
                                     "BYN BZD CAD CDF CHE CHF CHW CNY COP COU "
                                     "CRC CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD "
                                     "HNL HRK HTG HUF IDR ILS INR IRR JMD KES "
                                     "KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN "
                                     "MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB "
                                     "PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SLL SOS SRD SSP STN "
                                     "SVC SYP SZL THB TJS TMT TOP TRY TTD TWD "
                                     "TZS UAH USD USN UYU UZS VED VES WST XCD XCG YER ZAR ZMW ZWG ZWL";

struct Sign {
    char16_t sign;
    const char *code;
};
// Signs that name one currency on their own. The dollar sign is shared; bare it means USD here.
constexpr std::array signs{Sign{u'£', "GBP"}, Sign{u'€', "EUR"}, Sign{u'$', "USD"}, Sign{u'¥', "JPY"}, Sign{u'₹', "INR"},
                           Sign{u'₩', "KRW"}, Sign{u'₪', "ILS"}, Sign{u'₴', "UAH"}, Sign{u'₺', "TRY"}, Sign{u'₱', "PHP"}};

bool holds(std::string_view list, const QByteArray &code)
{
    return list.find(std::string_view(code.constData(), static_cast<size_t>(code.size()))) != std::string_view::npos;
}

std::optional<int> decimalsOf(const QByteArray &code)
{
    if (holds(withTwo, code))
        return 2;
    if (holds(withNone, code))
        return 0;
    if (holds(withThree, code))
        return 3;
    if (holds(withFour, code))
        return 4;
    return std::nullopt;
}

} // namespace

Expected<Currency> Currency::parse(QStringView text)
{
    const QStringView word = text.trimmed();
    const auto refuse = [&](const QString &wrong) {
        return Trouble{quoted(text) + QStringLiteral(" is no currency"), wrong,
                       QStringLiteral("write a three-letter code such as GBP")};
    };
    if (word.isEmpty())
        return Trouble{QStringLiteral("No currency was given"), {}, QStringLiteral("write a three-letter code such as GBP")};
    QByteArray code;
    if (word.size() == 1) {
        for (const Sign &each : signs)
            if (word.front() == each.sign)
                code = each.code;
    } else if (word.size() == 3) {
        for (const QChar each : word) {
            const char16_t upper = each.unicode() >= u'a' && each.unicode() <= u'z' ? each.unicode() - 0x20 : each.unicode();
            if (upper < u'A' || upper > u'Z')
                return refuse(QStringLiteral("a code is three letters from A to Z"));
            code += static_cast<char>(upper);
        }
    }
    if (code.isEmpty())
        return refuse(QString());
    const auto decimals = decimalsOf(code);
    if (!decimals)
        return refuse(QStringLiteral("no currency in use has this code"));
    Currency currency;
    currency.m_code = QString::fromLatin1(code);
    currency.m_decimals = *decimals;
    return currency;
}

QString Currency::sign() const
{
    for (const Sign &each : signs)
        if (m_code == QLatin1String(each.code))
            return QString(QChar(each.sign));
    return isNull() ? QString() : m_code + QChar(QChar::Nbsp);
}

} // namespace ts
