#include "views/settings/memory.h"

namespace ts {

namespace {
constexpr int mostRecent = 8;
}

Memory::Memory(const QString &file)
    : m_settings(file.isEmpty() ? QSettings().fileName() : file, QSettings::IniFormat)
{
}

QString Memory::text(const char *key) const
{
    return m_settings.value(QString::fromLatin1(key)).toString();
}

QStringList Memory::recentBooks() const
{
    return m_settings.value(QStringLiteral("books/recent")).toStringList();
}

void Memory::addRecentBook(const QString &book)
{
    QStringList books = recentBooks();
    books.removeAll(book);
    books.prepend(book);
    m_settings.setValue(QStringLiteral("books/recent"), QStringList(books.mid(0, mostRecent)));
}

void Memory::forgetBook(const QString &book)
{
    QStringList books = recentBooks();
    books.removeAll(book);
    m_settings.setValue(QStringLiteral("books/recent"), books);
}

Scheme Memory::scheme() const
{
    const QString word = text("look/scheme");
    return word == QLatin1String("light") ? Scheme::Light : word == QLatin1String("dark") ? Scheme::Dark : Scheme::FollowSystem;
}

void Memory::setScheme(Scheme scheme)
{
    m_settings.setValue(QStringLiteral("look/scheme"), scheme == Scheme::Light  ? QStringLiteral("light")
                                                       : scheme == Scheme::Dark ? QStringLiteral("dark")
                                                                                : QStringLiteral("system"));
}

int Memory::textPercent() const
{
    const int percent = text("look/text_percent").toInt();
    return percent == 0 ? 100 : percent;
}

void Memory::setTextPercent(int percent)
{
    m_settings.setValue(QStringLiteral("look/text_percent"), percent);
}

bool Memory::largeType() const
{
    return m_settings.value(QStringLiteral("look/large_type")).toBool();
}

void Memory::setLargeType(bool large)
{
    m_settings.setValue(QStringLiteral("look/large_type"), large);
}

QString Memory::language() const
{
    return text("look/language");
}

void Memory::setLanguage(const QString &language)
{
    m_settings.setValue(QStringLiteral("look/language"), language);
}

QString Memory::backupFolder() const
{
    return text("folders/backup");
}

void Memory::setBackupFolder(const QString &folder)
{
    m_settings.setValue(QStringLiteral("folders/backup"), folder);
}

QString Memory::watchedFolder() const
{
    return text("folders/watched");
}

void Memory::setWatchedFolder(const QString &folder)
{
    m_settings.setValue(QStringLiteral("folders/watched"), folder);
}

QByteArray Memory::state(const QString &name) const
{
    return m_settings.value(QStringLiteral("state/") + name).toByteArray();
}

void Memory::setState(const QString &name, const QByteArray &state)
{
    m_settings.setValue(QStringLiteral("state/") + name, state);
}

} // namespace ts
