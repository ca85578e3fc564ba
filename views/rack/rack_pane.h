#pragma once

#include "views/workplace.h"

#include <QFrame>

#include <functional>

class QLabel;
class QLineEdit;
class QTimer;
class QToolButton;

namespace ts {

class RackModel;
class RackView;

/// The rack of tags at the left: grouped by stage, narrowed as one types.
class RackPane : public QFrame {
    Q_OBJECT
public:
    explicit RackPane(Workplace &workplace, QWidget *parent = nullptr);

    void step(int by);      ///< takes the next or the previous tag in hand
    void focusFilter();
    void takeFirst();       ///< takes the top tag in hand, where there is one and none is in hand
    [[nodiscard]] RackView *view() const { return m_view; }
    [[nodiscard]] RackModel *model() const { return m_model; }

    /// What is folded away and in what order the tags hang, to be remembered.
    [[nodiscard]] QByteArray state() const;
    void restore(const QByteArray &state);

Q_SIGNALS:
    void openWanted(); ///< the unit in hand is to be worked on: the keyboard goes to its page

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void makeSorts();
    void refresh();
    void narrow();
    void follow(bool bringIntoSight); ///< marks the tag of the unit in hand
    void choose(const QModelIndex &index);
    void enter(const QModelIndex &index);
    void keepSight(const std::function<void()> &change);
    void sayCount();

    Workplace &m_work;
    RackModel *m_model;
    QLineEdit *m_filter;
    QTimer *m_typed;
    QToolButton *m_sort;
    QLabel *m_none;
    RackView *m_view;
};

} // namespace ts
