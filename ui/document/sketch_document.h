// document/: the open sketch, its undo stack and its file. The one place where a sketch changes:
// mouse, keys, panel and assistive technology all call edit().
#pragma once

#include "core/construct/construct.h"
#include "core/solve/solve.h"
#include "ui/document/open_file.h"
#include "ui/document/sketch_json.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <vector>

namespace tailpoint {

/// Everything that follows from one sketch. Views read it and keep nothing.
struct Result {
    Sketch sketch;
    Solved solved;
    std::size_t chosen = 0; ///< which of two answers is shown
    Construction construction;
};

/// Solved and constructed as a whole. `chosen` beyond the answers becomes 0.
Result resultOf(const Sketch& sketch, std::size_t chosen = 0);

class SketchDocument : public QObject {
    Q_OBJECT
public:
    explicit SketchDocument(QObject* parent = nullptr);
    ~SketchDocument() override;

    const Result& result() const { return m_result; }
    const Sketch& sketch() const { return m_result.sketch; }
    QUndoStack& undoStack() { return m_undo; }
    bool isModified() const { return !m_undo.isClean(); }
    QString path() const { return m_file.path(); } ///< empty: not yet saved
    OpenFile& file() { return m_file; }            ///< its lock, and what became of it on the disk

    /// One undo step a gesture: edits with the same non-zero `gesture` merge; one that ends where it began
    /// leaves no step. A sketch with a fault is refused and said in the return value.
    std::optional<SketchFault> edit(const Sketch& after, const QString& text, quint64 gesture = 0);
    static quint64 newGesture();
    /// Takes back a gesture in progress without leaving a step.
    void cancelGesture(quint64 gesture);

    /// The latest sketch on the way here, by undo steps, of which `is` holds; null: there was none.
    const Sketch* lastWhere(const std::function<bool(const Sketch&)>& is) const;

    void choose(std::size_t solution);

    void replace(const Sketch& sketch, const QString& path); ///< new or opened: clears the undo stack
    /// A sketch brought back after a crash: as replace, but modified until it is saved. `known`: digest of
    /// the bytes that the file had when the sketch was at work.
    void restore(const Sketch& sketch, const QString& path, const QByteArray& known = {});
    std::optional<FileError> open(const QString& path); ///< on error the open sketch stays
    std::optional<FileError> save(const QString& path); ///< on error it stays modified
    /// Takes what stands in the file now, as one step that can be undone; on error the open sketch stays.
    std::optional<FileError> reload();

    QString readOnlyReason() const { return m_file.readOnlyReason(); } ///< see OpenFile

signals:
    void changed();     ///< sketch or chosen answer; result() is new
    void fileChanged(); ///< path or modified mark
    void replaced();    ///< another sketch altogether, after changed(): views fit it anew

private:
    friend class EditCommand;
    void set(const Sketch& sketch);
    void keepRedo(quint64 gesture);
    void bringBackRedo();

    /// What could be redone before a gesture began; its first edit makes the stack forget it.
    struct Redo {
        struct Step {
            Sketch after;
            QString text;
            quint64 gesture;
        };
        quint64 gesture = 0;
        std::vector<Step> steps;
        int clean = -1; ///< the saved state's place on the stack
    };

    Result m_result;
    QUndoStack m_undo;
    Redo m_redo;
    bool m_quiet = false; ///< steps go back on the stack; the sketch stays as it is
    OpenFile m_file;
};

} // namespace tailpoint
