#pragma once

#include "views/log/log_entry.h"

#include <QAbstractListModel>

namespace ts {

/// The rows of the log. What stays the same keeps its row, so that selection, editor and place outlive a change.
class LogModel : public QAbstractListModel {
    Q_OBJECT
public:
    explicit LogModel(QObject *parent = nullptr);

    void setRows(const QList<LogEntry> &rows);
    [[nodiscard]] const LogEntry &entry(int row) const { return m_rows.at(row); }
    [[nodiscard]] int rowOfKey(const QString &key) const;       ///< -1 where there is none
    [[nodiscard]] int rowOfRecord(const QUuid &record) const;   ///< its first entry; -1 where there is none
    /// Whether the entry is the last of its day: the line of marks ends there.
    [[nodiscard]] bool endsDay(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    QList<LogEntry> m_rows;
};

} // namespace ts
