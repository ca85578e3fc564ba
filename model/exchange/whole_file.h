#pragma once

#include <QIODevice>
#include <QSaveFile>

namespace ts {

/// A file that appears whole or not at all: written beside its place and renamed on commit(). QSaveFile alone is not enough for
/// that: in Qt 6.4 a write that stops half way (a full disk) is no error to it, and the stump takes the old file's place.
class WholeFile : public QIODevice {
public:
    explicit WholeFile(const QString &file);

    /// Opens the copy beside; false with errorString() where there can be none.
    [[nodiscard]] bool start();
    /// Puts the copy into its place; false where anything was not written, and then the old file is still there.
    [[nodiscard]] bool commit();

protected:
    qint64 readData(char *, qint64) override { return -1; }
    qint64 writeData(const char *data, qint64 size) override;

private:
    void flush();

    QSaveFile m_file;
    QByteArray m_buffer;
    bool m_failed = false;
};

} // namespace ts
