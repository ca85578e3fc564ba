#pragma once

#include <QString>
#include <QStringList>

#include <functional>

class QPrinter;
class QWidget;

/// Every question that needs a window of its own goes through here, so that a test can answer it.
namespace ts::ask {

/// Answers in place of a person; given a title, gives the file (or empty: cancelled). Null: the person is asked.
using Answer = std::function<QString(const QString &title)>;

/// A file that is there; empty where the person thought better of it.
[[nodiscard]] QString existingFile(QWidget *parent, const QString &title, const QString &folder, const QString &filter);
[[nodiscard]] QStringList existingFiles(QWidget *parent, const QString &title, const QString &folder, const QString &filter);
/// A file to be written.
[[nodiscard]] QString newFile(QWidget *parent, const QString &title, const QString &file, const QString &filter);
[[nodiscard]] QString folder(QWidget *parent, const QString &title, const QString &folder);

/// Opens a file with what this computer opens its kind with; false where nothing does. Asked by the file's name.
[[nodiscard]] bool show(QWidget *parent, const QString &file);
/// Sets a printer up; false where the person thought better of it. An answer names the PDF file that is printed into.
[[nodiscard]] bool printer(QWidget *parent, const QString &title, QPrinter &printer);

/// For as long as it lives, questions below `parent` are answered by `answer`.
void answerFor(QWidget *parent, Answer answer);

} // namespace ts::ask
