#include "tests/workbooks.h"

#include <QUuid>

namespace ts::testing {

namespace {

QString serverAddress()
{
    return qEnvironmentVariable("TURNSCREW_TEST_PG");
}

void runOnServer(const QString &sql)
{
    const auto address = BookAddress::parse(serverAddress());
    const auto connection = address ? Connection::open(*address, Connection::Mode::Existing) : address.trouble();
    if (!connection || !(*connection)->plain(sql))
        qFatal("The test server does not answer: %s", qPrintable(sql));
}

} // namespace

Workbooks::Workbooks() = default;

Workbooks::~Workbooks()
{
    for (const QString &schema : m_schemas)
        runOnServer(QStringLiteral("DROP SCHEMA %1 CASCADE").arg(schema));
}

QStringList Workbooks::engines()
{
    QStringList engines{QStringLiteral("sqlite")};
    if (!serverAddress().isEmpty())
        engines << QStringLiteral("postgres");
    return engines;
}

QString Workbooks::fresh(const QString &engine)
{
    if (engine == QLatin1String("sqlite"))
        return m_folder.filePath(QStringLiteral("book%1.turnscrew").arg(++m_count));
    const QString schema = QStringLiteral("t%1").arg(QUuid::createUuid().toString(QUuid::Id128));
    runOnServer(QStringLiteral("CREATE SCHEMA ") + schema);
    m_schemas << schema;
    return serverAddress() + (serverAddress().contains(QLatin1Char('?')) ? QLatin1Char('&') : QLatin1Char('?'))
        + QStringLiteral("options=-csearch_path%3D") + schema;
}

OpenDesk::OpenDesk() : clock(QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC)), ids(clock) {}

Expected<void> OpenDesk::create(const QString &book, const QString &who)
{
    const auto address = BookAddress::parse(book);
    if (!address)
        return address.trouble();
    auto store = Store::create(*address, clock.now(), who);
    if (!store)
        return store.trouble();
    desk = std::make_unique<Desk>(*std::move(store), ids);
    return {};
}

Expected<void> OpenDesk::open(const QString &book, const QString &who)
{
    const auto address = BookAddress::parse(book);
    if (!address)
        return address.trouble();
    auto store = Store::open(*address, clock.now(), who);
    if (!store)
        return store.trouble();
    desk = std::make_unique<Desk>(*std::move(store), ids);
    return {};
}

void engineRows()
{
    QTest::addColumn<QString>("engine");
    const QStringList engines = Workbooks::engines();
    for (const QString &engine : engines)
        QTest::newRow(qPrintable(engine)) << engine;
}

} // namespace ts::testing
