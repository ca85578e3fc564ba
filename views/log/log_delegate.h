#pragma once

#include "views/log/log_entry.h"

#include <QAbstractItemDelegate>
#include <QCache>
#include <QHash>
#include <QTextLayout>

namespace ts {

class LogModel;
class Style;
class Thumbnails;

/// Paints the rows of the log: time, round mark on the line of the day, words, hours and money. Texts are broken into lines once a
/// width and kept; heights are known for every row, layouts for those that were seen.
class LogDelegate : public QAbstractItemDelegate {
    Q_OBJECT
public:
    LogDelegate(const LogModel &model, const Style &style, Thumbnails &thumbnails, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    void updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option, const QModelIndex &index) const override;

    /// The width of the rows; another one forgets every height.
    void setWidth(int width);
    void forget(const QString &key); ///< its words are others now
    void forgetAll();                ///< type or colours are others now
    /// A row that is being edited is as high as its editor.
    void setEditor(const QString &key, const QWidget *editor);

    /// The photo of a row that a point lies on, as its place among them; -1 where it lies on none.
    [[nodiscard]] int photoAt(const LogEntry &entry, const QRect &row, const QPoint &point) const;
    [[nodiscard]] int textLeft() const; ///< from the left edge of a row

private:
    struct Laid {
        QTextLayout headline;
        QTextLayout detail;
        qreal headlineHeight = 0;
        qreal detailHeight = 0;
        QPointF pill; ///< where the verdict begins
    };
    [[nodiscard]] const Laid &laid(const LogEntry &entry) const;
    [[nodiscard]] int heightOf(const LogEntry &entry) const;
    [[nodiscard]] int textWidth() const;
    [[nodiscard]] int timeWidth() const;
    [[nodiscard]] int lineX() const;
    [[nodiscard]] int rightWidth() const;
    [[nodiscard]] QFont headlineFont(const LogEntry &entry) const;
    [[nodiscard]] QRect photoRect(int index, int top, int left) const;
    [[nodiscard]] int photosPerLine() const;
    void paintDay(QPainter &painter, const QRect &row, const LogEntry &entry) const;
    void paintMark(QPainter &painter, const QPoint &centre, const LogEntry &entry) const;
    void paintPhotos(QPainter &painter, const LogEntry &entry, int top, int left) const;

    const LogModel &m_model;
    const Style &m_style;
    Thumbnails &m_thumbnails;
    int m_width = 0;
    QString m_editedKey;
    const QWidget *m_editor = nullptr;
    mutable QCache<QString, Laid> m_laid;
    mutable QHash<QString, int> m_heights;
};

} // namespace ts
