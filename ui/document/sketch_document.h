// SPDX-License-Identifier: MIT
// document/: the open sketch, its undo steps and its file. The one place where a sketch changes: mouse, keys,
// panel and assistive technology all call edit(), or preview() and then commit() or cancel().
#pragma once

#include "core/explain/cases.h"
#include "ui/document/open_file.h"
#include "ui/files/result.h"
#include "ui/files/sketch_json.h"

#include <QObject>
#include <QSet>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <memory>

namespace tailpoint {

/// What undo goes through. A second value beside the sketch is one more member here.
struct DocumentContent {
    Sketch sketch;                             ///< as drawn, with its cases
    std::optional<std::size_t> shownCase = {}; ///< which of them is on the sheet; empty: as drawn
    bool operator==(const DocumentContent&) const = default;
};

class SketchDocument : public QObject {
    Q_OBJECT
public:
    explicit SketchDocument(QObject* parent = nullptr);
    ~SketchDocument() override;

    /// What is shown at this moment, previews included. The reference is good until the next change; who
    /// needs it longer takes the snapshot.
    const Result& result() const { return *m_shown; }
    Snapshot snapshot() const { return m_shown; }
    const Sketch& sketch() const { return m_shown->sketch; }

    /// The sketch with its cases, whichever is shown: what is saved. As drawn it is sketch() itself.
    const Sketch& whole() const { return m_content.sketch; }
    std::optional<std::size_t> shownCase() const { return m_content.shownCase; }
    /// Another case on the sheet, or the sketch as drawn; no undo step. Commits first what is previewed.
    /// Nothing happens where there is no such case.
    void showCase(std::optional<std::size_t> index);
    /// All states solved, without ranges, previews included; empty without cases, and while the answer is
    /// withheld. Made when first asked for after a change.
    const std::vector<CaseState>& caseStates() const;

    /// One undo step; none where nothing changes. What is previewed is committed first. A sketch with a fault
    /// is refused and said in the return value. While a case is shown, given values go to that case, all else
    /// to the sketch (core/sketch/cases.h: editedInCase).
    std::optional<SketchFault> edit(const Sketch& after, const QString& step);
    /// The same of whole(): of its cases, of units and axis. `shown`: which case is shown then.
    std::optional<SketchFault> editWhole(const Sketch& after, std::optional<std::size_t> shown,
                                         const QString& step);
    std::optional<SketchFault> editWhole(const Sketch& after, const QString& step) {
        return editWhole(after, shownCase(), step);
    }

    /// A gesture under way: every view follows, no undo step is made. `step` names the step that commit()
    /// will make. A sketch with a fault is refused; what was previewed before it stays.
    std::optional<SketchFault> preview(const Sketch& sketch, const QString& step);
    void commit(); ///< the gesture's one step; none where it came back to its start, or nothing is previewed
    void cancel(); ///< as it was before the gesture; what could be redone still can
    bool isPreviewing() const { return m_preview.has_value(); }

    /// Undo and redo commit first what is previewed. history() is there to be read and listened to.
    void undo();
    void redo();
    bool canUndo() const;
    bool canRedo() const;
    QString undoText() const; ///< of the step that undo() takes back
    QString redoText() const;
    const QUndoStack& history() const { return m_undo; }
    bool isModified() const;
    QString path() const { return m_file.path(); } ///< empty: not yet saved
    OpenFile& file() { return m_file; }            ///< its lock, and what became of it on the disk

    /// The latest sketch on the way here, by undo steps, of which `is` holds; null: there was none.
    const Sketch* lastWhere(const std::function<bool(const Sketch&)>& is) const;

    void choose(std::size_t solution);

    /// While the answer is withheld, result() is the question alone, as unanswered() makes it: no view and no
    /// export can tell what it hasn't got. Afterwards the answer that was chosen before is shown again.
    void withholdAnswer(bool on);
    bool withholdsAnswer() const { return m_withholds; }

    void replace(const Sketch& sketch, const QString& path); ///< new or opened: clears the undo stack
    /// A sketch brought back after a crash: as replace, but modified until it is saved. `known`: digest of
    /// the bytes that the file had when the sketch was at work.
    void restore(const Sketch& sketch, const QString& path, const QByteArray& known = {});
    /// Both commit first what is previewed.
    std::optional<FileError> open(const QString& path); ///< on error the open sketch stays
    std::optional<FileError> save(const QString& path); ///< on error it stays modified
    /// Takes what stands in the file now, as one step that can be undone; on error the open sketch stays.
    std::optional<FileError> reload();

    QString readOnlyReason() const { return m_file.readOnlyReason(); } ///< see OpenFile
    /// A copy of its own from now on, without a file until it is saved: the other window keeps its own.
    void leaveFile();
    /// An unsaved file that is to be at `path` when it is saved first.
    void begin(const Sketch& sketch, const QString& path);

signals:
    void changed();        ///< sketch or chosen answer; result() is new
    void fileChanged();    ///< path or modified mark
    void replaced();       ///< another sketch altogether, after changed(): views fit it anew
    void previewEnded();   ///< committed, cancelled or replaced: a gesture that made it is over
    void historyChanged(); ///< what can be undone or redone

private:
    friend class EditCommand;
    struct Preview {
        DocumentContent before;
        QString step;
    };
    const DocumentContent& content() const { return m_content; }
    Sketch lifted(const Sketch& after) const;
    void show(const DocumentContent& content);
    Snapshot made(const Sketch& sketch, std::size_t chosen) const;
    bool previewChanges() const { return m_preview && !(m_preview->before == content()); }
    void endPreview();

    DocumentContent m_content;
    Snapshot m_shown; ///< of what is on the sheet
    mutable std::optional<std::vector<CaseState>> m_states;
    bool m_withholds = false;
    std::size_t m_chosenBefore = 0; ///< it was withheld
    QUndoStack m_undo;
    std::optional<Preview> m_preview;
    void keepPreviousOf(const QString& path);
    OpenFile m_file;
    QSet<QString> m_kept; ///< files whose version before this sitting is kept
};

} // namespace tailpoint
