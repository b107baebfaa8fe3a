// SPDX-License-Identifier: MIT
// Given: the table, one quiet line under it, and a button for one more force.
#pragma once

#include "ui/panel/given_model.h"
#include "ui/panel/panel_table.h"

#include <QPersistentModelIndex>
#include <QTimer>

class QLabel;
class QKeyEvent;
class QLineEdit;
class QMenu;

namespace tailpoint {

/// The field that opens over a cell. Keeps what is being typed whatever the document does meanwhile.
class GivenDelegate : public PanelDelegate {
    Q_OBJECT
public:
    using PanelDelegate::PanelDelegate;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

signals:
    void typing(const QModelIndex& index, const QString& text) const;
    void linesPasted(const QString& lines); ///< more than one value was pasted into a field

protected:
    bool eventFilter(QObject* editor, QEvent* event) override;

private:
    bool staysOpen(QLineEdit* field);
    bool keyTaken(QLineEdit* field, const QKeyEvent& key);
};

class GivenTable : public PanelTable {
    Q_OBJECT
public:
    GivenTable(GivenModel& model, GivenDelegate* delegate, QWidget* parent = nullptr);
    QString selectedText() const override;
    /// Opens the field of a cell that can be typed into; one that is open already gets the keys.
    void typeInto(const QModelIndex& cell);
    /// Takes what is typed in an open field, or keeps it in its cell with the reason.
    void finishTyping();
    /// Closes an open field and forgets what is in it.
    void dropTyping();

signals:
    void pasted(const QString& lines);
    void removal(const QList<int>& rows);
    void addition();
    void menuAsked(const QModelIndex& index, const QPoint& globalPlace);
    void keyed();        ///< a key arrived: its cell should be seen
    void draftDropped(); ///< by Escape
    void boundsAsked(const QModelIndex& cell);
    void noteTyped(); ///< where there is no field

protected:
    bool edit(const QModelIndex& cell, EditTrigger trigger, QEvent* event) override;
    bool editNote(const QModelIndex& cell, EditTrigger trigger, QEvent* event);
    void closeEditor(QWidget* field, QAbstractItemDelegate::EndEditHint hint) override;
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;

private:
    QLineEdit* openField() const;
    GivenModel& m_model;
    QTimer m_secondClick; ///< behind a click on what is selected: the field opens unless one more comes
    QPersistentModelIndex m_clicked; ///< then
};

class GivenView : public QWidget {
    Q_OBJECT
public:
    explicit GivenView(SketchDocument& document, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    void refresh();
    void forgetDrafts(); ///< another sketch altogether
    bool isStale() const { return m_model->isStale(); }

    void setDivision(double forceUnits) { m_division = forceUnits; } ///< of the sheet
    void select(int vector);
    /// Opens the field of a cell, with the keyboard in it.
    void edit(int vector, Entry cell);

    // Each is one undo step; what could not be done is said in the line.
    void addForce();
    void removeChosen();
    void paste(const QString& lines);
    void toggleCurrent();
    /// A dialog for what the vector may be at most, and where it may point.
    void editBounds(int vector);

    GivenTable* table() const { return m_table; }

signals:
    void selected(int vector); ///< kNoVector: nothing, or more than one
    void pointedAt(int vector);
    void told(const QString& line); ///< what was understood, or why not; empty: nothing more
    void cellUsed();                ///< another cell is current, or a key arrived at it

private:
    void say(const QString& line, bool fault);
    void sayWhy(const Refused& why, const QModelIndex& cell = {});
    void showFault(const QString& rich);
    void takeReading(qsizetype which);
    void sayCell(const QModelIndex& index);
    void onTyping(const QModelIndex& index, const QString& typed);
    void onSelection();
    void showMenu(const QModelIndex& index, const QPoint& place);
    void addCellActions(QMenu& menu, int vector, std::optional<Entry> cell);
    void setEitherSense(int vector, bool either);
    void setToFind(int vector, Entry cell, bool toFind);
    std::vector<std::string> chosenForces() const;
    void remove(const std::vector<std::string>& names); ///< those that are still there
    void apply(const Sketch& after, const QString& step);

    SketchDocument& m_document;
    GivenModel* m_model;
    GivenDelegate* m_delegate;
    GivenTable* m_table;
    QLabel *m_line, *m_fault;      ///< what was understood; why not
    QPersistentModelIndex m_asked; ///< the cell whose number reads two ways
    QStringList m_readings;
    int m_steps = 0;          ///< of the undo stack, when last told
    double m_division = 50;   ///< force units; until a sheet tells it
    bool m_following = false; ///< the selection comes from outside
};

} // namespace tailpoint
