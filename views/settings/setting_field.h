#pragma once

#include "views/workplace.h"

#include <QWidget>

class QLabel;

namespace ts {

/// One setting of the workbook, edited in place: committed when it is left, on Enter, or when chosen; what is wrong with it stands
/// beneath it, and the old value holds.
class SettingField : public QWidget {
    Q_OBJECT
public:
    enum class Form { Line, Lines, Choice };

    SettingField(Workplace &workplace, const QString &name, const QString &label, Form form = Form::Line, QWidget *parent = nullptr);
    void setChoices(const QList<std::pair<QString, QString>> &valueAndText); ///< for Form::Choice
    void setHint(const QString &hint);                                       ///< what holds where nothing is set, or an example
    void refresh();
    void commit();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] QString typed() const;

    Workplace &m_work;
    QString m_name;
    QWidget *m_editor;
    QLabel *m_wrong;
};

} // namespace ts
