#include "app/invocation.h"

#include "model/store/store.h"

#include <QFile>
#include <QJsonDocument>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <unistd.h>

namespace ts {

namespace {

/// Characters that a terminal obeys instead of showing, and those that turn the direction of what stands beside them.
bool isObeyed(QChar c)
{
    return c.category() == QChar::Other_Control || (c >= u'\u202A' && c <= u'\u202E') || (c >= u'\u2066' && c <= u'\u2069');
}

/// Such characters as the sign for "cannot be shown"; line breaks stay.
QString shown(QString text)
{
    for (QChar &c : text)
        if (isObeyed(c) && c != u'\n')
            c = QChar(QChar::ReplacementCharacter);
    return text;
}

} // namespace

Invocation::Invocation(QStringList arguments, QString command, QString usage)
    : m_arguments(std::move(arguments)), m_command(std::move(command)), m_usage(std::move(usage)),
      m_error(stderr, QIODevice::WriteOnly), m_ids(m_clock)
{
}

QString Invocation::usageHint() const
{
    constexpr qsizetype oneLine = 140;
    return m_usage.size() > oneLine ? QStringLiteral("turnscrew %1 --help shows how").arg(m_command)
                                    : QStringLiteral("use: turnscrew %1 %2").arg(m_command, m_usage);
}

Exit Invocation::finish(Exit exit)
{
    m_out.flush();
    const QByteArray bytes = shown(std::exchange(m_answer, {})).toUtf8();
    const bool written =
        std::fwrite(bytes.constData(), 1, static_cast<size_t>(bytes.size()), stdout) == static_cast<size_t>(bytes.size());
    if (std::fflush(stdout) == 0 && written)
        return exit;
    return refuse(Trouble{QStringLiteral("The answer could not be written to standard output"), qt_error_string(errno), {}});
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
    remark(trouble.sentence());
    return Exit::Refused;
}

Exit Invocation::misuse(const QString &sentence)
{
    remark(sentence);
    return Exit::WrongUsage;
}

void Invocation::remark(const QString &sentence)
{
    m_error << shown(sentence.simplified()) << Qt::endl;
}

void Invocation::print(const QJsonObject &document)
{
    QString text;
    for (const QChar c : QString::fromUtf8(QJsonDocument(document).toJson(QJsonDocument::Indented))) {
        if (isObeyed(c) && c != u'\n') // it stands inside a string, where JSON has an escape for it
            text += QStringLiteral("\\u%1").arg(c.unicode(), 4, 16, QLatin1Char('0'));
        else
            text += c;
    }
    m_out << text;
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

Options::Options(const Invocation &run) : m_command(run.command()), m_hint(run.usageHint())
{
    m_parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
}

void Options::add(const QString &name, const QString &value)
{
    m_parser.addOption(QCommandLineOption(name, {}, value));
}

Expected<void> Options::read(const QStringList &arguments, int least, int most)
{
    const auto wrong = [this](const QString &why) { return Trouble{why, {}, m_hint}; };
    if (!m_parser.parse(QStringList{m_command} + arguments)) {
        if (m_parser.unknownOptionNames().isEmpty())
            return wrong(QStringLiteral("An option of turnscrew %1 lacks its value, or has one and takes none").arg(m_command));
        const QString unknown = m_parser.unknownOptionNames().first();
        if (!unknown.isEmpty() && unknown.at(0).isLetter())
            return wrong(QStringLiteral("turnscrew %1 has no option \"%2\"").arg(m_command, unknown));
        return Trouble{QStringLiteral("\"-%1\" was read as an option").arg(unknown),
                       {},
                       QStringLiteral("put -- before a value that begins with a dash")};
    }
    const auto count = m_parser.positionalArguments().size();
    if (count < least)
        return wrong(QStringLiteral("Something is missing after turnscrew %1").arg(m_command));
    if (most >= 0 && count > most)
        return wrong(QStringLiteral("\"%1\" is one word too many").arg(at(most)));
    return {};
}

Expected<void> notTheBook(const QString &file, const QString &book)
{
    const auto address = BookAddress::parse(book);
    if (!address || address->engine != BookAddress::Engine::Sqlite)
        return {};
    const std::filesystem::path target(QFile::encodeName(file).toStdString());
    for (const auto *end : {"", "-wal", "-shm", "-journal"}) {
        std::error_code error; // one of the two not being there is no trouble here
        if (std::filesystem::equivalent(target, QFile::encodeName(address->file + QLatin1String(end)).toStdString(), error))
            return Trouble{QStringLiteral("Cannot write %1").arg(file), QStringLiteral("it is the workbook itself"),
                           QStringLiteral("choose another file")};
    }
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
