#include "model/demo/engraving.h"

#include <array>
#include <utility>

namespace ts {

namespace {

// Each glyph stands on a grid 4 wide and 6 high: pairs of digits are x and y from the top left, a space lifts the tool.
constexpr std::array glyphs{
    std::pair{'A', "062046 1434"},
    std::pair{'B', "06003041423303 3344453606"},
    std::pair{'C', "4130100105163645"},
    std::pair{'D', "06003041453606"},
    std::pair{'E', "40000646 0333"},
    std::pair{'F', "400006 0333"},
    std::pair{'G', "41301001051636454323"},
    std::pair{'H', "0006 4046 0343"},
    std::pair{'I', "0006"},
    std::pair{'J', "4045361605"},
    std::pair{'K', "0006 400346"},
    std::pair{'L', "000646"},
    std::pair{'M', "0600234046"},
    std::pair{'N', "06004640"},
    std::pair{'O', "103041453616050110"},
    std::pair{'P', "06003041423303"},
    std::pair{'Q', "103041453616050110 2546"},
    std::pair{'R', "06003041423303 2346"},
    std::pair{'S', "413010010213334445361605"},
    std::pair{'T', "0040 2026"},
    std::pair{'U', "000516364540"},
    std::pair{'V', "002640"},
    std::pair{'W', "0016233640"},
    std::pair{'X', "0046 4006"},
    std::pair{'Y', "002340 2326"},
    std::pair{'Z', "00400646"},
    std::pair{'0', "103041453616050110"},
    std::pair{'1', "112026"},
    std::pair{'2', "01103041420646"},
    std::pair{'3', "01103041423323 334445361605"},
    std::pair{'4', "36300444"},
    std::pair{'5', "400003334445361605"},
    std::pair{'6', "4130100105163645443303"},
    std::pair{'7', "004016"},
    std::pair{'8', "103041423313020110 1304051636454433"},
    std::pair{'9', "4313020110304145361605"},
    std::pair{'-', "1333"},
    std::pair{'.', "2526"},
    std::pair{'/', "4006"},
    std::pair{'+', "2125 0343"},
    std::pair{':', "2122 2425"},
};
constexpr double gap = 1.6; // grid columns between two glyphs

double columnsOf(QChar letter)
{
    return letter.toUpper() == QLatin1Char('I') ? 0.2 : 4;
}

const char *strokesOf(QChar letter)
{
    const char wanted = letter.toUpper().toLatin1();
    for (const auto &[glyph, strokes] : glyphs)
        if (glyph == wanted)
            return strokes;
    return "";
}

} // namespace

QPainterPath engraved(const QString &text, QPointF topLeft, double height)
{
    QPainterPath path;
    const double step = height / 6;
    double left = topLeft.x();
    for (const QChar letter : text) {
        bool down = false;
        for (const char *at = strokesOf(letter); *at != '\0';) {
            if (*at == ' ') {
                down = false;
                ++at;
                continue;
            }
            const QPointF point(left + step * (at[0] - '0'), topLeft.y() + step * (at[1] - '0'));
            if (down)
                path.lineTo(point);
            else
                path.moveTo(point);
            down = true;
            at += 2;
        }
        left += step * (columnsOf(letter) + gap);
    }
    return path;
}

double engravedWidth(const QString &text, double height)
{
    double columns = -gap;
    for (const QChar letter : text)
        columns += columnsOf(letter) + gap;
    return text.isEmpty() ? 0 : height / 6 * columns;
}

} // namespace ts
