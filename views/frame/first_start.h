#pragma once

#include <QWidget>

class QVBoxLayout;

namespace ts {

class NoticeBar;

/// What stands in the window while no workbook is open: make one, open one, or look at the demo; and those opened before.
class FirstStart : public QWidget {
    Q_OBJECT
public:
    explicit FirstStart(QWidget *parent = nullptr);
    void setRecent(const QStringList &books);
    [[nodiscard]] NoticeBar *notice() const { return m_notice; }

Q_SIGNALS:
    void newWanted();
    void openWanted();
    void demoWanted();
    void bookWanted(const QString &book);

private:
    NoticeBar *m_notice;
    QVBoxLayout *m_recent;
};

} // namespace ts
