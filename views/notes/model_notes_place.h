#pragma once

#include "model/faults/solved_cause.h"
#include "views/places/place.h"

#include <QTemporaryDir>

class QListWidget;
class QPushButton;
class QStackedWidget;

namespace ts {

class NotesTable;
class NotesWords;
class PageTabs;

/// What is known of each model across units: chosen at the left; at the right its words and its lists, edited in place.
class ModelNotesPlace : public Place {
    Q_OBJECT
public:
    explicit ModelNotesPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

protected:
    void refresh() override;

private:
    [[nodiscard]] QWidget *makeRight();
    NotesTable *addTable(QWidget *page, const QString &name, std::unique_ptr<class NotesList> list);
    [[nodiscard]] QWidget *addPage(const QString &title, const QString &says);
    [[nodiscard]] QLayout *makeButtons();
    void choose(const Id<ModelNotes> &notes);
    void showChosen();
    void showTab(int index);
    void add();
    void remove();
    void learn();
    void bring();
    void writeFile();
    void readFile();
    void keepPaper();
    void openPaper(const QUuid &row);
    [[nodiscard]] const ModelNotes *chosen() const;
    [[nodiscard]] Unit likeChosen() const;

    QListWidget *m_list;
    QStackedWidget *m_right; ///< the notes, or what belongs here
    PageTabs *m_tabs;
    QStackedWidget *m_pages;
    NotesWords *m_words;
    QList<NotesTable *> m_tables;
    NotesTable *m_papers = nullptr;
    QPushButton *m_learn;
    QPushButton *m_bring;
    Id<ModelNotes> m_chosen;
    QList<SolvedCause> m_solved;
    QTemporaryDir m_folder; ///< copies of papers that are being read
};

} // namespace ts
