#include "model/store/transaction.h"

namespace ts {

Transaction::Transaction(Connection &connection) : m_connection(connection)
{
    ++m_connection.m_held;
}

void Transaction::leave()
{
    m_open = false;
    --m_connection.m_held;
    if (!m_connection.isLost()) // those of a lost session go with it, they cannot be freed one by one
        m_connection.m_failed.clear();
}

Expected<std::unique_ptr<Transaction>> Transaction::begin(Connection &connection, Use use)
{
    // IMMEDIATE and the advisory lock both make one writer wait for the other, so journal numbers ascend in order of commit.
    const QString statement = use == Use::Writing ? connection.pick("BEGIN IMMEDIATE", "BEGIN")
                                                  : connection.pick("BEGIN", "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
    if (auto begun = connection.plain(statement); !begun)
        return begun.trouble();
    std::unique_ptr<Transaction> transaction(new Transaction(connection));
    if (connection.isPostgres() && use == Use::Writing)
        if (auto locked = connection.plain(QStringLiteral("SELECT pg_advisory_xact_lock(1414746947, hashtext(current_schema()))")); !locked)
            return locked.trouble();
    return transaction;
}

Transaction::~Transaction()
{
    if (!m_open)
        return;
    if (!m_connection.isLost()) // with a lost session everything of it went
        (void)m_connection.plain(QStringLiteral("ROLLBACK"));
    leave();
}

Expected<void> Transaction::commit()
{
    auto done = m_connection.plain(QStringLiteral("COMMIT"));
    if (done) {
        leave();
        return done;
    }
    if (m_connection.isLost()) // the answer got lost, perhaps after the work was done
        return Trouble{QStringLiteral("Cannot tell whether this was recorded in %1").arg(m_connection.address().display()),
                       QStringLiteral("the server went away at that moment"), QStringLiteral("look when it is back, before you repeat it")};
    return done;
}

} // namespace ts
