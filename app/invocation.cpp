#include "app/invocation.h"

#include "model/store/store.h"

#include <QIODevice>
#include <QJsonDocument>

#include <cstdio>
#include <unistd.h>

namespace ts {

Invocation::Invocation(QStringList arguments)
    : m_arguments(std::move(arguments)), m_out(stdout, QIODevice::WriteOnly), m_error(stderr, QIODevice::WriteOnly), m_ids(m_clock)
{
}

QString Invocation::who()
{
    for (const auto *name : {"USER", "LOGNAME", "USERNAME"})
        if (const QString who = qEnvironmentVariable(name); !who.isEmpty())
            return who;
    return QStringLiteral("somebody");
}

Exit Invocation::refuse(const Trouble &trouble)
{
    m_out.flush();
    m_error << trouble.sentence() << Qt::endl;
    return Exit::Refused;
}

Exit Invocation::misuse(const QString &sentence)
{
    m_out.flush();
    m_error << sentence << Qt::endl;
    return Exit::WrongUsage;
}

void Invocation::remark(const QString &sentence)
{
    m_out.flush();
    m_error << sentence << Qt::endl;
}

void Invocation::print(const QJsonObject &document)
{
    m_out << QJsonDocument(document).toJson(QJsonDocument::Indented);
    m_out.flush();
}

Progress Invocation::progress(const QString &what)
{
    if (isatty(fileno(stderr)) == 0)
        return {};
    return [this, what](qint64 done, qint64 total) {
        m_error << QStringLiteral("\r%1: %2 of %3").arg(what).arg(done).arg(total) << (done >= total ? "\n" : "") << Qt::flush;
        return true;
    };
}

Expected<std::unique_ptr<Desk>> Invocation::open(const QString &book)
{
    const auto address = BookAddress::parse(book);
    if (!address)
        return address.trouble();
    auto store = Store::open(*address, m_clock.now(), who());
    if (!store)
        return store.trouble();
    if (const QString copy = (*store)->migration().copy; !copy.isEmpty())
        remark(QStringLiteral("The workbook was brought up to date; a copy of it as it was is %1.").arg(copy));
    return std::make_unique<Desk>(*std::move(store), m_ids);
}

Expected<std::unique_ptr<Desk>> Invocation::create(const QString &book)
{
    const auto address = BookAddress::parse(book);
    if (!address)
        return address.trouble();
    auto store = Store::create(*address, m_clock.now(), who());
    if (!store)
        return store.trouble();
    return std::make_unique<Desk>(*std::move(store), m_ids);
}

Options::Options(QString command, QString usage) : m_command(std::move(command)), m_usage(std::move(usage))
{
    m_parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
}

void Options::add(const QString &name, const QString &value)
{
    m_parser.addOption(QCommandLineOption(name, {}, value));
}

Expected<void> Options::read(const QStringList &arguments, int least, int most)
{
    const auto wrong = [this](const QString &why) {
        return Trouble{why, {}, QStringLiteral("use: turnscrew %1 %2").arg(m_command, m_usage)};
    };
    if (!m_parser.parse(QStringList{m_command} + arguments)) {
        if (!m_parser.unknownOptionNames().isEmpty())
            return wrong(QStringLiteral("turnscrew %1 has no option \"%2\"").arg(m_command, m_parser.unknownOptionNames().first()));
        return wrong(QStringLiteral("An option of turnscrew %1 lacks its value").arg(m_command));
    }
    const auto count = m_parser.positionalArguments().size();
    if (count < least)
        return wrong(QStringLiteral("Something is missing after turnscrew %1").arg(m_command));
    if (most >= 0 && count > most)
        return wrong(QStringLiteral("\"%1\" is one word too many").arg(at(most)));
    return {};
}

Expected<Id<Unit>> unitOf(Desk &desk, const QString &tag)
{
    bool ok = false;
    const int number = tag.toInt(&ok);
    if (!ok || number <= 0)
        return Trouble{QStringLiteral("\"%1\" is no tag").arg(tag), QStringLiteral("a tag is a number such as 0042"), {}};
    return desk.unitByTag(number);
}

} // namespace ts
