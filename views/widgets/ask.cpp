#include "views/widgets/ask.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QPrintDialog>
#include <QPrinter>
#include <QUrl>
#include <QVariant>
#include <QWidget>

#include <memory>

namespace ts::ask {

namespace {

constexpr const char *property = "answers_questions";
using Kept = std::shared_ptr<Answer>;

// The nearest widget upwards that was told to answer.
std::optional<QString> answered(QWidget *parent, const QString &title)
{
    for (QWidget *widget = parent; widget; widget = widget->parentWidget())
        if (const auto kept = widget->property(property).value<Kept>())
            return (*kept)(title);
    return {};
}

} // namespace

QString existingFile(QWidget *parent, const QString &title, const QString &folder, const QString &filter)
{
    if (const auto answer = answered(parent, title))
        return *answer;
    return QFileDialog::getOpenFileName(parent, title, folder, filter);
}

QStringList existingFiles(QWidget *parent, const QString &title, const QString &folder, const QString &filter)
{
    if (const auto answer = answered(parent, title))
        return answer->isEmpty() ? QStringList() : answer->split(QLatin1Char('\n'));
    return QFileDialog::getOpenFileNames(parent, title, folder, filter);
}

QString newFile(QWidget *parent, const QString &title, const QString &file, const QString &filter)
{
    if (const auto answer = answered(parent, title))
        return *answer;
    return QFileDialog::getSaveFileName(parent, title, file, filter);
}

QString folder(QWidget *parent, const QString &title, const QString &folder)
{
    if (const auto answer = answered(parent, title))
        return *answer;
    return QFileDialog::getExistingDirectory(parent, title, folder);
}

bool show(QWidget *parent, const QString &file)
{
    if (const auto answer = answered(parent, file))
        return !answer->isEmpty();
    return QDesktopServices::openUrl(QUrl::fromLocalFile(file));
}

bool printer(QWidget *parent, const QString &title, QPrinter &printer)
{
    if (const auto answer = answered(parent, title)) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(*answer);
        return !answer->isEmpty();
    }
    QPrintDialog dialog(&printer, parent);
    dialog.setWindowTitle(title);
    return dialog.exec() == QDialog::Accepted;
}

void answerFor(QWidget *parent, Answer answer)
{
    parent->setProperty(property, QVariant::fromValue(std::make_shared<Answer>(std::move(answer))));
}

} // namespace ts::ask
