#pragma once

#include <QWidget>

class QBoxLayout;
class QVBoxLayout;

namespace ts {

/// Two columns side by side, or one below the other where there is not the width for both.
class TwoColumns : public QWidget {
    Q_OBJECT
public:
    /// Below `narrow` pixels, the text at its usual size, the second goes below the first.
    TwoColumns(int narrow, int leftShare, int rightShare, QWidget *parent = nullptr);
    [[nodiscard]] QVBoxLayout *left() const { return m_left; }
    [[nodiscard]] QVBoxLayout *right() const { return m_right; }
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    int m_narrow;
    QBoxLayout *m_both;
    QVBoxLayout *m_left;
    QVBoxLayout *m_right;
};

} // namespace ts
