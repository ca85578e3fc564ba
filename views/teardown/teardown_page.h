#pragma once

#include "views/unit/page.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace ts {

class AskLine;
class Background;
class Card;
class GridView;
class PinnedPhoto;
enum class TeardownWay;
struct GridRow;

/// What came off, in order, and backwards to put it back; where each screw lies, on a photo with numbered pins.
class TeardownPage : public Page {
    Q_OBJECT
public:
    explicit TeardownPage(Workplace &workplace, QWidget *parent = nullptr);
    ~TeardownPage() override;

    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

    [[nodiscard]] GridView *table() const { return m_table; }
    [[nodiscard]] GridView *details() const { return m_details; }
    [[nodiscard]] PinnedPhoto *photo() const { return m_photo; }
    [[nodiscard]] AskLine *asking() const { return m_ask; }
    [[nodiscard]] QString looseText() const;
    [[nodiscard]] QString cautionText() const;
    void setWay(TeardownWay way);

protected:
    void refresh() override;

private:
    [[nodiscard]] QWidget *makeLeft();
    [[nodiscard]] QLayout *makeRight();
    void makeActions();
    void showItem();
    void refreshPhotos();
    void refreshPins();
    void showPhoto();
    [[nodiscard]] const TeardownItem *current() const;
    [[nodiscard]] const Photo *photoAtHand() const;
    [[nodiscard]] QUuid photoOf(const TeardownItem &item) const;

    // teardown_edit.cpp
    std::optional<QUuid> commit(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> commitDetail(const GridRow &row, const QString &typed);
    std::optional<QUuid> add(const QString &typed);
    void remove(const QUuid &key);
    void move(const QUuid &key, int by);
    void askLeftOut(const QUuid &key);
    void askCopy();
    void putPin(double x, double y);
    void movePin(const QUuid &pin, double x, double y);
    void removePin(const QUuid &pin);
    void print();

    TeardownWay m_way{};
    AskLine *m_ask;
    GridView *m_table;
    GridView *m_details;
    QPushButton *m_apart;
    QPushButton *m_back;
    Card *m_loose;
    QLabel *m_looseText;
    QLabel *m_backText;
    Card *m_caution;
    QLabel *m_cautionText;
    PinnedPhoto *m_photo;
    QListWidget *m_photos;
    QLabel *m_noPhoto;
    Background *m_background;
    QString m_shown; ///< the picture that is shown, by its SHA-256
    Id<Unit> m_of;
};

} // namespace ts
