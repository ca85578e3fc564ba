#include "model/paper/template_filler.h"

#include <QtDebug>

namespace ts {

namespace {

using Scopes = QList<const Filling *>; // innermost last

const QString *findText(const Scopes &scopes, const QString &name)
{
    for (auto scope = scopes.crbegin(); scope != scopes.crend(); ++scope)
        if (const auto found = (*scope)->texts.constFind(name); found != (*scope)->texts.constEnd())
            return &*found;
    return nullptr;
}

const QList<Filling> *findList(const Scopes &scopes, const QString &name)
{
    for (auto scope = scopes.crbegin(); scope != scopes.crend(); ++scope)
        if (const auto found = (*scope)->lists.constFind(name); found != (*scope)->lists.constEnd())
            return &*found;
    return nullptr;
}

void warnUnknown(const QString &name)
{
    qWarning().noquote() << "paper template: nothing is called" << name;
}

bool isThere(const Scopes &scopes, const QString &name)
{
    const QString *text = findText(scopes, name);
    const QList<Filling> *list = findList(scopes, name);
    if (!text && !list)
        warnUnknown(name);
    return (text && !text->isEmpty()) || (list && !list->isEmpty());
}

const auto markStart = QStringLiteral("<!-- ");
const auto markEnd = QStringLiteral(" -->");

struct Mark {
    qsizetype from = -1;
    qsizetype to = -1;
    QString word; // each, if, unless, end
    QString name;
};

/// The next mark at or after a place; other comments are passed over.
Mark nextMark(QStringView pattern, qsizetype at)
{
    for (qsizetype from = pattern.indexOf(markStart, at); from >= 0; from = pattern.indexOf(markStart, from + 1)) {
        const qsizetype close = pattern.indexOf(markEnd, from);
        if (close < 0)
            break;
        const QString inside = pattern.mid(from + markStart.size(), close - from - markStart.size()).toString();
        const QString word = inside.section(QLatin1Char(' '), 0, 0);
        if (word == u"each" || word == u"if" || word == u"unless" || word == u"end")
            return {from, close + markEnd.size(), word, inside.section(QLatin1Char(' '), 1)};
    }
    return {};
}

/// The end mark that closes the mark before `at`.
Mark closing(QStringView pattern, qsizetype at)
{
    int depth = 1;
    for (Mark mark = nextMark(pattern, at); mark.from >= 0; mark = nextMark(pattern, mark.to)) {
        depth += mark.word == u"end" ? -1 : 1;
        if (depth == 0)
            return mark;
    }
    return {pattern.size(), pattern.size(), {}, {}};
}

void fillTexts(QStringView pattern, const Scopes &scopes, QString &out)
{
    qsizetype at = 0;
    for (qsizetype open = pattern.indexOf(u"[["); open >= 0; open = pattern.indexOf(u"[[", at)) {
        const qsizetype close = pattern.indexOf(u"]]", open);
        if (close < 0)
            break;
        out += pattern.mid(at, open - at);
        QString name = pattern.mid(open + 2, close - open - 2).toString();
        const bool lines = name.endsWith(u"|lines");
        if (lines)
            name.chop(6);
        const QString *text = findText(scopes, name);
        if (text)
            out += lines ? escaped(*text).replace(QLatin1Char('\n'), QStringLiteral("<br>")) : escaped(*text);
        else
            warnUnknown(name);
        at = close + 2;
    }
    out += pattern.mid(at);
}

void fillInto(QStringView pattern, const Scopes &scopes, QString &out)
{
    qsizetype at = 0;
    for (Mark mark = nextMark(pattern, at); mark.from >= 0 && mark.word != u"end"; mark = nextMark(pattern, at)) {
        fillTexts(pattern.mid(at, mark.from - at), scopes, out);
        const Mark close = closing(pattern, mark.to);
        const QStringView inside = pattern.mid(mark.to, close.from - mark.to);
        if (mark.word == u"each") {
            const QList<Filling> *list = findList(scopes, mark.name);
            if (!list)
                warnUnknown(mark.name);
            else
                for (const Filling &member : *list)
                    fillInto(inside, Scopes(scopes) << &member, out);
        } else if (isThere(scopes, mark.name) == (mark.word == u"if")) {
            fillInto(inside, scopes, out);
        }
        at = close.to;
    }
    fillTexts(pattern.mid(at), scopes, out);
}

} // namespace

QString escaped(const QString &text)
{
    QString out;
    out.reserve(text.size() + text.size() / 8);
    for (const QChar c : text) {
        switch (c.unicode()) {
        case u'&':
            out += QStringLiteral("&amp;");
            break;
        case u'<':
            out += QStringLiteral("&lt;");
            break;
        case u'>':
            out += QStringLiteral("&gt;");
            break;
        case u'"':
            out += QStringLiteral("&quot;");
            break;
        case u'\'':
            out += QStringLiteral("&#39;");
            break;
        default:
            out += c;
        }
    }
    return out;
}

QString filled(const QString &pattern, const Filling &filling)
{
    QString out;
    out.reserve(pattern.size() * 2);
    fillInto(pattern, {&filling}, out);
    return out;
}

} // namespace ts
