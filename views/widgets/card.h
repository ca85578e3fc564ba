#pragma once

#include <QFrame>

class QHBoxLayout;
class QLabel;
class QVBoxLayout;

namespace ts {

/// A raised sheet with a heading: what stands together on a page.
class Card : public QFrame {
    Q_OBJECT
public:
    explicit Card(const QString &heading = {}, QWidget *parent = nullptr);
    void setHeading(const QString &heading);
    void setRemark(const QString &remark); ///< quiet, at the right of the heading
    [[nodiscard]] QHBoxLayout *headRow() const { return m_head; }
    [[nodiscard]] QVBoxLayout *body() const { return m_body; }

private:
    QLabel *m_heading;
    QLabel *m_remark;
    QHBoxLayout *m_head;
    QVBoxLayout *m_body;
};

/// A label whose colour and size come from the style sheet by its role: "heading", "group", "quiet", "faint", "warning", "strong".
[[nodiscard]] QLabel *styledLabel(const char *role, const QString &text = {}, QWidget *parent = nullptr);
/// The same for running text, on as many lines as it asks for.
[[nodiscard]] QLabel *wrappedLabel(const char *role, const QString &text = {}, QWidget *parent = nullptr);
/// Gives a widget another role, property or state in the style sheet.
void restyle(QWidget *widget, const char *property, const QVariant &value);

} // namespace ts
