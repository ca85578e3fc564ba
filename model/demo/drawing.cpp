#include "model/demo/drawing_parts.h"

namespace ts {

Finish finishOf(const DemoPicture &picture)
{
    Dice dice(picture.seed);
    struct Scheme {
        QRgb panel, ink, knob, key;
        bool dark;
    };
    static constexpr std::array schemes{
        Scheme{0xffc6c4ba, 0xff3a3b37, 0xffb4b1a5, 0xffd6d3c8, false}, // brushed silver
        Scheme{0xff35383a, 0xffd2cdbd, 0xff4a4d4d, 0xff54585a, true},  // charcoal
        Scheme{0xffcabd9d, 0xff463c28, 0xffb09f79, 0xffd8cdb0, false}, // champagne
        Scheme{0xff4a4f49, 0xffdcd6c4, 0xff8d8c80, 0xff767b72, true},  // green-grey
        Scheme{0xffdcd6c6, 0xff4a453a, 0xff6e6a5e, 0xffefe9da, false}, // cream
    };
    static constexpr std::array lights{0xffe2a45c, 0xff8fc9a8, 0xff9cc7d8, 0xffe5c070};
    static constexpr std::array woods{0xff7a5638, 0xff694a33, 0xff8c6744};
    const Scheme &scheme = dice.pick(schemes);
    return {QColor(scheme.panel), QColor(scheme.ink), QColor(scheme.knob), QColor(scheme.key), QColor(dice.pick(lights)), QColor(dice.pick(woods)), scheme.dark};
}

QImage drawDemoPicture(const DemoPicture &picture)
{
    // The view is mixed into the grain and the scuffs, so two pictures of one unit are never the same picture.
    Scene scene(picture.seed * 31 + static_cast<quint32>(picture.view) * 7 + static_cast<quint32>(picture.wear) + static_cast<quint32>(picture.subject.size()));
    switch (picture.view) {
    case DemoView::Front:
        if (picture.category == Category::Turntable || picture.category == Category::GameConsole || picture.category == Category::OldComputer)
            drawFlat(scene, picture);
        else
            drawFront(scene, picture);
        break;
    case DemoView::Back:
        drawBack(scene, picture);
        break;
    case DemoView::Inside:
        drawInside(scene, picture);
        break;
    case DemoView::Detail:
        drawDetail(scene, picture);
        break;
    }
    return scene.finish();
}

} // namespace ts
