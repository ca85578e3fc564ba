#pragma once

#include "model/desk/desk.h"

#include <QAbstractListModel>

namespace ts {

/// The units of the rack, what is worked on first on top; loads by page.
class RackModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { UnitId = Qt::UserRole + 1, Tag };

    explicit RackModel(Desk &desk, QObject *parent = nullptr);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex &parent) const override;
    void fetchMore(const QModelIndex &parent) override;
    /// Reads the rack again.
    void reload();
    [[nodiscard]] int rowOf(const QUuid &unit) const; ///< -1 where it is not loaded

Q_SIGNALS:
    void troubled(const QString &sentence);

private:
    Desk &m_desk;
    QList<RackRow> m_rows;
    bool m_complete = false;
};

} // namespace ts
