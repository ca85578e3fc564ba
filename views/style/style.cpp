#include "views/style/style.h"

#include <QApplication>
#include <QFile>
#include <QFontDatabase>
#include <QFontMetrics>
#include <QPalette>
#include <QRegularExpression>

namespace ts {

namespace {

QPalette paletteOf(const Ink &c)
{
    QPalette palette;
    const auto all = [&palette](QPalette::ColorRole role, const QColor &colour) { palette.setColor(role, colour); };
    all(QPalette::Window, c.paper);
    all(QPalette::WindowText, c.ink);
    all(QPalette::Base, c.sheet);
    all(QPalette::AlternateBase, c.raised);
    all(QPalette::Text, c.ink);
    all(QPalette::Button, c.raised);
    all(QPalette::ButtonText, c.ink);
    all(QPalette::BrightText, c.outside);
    all(QPalette::ToolTipBase, c.sheet);
    all(QPalette::ToolTipText, c.ink);
    all(QPalette::PlaceholderText, c.quiet);
    all(QPalette::Highlight, c.copper);
    all(QPalette::HighlightedText, c.onCopper);
    all(QPalette::Link, c.copper);
    all(QPalette::LinkVisited, c.copper);
    all(QPalette::Light, c.sheet);
    all(QPalette::Midlight, c.raised);
    all(QPalette::Mid, c.line);
    all(QPalette::Dark, c.strong);
    all(QPalette::Shadow, c.strong);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, c.faint);
    return palette;
}

} // namespace

Style::Style(QApplication &application) : m_application(application)
{
    m_system = QApplication::font();
    if (QFontDatabase::families().contains(QStringLiteral("Inter")))
        m_system.setFamily(QStringLiteral("Inter"));
    m_systemIsDark = QApplication::palette().color(QPalette::Window).lightness() < 128;
    QApplication::setStyle(QStringLiteral("Fusion"));
    apply();
}

void Style::setScheme(Scheme scheme)
{
    if (scheme == m_scheme)
        return;
    m_scheme = scheme;
    apply();
}

void Style::setTextPercent(int percent)
{
    percent = qBound(80, percent, 200);
    if (percent == m_textPercent)
        return;
    m_textPercent = percent;
    apply();
}

void Style::setLargeType(bool large)
{
    if (large == m_largeType)
        return;
    m_largeType = large;
    apply();
}

QFont Style::text(double relative, QFont::Weight weight) const
{
    QFont font = m_system;
    font.setPointSizeF(m_system.pointSizeF() * m_textPercent / 100.0 * relative);
    font.setWeight(weight);
    return font;
}

QFont Style::figures(double relative) const
{
    QFont font = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    font.setPointSizeF(m_system.pointSizeF() * m_textPercent / 100.0 * relative);
    return font;
}

int Style::space(double steps) const
{
    return qRound(QFontMetrics(text()).lineSpacing() / 4.0 * steps);
}

QIcon Style::icon(const QString &name) const
{
    return QIcon::fromTheme(name);
}

void Style::apply()
{
    m_dark = m_scheme == Scheme::Dark || (m_scheme == Scheme::FollowSystem && m_systemIsDark);
    m_ink = m_dark ? darkInk() : lightInk();
    // One theme for both schemes' shades, whatever the desktop has; it is a package of the program's own set-up.
    QIcon::setThemeName(m_dark ? QStringLiteral("breeze-dark") : QStringLiteral("breeze"));
    QApplication::setPalette(paletteOf(m_ink));
    QApplication::setFont(text());
    m_application.setStyleSheet(sheet());
    Q_EMIT changed();
}

// The sheet names colours as @role@, sizes of type as @font:1.2@ relative to the running text (@bench:1.2@ follows large type),
// and the scheme as @shade@.
QString Style::sheet() const
{
    QFile file(QStringLiteral(":/style/turnscrew.qss"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const QString source = QString::fromUtf8(file.readAll());
    static const QRegularExpression hole(QStringLiteral("@([a-z_]+)(?::([0-9.]+))?@"));
    QString made;
    qsizetype at = 0;
    for (auto it = hole.globalMatch(source); it.hasNext();) {
        const auto match = it.next();
        made += QStringView(source).mid(at, match.capturedStart() - at);
        const double relative = match.captured(2).toDouble();
        if (match.captured(1) == QLatin1String("font"))
            made += QString::number(text(relative).pointSizeF(), 'f', 2) + QStringLiteral("pt");
        else if (match.captured(1) == QLatin1String("bench"))
            made += QString::number(text(relative * benchScale()).pointSizeF(), 'f', 2) + QStringLiteral("pt");
        else if (match.captured(1) == QLatin1String("figures"))
            made += QLatin1Char('"') + figures().family() + QLatin1Char('"');
        else if (match.captured(1) == QLatin1String("shade"))
            made += m_dark ? QStringLiteral("dark") : QStringLiteral("light");
        else
            made += inkNamed(m_ink, match.captured(1)).name();
        at = match.capturedEnd();
    }
    return made + source.mid(at);
}

} // namespace ts
