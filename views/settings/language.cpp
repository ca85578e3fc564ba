#include "views/settings/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace ts {

Language::Language(const QString &chosen)
{
    const QLocale system = QLocale::system();
    const QLocale wanted = chosen.isEmpty() ? system : QLocale(QLocale(chosen).language(), system.language() == QLocale(chosen).language() ? system.territory() : QLocale(chosen).territory());
    if (!chosen.isEmpty())
        QLocale::setDefault(wanted);
    // The words of Qt's own dialogs, where the system has them, and ours over them.
    for (const auto &[name, folder] : {std::pair{QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath)},
                                       std::pair{QStringLiteral("turnscrew"), QStringLiteral(":/i18n")}}) {
        auto translator = std::make_unique<QTranslator>();
        if (!translator->load(wanted, name, QStringLiteral("_"), folder))
            continue;
        QCoreApplication::installTranslator(translator.get());
        m_translators.push_back(std::move(translator));
    }
}

Language::~Language()
{
    for (const auto &translator : m_translators)
        QCoreApplication::removeTranslator(translator.get());
}

} // namespace ts
