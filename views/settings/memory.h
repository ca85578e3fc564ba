#pragma once

#include "views/style/ink.h"

#include <QByteArray>
#include <QSettings>
#include <QStringList>

namespace ts {

/// What the window remembers on this computer between two starts. What belongs to the work is a setting of the workbook instead.
class Memory {
public:
    /// In the user's own settings; or in `file`, for tests and for a stick that is carried about.
    explicit Memory(const QString &file = {});

    [[nodiscard]] QStringList recentBooks() const; ///< newest first, at most eight
    void addRecentBook(const QString &book);
    void forgetBook(const QString &book);

    [[nodiscard]] Scheme scheme() const;
    void setScheme(Scheme scheme);
    [[nodiscard]] int textPercent() const;
    void setTextPercent(int percent);
    [[nodiscard]] bool largeType() const;
    void setLargeType(bool large);
    [[nodiscard]] QString language() const; ///< "de"; empty: the system's
    void setLanguage(const QString &language);
    [[nodiscard]] QString backupFolder() const; ///< empty: beside the workbook
    void setBackupFolder(const QString &folder);
    [[nodiscard]] QString watchedFolder() const; ///< where a phone puts its photos; empty: none
    void setWatchedFolder(const QString &folder);

    // Sizes and what was folded away, by a name of the view's own.
    [[nodiscard]] QByteArray state(const QString &name) const;
    void setState(const QString &name, const QByteArray &state);

private:
    [[nodiscard]] QString text(const char *key) const;
    QSettings m_settings;
};

} // namespace ts
