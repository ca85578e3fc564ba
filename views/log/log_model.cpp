#include "views/log/log_model.h"

#include "views/widgets/measured_text.h"

#include <algorithm>

namespace ts {

LogModel::LogModel(QObject *parent) : QAbstractListModel(parent) {}

void LogModel::setRows(const QList<LogEntry> &rows)
{
    // A line recorded, edited or taken out changes one stretch: what stands before and behind it stays.
    const qsizetype most = std::min(m_rows.size(), rows.size());
    qsizetype before = 0;
    while (before < most && m_rows.at(before).key == rows.at(before).key)
        ++before;
    qsizetype behind = 0;
    while (behind < most - before && m_rows.at(m_rows.size() - 1 - behind).key == rows.at(rows.size() - 1 - behind).key)
        ++behind;
    const auto first = static_cast<int>(before);
    if (const qsizetype gone = m_rows.size() - before - behind; gone > 0) {
        beginRemoveRows({}, first, static_cast<int>(before + gone - 1));
        m_rows.remove(before, gone);
        endRemoveRows();
    }
    if (const qsizetype come = rows.size() - before - behind; come > 0) {
        beginInsertRows({}, first, static_cast<int>(before + come - 1));
        m_rows = m_rows.mid(0, before) + rows.mid(before, come) + m_rows.mid(before);
        endInsertRows();
    }
    for (qsizetype i = 0; i < rows.size(); ++i)
        if (m_rows.at(i) != rows.at(i)) {
            m_rows[i] = rows.at(i);
            Q_EMIT dataChanged(index(static_cast<int>(i)), index(static_cast<int>(i)));
        }
}

int LogModel::rowOfKey(const QString &key) const
{
    for (qsizetype i = 0; i < m_rows.size(); ++i)
        if (m_rows.at(i).key == key)
            return static_cast<int>(i);
    return -1;
}

int LogModel::rowOfRecord(const QUuid &record) const
{
    for (qsizetype i = 0; i < m_rows.size(); ++i)
        for (const Event &event : m_rows.at(i).events)
            if (event.record == record)
                return static_cast<int>(i);
    return -1;
}

bool LogModel::endsDay(int row) const
{
    return row + 1 >= m_rows.size() || m_rows.at(row + 1).isDay;
}

int LogModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant LogModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= m_rows.size())
        return {};
    const LogEntry &entry = m_rows.at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return entry.headline;
    case Qt::AccessibleTextRole: {
        QStringList parts{entry.time, entry.headline};
        if (entry.verdict && *entry.verdict != Verdict::NoLimit)
            parts << shown::verdict(*entry.verdict);
        parts << entry.figures << entry.detail << entry.right;
        parts.removeAll(QString());
        return parts.join(QStringLiteral(", "));
    }
    default:
        return {};
    }
}

Qt::ItemFlags LogModel::flags(const QModelIndex &index) const
{
    if (!index.isValid() || m_rows.at(index.row()).isDay)
        return Qt::NoItemFlags; // passed over by the keyboard
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

} // namespace ts
