#include "model/media/exif.h"

#include "model/media/picture_outline.h"

#include <QTimeZone>

#include <optional>

namespace ts {

namespace {

// Tag numbers of CIPA DC-008-2019 (Exif 2.32), tables 4 and 8.
constexpr quint16 orientationTag = 0x0112;
constexpr quint16 exifPointerTag = 0x8769;
constexpr quint16 originalTimeTag = 0x9003;
constexpr quint16 digitizedTimeTag = 0x9004;
constexpr quint16 originalOffsetTag = 0x9011;
constexpr quint16 digitizedOffsetTag = 0x9012;

constexpr quint16 asciiType = 2;
constexpr quint16 shortType = 3;
constexpr quint16 longType = 4;

/// Reads numbers out of bytes nobody vouches for: each step past the end gives nothing.
class Tiff {
public:
    explicit Tiff(QByteArrayView bytes) : m_bytes(bytes), m_little(bytes.startsWith("II")) {}

    [[nodiscard]] std::optional<quint32> number(qint64 at, int size) const
    {
        if (at < 0 || size > m_bytes.size() || at > m_bytes.size() - size)
            return {};
        quint32 value = 0;
        for (int i = 0; i < size; ++i) {
            const auto byte = static_cast<quint8>(m_bytes[at + (m_little ? size - 1 - i : i)]);
            value = value << 8 | byte;
        }
        return value;
    }

    /// Where the twelve bytes of a tag's entry stand in the directory at `directory`.
    [[nodiscard]] std::optional<qint64> entry(qint64 directory, quint16 tag) const
    {
        const auto count = number(directory, 2);
        for (quint32 i = 0; count && i < *count; ++i) {
            const qint64 at = directory + 2 + 12 * qint64(i);
            const auto found = number(at, 2);
            if (!found)
                return {};
            if (*found == tag)
                return at;
        }
        return {};
    }

    [[nodiscard]] std::optional<quint32> value(qint64 directory, quint16 tag) const
    {
        const auto at = entry(directory, tag);
        if (!at)
            return {};
        const auto type = number(*at + 2, 2);
        if (type == shortType)
            return number(*at + 8, 2);
        return type == longType ? number(*at + 8, 4) : std::nullopt;
    }

    [[nodiscard]] QByteArray text(qint64 directory, quint16 tag) const
    {
        const auto at = entry(directory, tag);
        if (!at || number(*at + 2, 2) != asciiType)
            return {};
        const auto length = number(*at + 4, 4);
        const auto offset = number(*at + 8, 4);
        if (!length || !offset || *length > 64)
            return {};
        const qint64 from = *length > 4 ? qint64(*offset) : *at + 8; // four bytes or fewer stand in the entry itself
        if (from > m_bytes.size() - qint64(*length))
            return {};
        const QByteArray bytes = m_bytes.sliced(from, *length).toByteArray();
        return bytes.left(bytes.indexOf('\0') < 0 ? bytes.size() : bytes.indexOf('\0')).trimmed();
    }

private:
    QByteArrayView m_bytes;
    bool m_little;
};

/// "2026:11:25 20:15:00" with "+01:00" or nothing.
QDateTime instant(const QByteArray &time, const QByteArray &offset)
{
    QDateTime local = QDateTime::fromString(QString::fromLatin1(time), QStringLiteral("yyyy:MM:dd HH:mm:ss"));
    if (!local.isValid() || local.date().year() < 1800)
        return {};
    // The offset's hours and minutes are read by hand so that a strange one counts as none.
    if (offset.size() == 6 && (offset[0] == '+' || offset[0] == '-') && offset[3] == ':') {
        bool hoursOk = false;
        bool minutesOk = false;
        const int hours = offset.mid(1, 2).toInt(&hoursOk);
        const int minutes = offset.mid(4, 2).toInt(&minutesOk);
        if (hoursOk && minutesOk && hours >= 0 && hours <= 14 && minutes >= 0 && minutes < 60)
            local.setOffsetFromUtc((offset[0] == '-' ? -60 : 60) * (60 * hours + minutes));
    }
    return local.toUTC();
}

/// The TIFF structure inside of a picture file; empty where there is none.
QByteArrayView tiffIn(const QByteArray &file)
{
    const QByteArrayView payload = pictureOutline(file).metadata;
    // WebP files carry it with and without the marker.
    return payload.startsWith(QByteArrayView("Exif\0\0", 6)) ? payload.sliced(6) : payload;
}

} // namespace

Exif readTiff(QByteArrayView tiff)
{
    Exif found;
    if (!tiff.startsWith(QByteArrayView("II*\0", 4)) && !tiff.startsWith(QByteArrayView("MM\0*", 4)))
        return found;
    const Tiff reader(tiff);
    const auto first = reader.number(4, 4);
    if (!first)
        return found;
    const auto orientation = reader.value(*first, orientationTag);
    if (orientation && *orientation >= 1 && *orientation <= 8)
        found.orientation = static_cast<int>(*orientation);
    if (const auto exif = reader.value(*first, exifPointerTag)) {
        found.takenAt = instant(reader.text(*exif, originalTimeTag), reader.text(*exif, originalOffsetTag));
        if (!found.takenAt.isValid())
            found.takenAt = instant(reader.text(*exif, digitizedTimeTag), reader.text(*exif, digitizedOffsetTag));
    }
    return found;
}

Exif readExif(const QByteArray &file)
{
    return readTiff(tiffIn(file));
}

} // namespace ts
