#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

enum class PaperKind { Restoration, Quote, Bill, Label, PuttingBack, Order, Ledger };

template <>
struct Words<PaperKind> {
    static constexpr std::array list{std::pair{PaperKind::Restoration, "restoration"},
                                     std::pair{PaperKind::Quote, "quote"},
                                     std::pair{PaperKind::Bill, "bill"},
                                     std::pair{PaperKind::Label, "label"},
                                     std::pair{PaperKind::PuttingBack, "putting_back"},
                                     std::pair{PaperKind::Order, "order"},
                                     std::pair{PaperKind::Ledger, "ledger"}};
};

/// A document that left the program; its bytes are kept by their SHA-256 and never change.
struct Paper : Record<Paper> {
    Id<Unit> unit;
    PaperKind kind = PaperKind::Restoration;
    int number = 0; ///< within its kind, without gaps; 0 asks the store
    int edition = 0; ///< counts this unit's papers of the kind from 1; 0 asks the store
    QDateTime madeAt;
    QString sha256;
    QString format; ///< pdf, html
    QString title;

    bool operator==(const Paper &) const = default;

    static constexpr auto table = "paper";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Paper::unit);
        fields("kind", &Paper::kind);
        fields("number", &Paper::number);
        fields("edition", &Paper::edition);
        fields("made_at", &Paper::madeAt).required();
        fields("sha256", &Paper::sha256).required();
        fields("format", &Paper::format).required();
        fields("title", &Paper::title).searched();
    }
};

} // namespace ts
