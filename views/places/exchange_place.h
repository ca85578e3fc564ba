#pragma once

#include "model/exchange/import_file.h"
#include "views/places/place.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace ts {

/// Lists in and out: what a file holds, a look before it is taken in, and what came of it.
class ExchangePlace : public Place {
    Q_OBJECT
public:
    explicit ExchangePlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void setFile(const QString &file); ///< a file that was dropped on the window

protected:
    void refresh() override;

private:
    void chooseFile();
    void takeIn(bool dryRun);
    void writeOut();
    void show(const QString &sentence, const QStringList &lines);

    QComboBox *m_inKind;
    QLineEdit *m_file;
    QPushButton *m_look;
    QPushButton *m_take;
    QComboBox *m_outKind;
    QLabel *m_sentence;
    QPlainTextEdit *m_lines;
};

} // namespace ts
