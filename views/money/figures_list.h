#pragma once

#include <QTreeWidget>

namespace ts {

/// A short table of figures inside a card: a word, then figures at the right. It is as high as its rows; the page scrolls, not it.
class FiguresList : public QTreeWidget {
    Q_OBJECT
public:
    /// `name` is for who cannot see it. Only where rows can be chosen does the keyboard reach it.
    FiguresList(const QString &name, const QStringList &columns, bool choosing, QWidget *parent = nullptr);

    void begin(); ///< empties it; the row that is current stays so by its key
    /// A row with a key that is the same for the same row next time.
    QTreeWidgetItem *addRow(const QString &key, const QStringList &cells);
    void end();
    [[nodiscard]] QString currentKey() const;
    void makeCurrent(const QString &key);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent *event) override;

private:
    QString m_kept;
};

} // namespace ts
