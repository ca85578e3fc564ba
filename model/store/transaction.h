#pragma once

#include "model/store/connection.h"

namespace ts {

/// Everything between begin and commit, or nothing: rolls back when it goes without commit.
class Transaction {
public:
    /// Writing: one writer waits for the other. Reading: all that is read is of one moment.
    enum class Use { Writing, Reading };
    [[nodiscard]] static Expected<std::unique_ptr<Transaction>> begin(Connection &connection, Use use = Use::Writing);
    ~Transaction();
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    /// Done only where this answers ok.
    Expected<void> commit();

private:
    explicit Transaction(Connection &connection);
    void leave();
    Connection &m_connection;
    bool m_open = true;
};

} // namespace ts
