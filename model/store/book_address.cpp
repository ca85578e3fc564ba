#include "model/store/book_address.h"

#include <QFileInfo>
#include <QRegularExpression>
#include <QUrl>
#include <QUrlQuery>

namespace ts {

Expected<BookAddress> BookAddress::parse(const QString &book)
{
    BookAddress address;
    if (!book.startsWith(QLatin1String("postgresql://")) && !book.startsWith(QLatin1String("postgres://"))) {
        if (book.trimmed().isEmpty())
            return Trouble{QStringLiteral("Cannot open a workbook without a name"), {}, QStringLiteral("give a file or a postgresql:// address")};
        if (book.contains(QChar(0)))
            return Trouble{QStringLiteral("Cannot open the workbook"), QStringLiteral("its name contains a NUL character"), {}};
        address.file = QFileInfo(book).absoluteFilePath();
        return address;
    }
    address.engine = Engine::Postgres;
    const QString did = QStringLiteral("Cannot use this PostgreSQL address");
    const QUrl url(book, QUrl::StrictMode);
    if (!url.isValid())
        return Trouble{did, QStringLiteral("it is not well formed"), QStringLiteral("write postgresql://user@host/database")};
    const QUrlQuery query(url);
    const Trouble secret{did, QStringLiteral("it carries a password, which others could read"),
                         QStringLiteral("leave it out and put it in libpq's password file (~/.pgpass) or service file")};
    if (!url.password().isEmpty())
        return secret;
    address.host = url.host();
    address.port = url.port();
    address.user = url.userName(QUrl::FullyDecoded);
    address.database = url.path(QUrl::FullyDecoded).mid(1);
    static const QRegularExpression plain(QStringLiteral("^[^;\\s'\\\\]*$"));
    QStringList options;
    const auto items = query.queryItems(QUrl::FullyDecoded);
    for (const auto &[key, value] : items) {
        if (key.endsWith(QLatin1String("password"), Qt::CaseInsensitive)) // a key's password (sslpassword) too
            return secret;
        bool isPort = true;
        if (key == QLatin1String("host"))
            address.host = value;
        else if (key == QLatin1String("port"))
            address.port = static_cast<int>(value.toUShort(&isPort));
        else if (key == QLatin1String("user"))
            address.user = value;
        else if (key == QLatin1String("dbname"))
            address.database = value;
        else if (!plain.match(key).hasMatch() || !plain.match(value).hasMatch())
            return Trouble{did, QStringLiteral("\"%1\" has a blank, quote or semicolon in it").arg(key), {}};
        else
            options << key + QLatin1Char('=') + value;
        if (!isPort || address.port == 0)
            return Trouble{did, QStringLiteral("\"%1\" is no port").arg(value), {}};
    }
    address.options = options.join(QLatin1Char(';'));
    return address;
}

QString BookAddress::display() const
{
    if (engine == Engine::Sqlite)
        return QFileInfo(file).fileName();
    return QStringLiteral("the shared workbook %1%2").arg(database.isEmpty() ? QStringLiteral("(default)") : database,
                                                         host.isEmpty() ? QString() : QStringLiteral(" on ") + host);
}

} // namespace ts
