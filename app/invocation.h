#pragma once

#include "model/desk/desk.h"
#include "model/values/clock.h"
#include "model/values/plain_text.h"

#include <QCommandLineParser>
#include <QJsonObject>
#include <QTextStream>

#include <memory>

namespace ts {

// Exit status of a command.
enum class Exit { Done = 0, Refused = 1, WrongUsage = 2 };

/// One run of a command: its arguments, where its words go, the time and the ids.
class Invocation {
public:
    /// `command` and `usage` are what is printed when it is used wrongly: "paper", "BOOK TAG KIND -o FILE".
    explicit Invocation(QStringList arguments, QString command = {}, QString usage = {});

    /// After the command's own name.
    [[nodiscard]] const QStringList &arguments() const { return m_arguments; }
    [[nodiscard]] const QString &command() const { return m_command; }
    /// How to use the command, to end a sentence with; a long usage only says where it is found.
    [[nodiscard]] QString usageHint() const;
    /// What the command answers. It leaves for standard output with finish(), as a terminal may show it.
    [[nodiscard]] QTextStream &out() { return m_out; }
    /// Lets the answer out and gives the exit status: Refused where standard output did not take all of it.
    [[nodiscard]] Exit finish(Exit exit);
    [[nodiscard]] IdMaker &ids() { return m_ids; }
    [[nodiscard]] const Clock &clock() const { return m_clock; }
    /// Who the journal names: the user that the system says.
    [[nodiscard]] static QString who();

    /// One line on standard error; answers Refused.
    Exit refuse(const Trouble &trouble);
    /// One line on standard error; answers WrongUsage.
    Exit misuse(const QString &sentence);
    /// A line on standard error beside the result.
    void remark(const QString &sentence);
    /// One JSON document on standard output; a terminal has nothing to obey in it.
    void print(const QJsonObject &document);
    /// Shows how far long work is where standard error is a terminal; else answers an empty function.
    [[nodiscard]] Progress progress(const QString &what);

    [[nodiscard]] Expected<std::unique_ptr<Desk>> open(const QString &book);
    [[nodiscard]] Expected<std::unique_ptr<Desk>> create(const QString &book);

private:
    QStringList m_arguments;
    QString m_command;
    QString m_usage;
    QString m_answer;
    QTextStream m_out{&m_answer};
    QTextStream m_error;
    SystemClock m_clock;
    IdMaker m_ids;
};

/// A command's options and what was given, read without the parser ending the program itself.
class Options {
public:
    explicit Options(const Invocation &run);
    void add(const QString &name, const QString &value = {}); ///< with a value where `value` names it; "o" is short
    /// Reads the arguments; refuses unknown options, and fewer or more places than allowed (most below 0: any number).
    [[nodiscard]] Expected<void> read(const QStringList &arguments, int least, int most);

    [[nodiscard]] QString at(int place) const { return m_parser.positionalArguments().value(place); }
    [[nodiscard]] QStringList places() const { return m_parser.positionalArguments(); }
    [[nodiscard]] bool has(const QString &name) const { return m_parser.isSet(name); }
    [[nodiscard]] QString value(const QString &name) const { return m_parser.value(name); }
    [[nodiscard]] QStringList values(const QString &name) const { return m_parser.values(name); }

private:
    QString m_command;
    QString m_hint;
    QCommandLineParser m_parser;
};

/// Refuses a file to write that is the workbook itself, by whatever name or link, or one of the files that belong to it.
[[nodiscard]] Expected<void> notTheBook(const QString &file, const QString &book);

/// The unit of a tag as typed ("42", "0042"); refused by what was typed.
[[nodiscard]] Expected<Id<Unit>> unitOf(Desk &desk, const QString &tag);

} // namespace ts
