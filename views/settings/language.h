#pragma once

#include <QString>

#include <memory>
#include <vector>

class QTranslator;

namespace ts {

/// The language of the screens: the system's where the program knows it, or the one that was chosen; English otherwise.
class Language {
public:
    /// `chosen`: "de", "en", or empty for the system's. Numbers, days and money follow the system's territory in either case.
    explicit Language(const QString &chosen);
    ~Language();

private:
    std::vector<std::unique_ptr<QTranslator>> m_translators;
};

} // namespace ts
