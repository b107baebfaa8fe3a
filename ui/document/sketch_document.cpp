#include "ui/document/sketch_document.h"

#include <QFileInfo>
#include <QUndoCommand>

namespace tailpoint {

/// Holds the sketch before and after. Steps of one gesture become one.
class EditCommand : public QUndoCommand {
public:
    EditCommand(SketchDocument& document, const Sketch& after, const QString& text, quint64 gesture)
        : QUndoCommand(text), m_document(document), m_before(document.sketch()), m_after(after),
          m_gesture(gesture) {}

    int id() const override { return m_gesture == 0 ? -1 : 1; }
    bool mergeWith(const QUndoCommand* later) override {
        const auto* next = dynamic_cast<const EditCommand*>(later);
        if (!next || next->m_gesture != m_gesture)
            return false;
        m_after = next->m_after;
        setText(next->text());
        setObsolete(m_after == m_before); // a drag that came back to its start leaves no step
        return true;
    }
    void redo() override { m_document.set(m_after); }
    void undo() override { m_document.set(m_before); }
    quint64 gesture() const { return m_gesture; }
    const Sketch& after() const { return m_after; }
    const Sketch& before() const { return m_before; }

private:
    SketchDocument& m_document;
    Sketch m_before, m_after;
    quint64 m_gesture;
};

Result resultOf(const Sketch& sketch, std::size_t chosen) {
    Result result{sketch, solve(sketch), chosen, {}};
    if (result.chosen >= result.solved.solutions.size())
        result.chosen = 0;
    result.construction = construct(result.sketch, result.solved, result.chosen);
    return result;
}

SketchDocument::SketchDocument(QObject* parent) : QObject(parent), m_result(resultOf(emptySketch())) {
    connect(&m_undo, &QUndoStack::cleanChanged, this, &SketchDocument::fileChanged);
}

SketchDocument::~SketchDocument() {
    m_undo.disconnect(this);
}

std::optional<SketchFault> SketchDocument::edit(const Sketch& after, const QString& text, quint64 gesture) {
    if (after == sketch())
        return std::nullopt;
    if (auto fault = firstFault(after))
        return fault;
    keepRedo(gesture);
    const int before = m_undo.index();
    m_undo.push(new EditCommand(*this, after, text, gesture));
    if (m_undo.index() < before) // the gesture is back where it began: its step is gone
        bringBackRedo();
    return std::nullopt;
}

void SketchDocument::keepRedo(quint64 gesture) {
    if (gesture != 0 && gesture == m_redo.gesture)
        return;
    m_redo = {gesture, {}, m_undo.cleanIndex()};
    for (int i = m_undo.index(); gesture != 0 && i < m_undo.count(); ++i)
        if (const auto* step = dynamic_cast<const EditCommand*>(m_undo.command(i)))
            m_redo.steps.push_back({step->after(), step->text(), step->gesture()});
}

/// The steps are pushed anew, from the sketch that they began with, and taken back one by one.
void SketchDocument::bringBackRedo() {
    if (m_redo.steps.empty() || m_undo.canRedo())
        return;
    const Result now = m_result;
    const int here = m_undo.index();
    m_quiet = true;
    for (const Redo::Step& step : m_redo.steps) {
        m_undo.push(new EditCommand(*this, step.after, step.text, step.gesture));
        if (m_undo.index() == m_redo.clean)
            m_undo.setClean();
    }
    m_undo.setIndex(here);
    m_quiet = false;
    m_result = now;
}

quint64 SketchDocument::newGesture() {
    static quint64 last = 0; // a token, unique in the process; the GUI thread alone asks for it
    return ++last;
}

void SketchDocument::cancelGesture(quint64 gesture) {
    if (gesture == 0 || m_undo.index() == 0)
        return;
    // The stack owns its commands and hands them out const; obsolete ones are dropped by undo() without being
    // undone.
    auto* top = const_cast<QUndoCommand*>(m_undo.command(m_undo.index() - 1));
    auto* edit = dynamic_cast<EditCommand*>(top);
    if (!edit || edit->gesture() != gesture)
        return;
    edit->undo();
    edit->setObsolete(true);
    m_undo.undo();
    bringBackRedo();
}

const Sketch* SketchDocument::lastWhere(const std::function<bool(const Sketch&)>& is) const {
    for (int i = m_undo.index() - 1; i >= 0; --i) {
        const auto* step = dynamic_cast<const EditCommand*>(m_undo.command(i));
        if (step && is(step->before()))
            return &step->before();
    }
    return nullptr;
}

void SketchDocument::choose(std::size_t solution) {
    if (solution == m_result.chosen || solution >= m_result.solved.solutions.size())
        return;
    m_result.chosen = solution;
    m_result.construction = construct(m_result.sketch, m_result.solved, solution);
    emit changed();
}

void SketchDocument::set(const Sketch& sketch) {
    if (m_quiet) {
        m_result.sketch = sketch;
        return;
    }
    m_result = resultOf(sketch, m_result.chosen);
    emit changed();
}

void SketchDocument::replace(const Sketch& sketch, const QString& path) {
    m_file.take(path);
    m_result.chosen = 0;
    m_undo.clear();
    m_redo = {};
    set(sketch);
    emit replaced();
    emit fileChanged();
}

void SketchDocument::restore(const Sketch& sketch, const QString& path, const QByteArray& known) {
    replace(sketch, path);
    m_file.know(known);
    m_undo.resetClean();
}

std::optional<FileError> SketchDocument::open(const QString& path) {
    auto bytes = readBytes(path);
    if (auto* error = std::get_if<FileError>(&bytes))
        return *error;
    auto read = readSketch(std::get<QByteArray>(bytes));
    if (auto* error = std::get_if<FileError>(&read))
        return *error;
    // A sketch out of a picture has no file yet: saving must not put JSON in the picture's place.
    const bool picture = isPicture(std::get<QByteArray>(bytes));
    const QString absolute = QFileInfo(path).absoluteFilePath();
    if (!picture)
        sweepStaleTemporaries(QFileInfo(absolute).absolutePath());
    replace(std::get<Sketch>(read), picture || path == QLatin1String("-") ? QString() : absolute);
    m_file.know(digestOf(std::get<QByteArray>(bytes)));
    return std::nullopt;
}

std::optional<FileError> SketchDocument::reload() {
    auto bytes = readBytes(path());
    if (auto* error = std::get_if<FileError>(&bytes))
        return *error;
    auto read = readSketch(std::get<QByteArray>(bytes));
    if (auto* error = std::get_if<FileError>(&read))
        return *error;
    edit(std::get<Sketch>(read), QStringLiteral("Reload the file"));
    m_file.know(digestOf(std::get<QByteArray>(bytes)));
    m_undo.setClean();
    emit fileChanged();
    return std::nullopt;
}

std::optional<FileError> SketchDocument::save(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    if (auto error = m_file.save(absolute, writeSketch(sketch())))
        return error;
    sweepStaleTemporaries(QFileInfo(absolute).absolutePath());
    m_undo.setClean();
    emit fileChanged();
    return std::nullopt;
}

} // namespace tailpoint
