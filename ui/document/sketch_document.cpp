// SPDX-License-Identifier: MIT
#include "ui/document/sketch_document.h"

#include "core/sketch/cases.h"
#include "ui/document/previous.h"
#include "ui/document/sheet_edits.h"

#include <QFileInfo>
#include <QUndoCommand>
#include <utility>

namespace tailpoint {

namespace {

Sketch shownOf(const DocumentContent& content) {
    return content.shownCase ? inCase(content.sketch, *content.shownCase) : content.sketch;
}

} // namespace

/// Holds what was before and after.
class EditCommand : public QUndoCommand {
public:
    EditCommand(SketchDocument& document, DocumentContent before, DocumentContent after, const QString& text)
        : QUndoCommand(text), m_document(document), m_before(std::move(before)), m_after(std::move(after)) {}
    void redo() override { m_document.show(m_after); }
    void undo() override { m_document.show(m_before); }
    const DocumentContent& before() const { return m_before; }

private:
    SketchDocument& m_document;
    DocumentContent m_before, m_after;
};

SketchDocument::SketchDocument(QObject* parent)
    : QObject(parent), m_content{emptySketch(), {}}, m_shown(std::make_shared<const Result>(emptySketch())) {
    connect(&m_undo, &QUndoStack::cleanChanged, this, &SketchDocument::fileChanged);
    connect(&m_undo, &QUndoStack::indexChanged, this, &SketchDocument::historyChanged);
}

SketchDocument::~SketchDocument() {
    m_undo.disconnect(this);
}

/// What an edit of the sheet makes of the whole. Units and axis are the same in every case.
Sketch SketchDocument::lifted(const Sketch& after) const {
    if (!m_content.shownCase) {
        Sketch whole = after;
        settleCases(whole);
        return whole;
    }
    Sketch base = withForceUnit(m_content.sketch, after.forceUnit, Numbers::convert);
    base = withAngleUnit(base, after.angleUnit, Numbers::convert);
    base = withReference(base, after.reference, Numbers::convert);
    if (after.gravity != base.gravity)
        base = withGravity(base, after.gravity);
    return editedInCase(base, *m_content.shownCase, after);
}

std::optional<SketchFault> SketchDocument::edit(const Sketch& after, const QString& step) {
    if (after == sketch())
        return std::nullopt;
    if (auto fault = shownCase() ? firstFault(after) : std::nullopt)
        return fault;
    return editWhole(lifted(after), step);
}

std::optional<SketchFault> SketchDocument::editWhole(const Sketch& after, std::optional<std::size_t> shown,
                                                     const QString& step) {
    if (after == whole())
        return std::nullopt;
    if (auto fault = firstFault(after))
        return fault;
    commit();
    if (shown && *shown >= after.cases.size())
        shown.reset();
    m_undo.push(new EditCommand(*this, content(), {after, shown}, step));
    return std::nullopt;
}

std::optional<SketchFault> SketchDocument::preview(const Sketch& sketch, const QString& step) {
    if (auto fault = shownCase() ? firstFault(sketch) : std::nullopt)
        return fault;
    const Sketch whole = lifted(sketch);
    if (auto fault = firstFault(whole))
        return fault;
    const bool changed = previewChanges();
    if (!m_preview)
        m_preview = Preview{content(), {}};
    m_preview->step = step;
    show({whole, shownCase()});
    if (previewChanges() != changed) {
        emit historyChanged();
        emit fileChanged();
    }
    return std::nullopt;
}

void SketchDocument::showCase(std::optional<std::size_t> index) {
    commit();
    if (index == shownCase() || (index && *index >= whole().cases.size()))
        return;
    show({whole(), index});
}

const std::vector<CaseState>& SketchDocument::caseStates() const {
    if (!m_states && m_withholds)
        m_states.emplace();
    if (!m_states)
        m_states = tailpoint::caseStates(whole());
    return *m_states;
}

void SketchDocument::commit() {
    if (!m_preview)
        return;
    const Preview done = *std::exchange(m_preview, std::nullopt);
    if (const DocumentContent now = content(); !(now == done.before))
        m_undo.push(new EditCommand(*this, done.before, now, done.step)); // shows what is shown already
    endPreview();
}

void SketchDocument::cancel() {
    if (!m_preview)
        return;
    const Preview dropped = *std::exchange(m_preview, std::nullopt);
    show(dropped.before);
    endPreview();
}

/// What rests has its ranges to the full.
void SketchDocument::endPreview() {
    if (m_shown->isMoving && !m_shown->ranges().empty()) {
        m_shown = made(sketch(), m_shown->chosen);
        emit changed();
    }
    emit historyChanged();
    emit fileChanged();
    emit previewEnded();
}

bool SketchDocument::isModified() const {
    return !m_undo.isClean() || previewChanges();
}

void SketchDocument::undo() {
    commit();
    m_undo.undo();
}

void SketchDocument::redo() {
    commit();
    m_undo.redo();
}

bool SketchDocument::canUndo() const {
    return previewChanges() || m_undo.canUndo();
}

bool SketchDocument::canRedo() const {
    return !previewChanges() && m_undo.canRedo();
}

QString SketchDocument::undoText() const {
    return previewChanges() ? m_preview->step : m_undo.undoText();
}

QString SketchDocument::redoText() const {
    return previewChanges() ? QString() : m_undo.redoText();
}

const Sketch* SketchDocument::lastWhere(const std::function<bool(const Sketch&)>& is) const {
    if (m_preview && is(m_preview->before.sketch))
        return &m_preview->before.sketch;
    for (int i = m_undo.index() - 1; i >= 0; --i) {
        const auto* step = dynamic_cast<const EditCommand*>(m_undo.command(i));
        if (step && is(step->before().sketch))
            return &step->before().sketch;
    }
    return nullptr;
}

void SketchDocument::choose(std::size_t solution) {
    if (solution == m_shown->chosen || solution >= m_shown->solved.solutions.size())
        return;
    m_shown = std::make_shared<const Result>(sketch(), solution);
    emit changed();
}

/// Showing what is shown changes nothing and says nothing.
void SketchDocument::show(const DocumentContent& content) {
    if (content == m_content)
        return;
    m_content = content;
    m_states.reset();
    m_shown = made(shownOf(content), m_shown->chosen);
    emit changed();
}

Snapshot SketchDocument::made(const Sketch& sketch, std::size_t chosen) const {
    return m_withholds ? std::make_shared<const Result>(unanswered(sketch))
                       : std::make_shared<const Result>(sketch, chosen, m_preview.has_value());
}

void SketchDocument::withholdAnswer(bool on) {
    if (on == m_withholds)
        return;
    m_withholds = on;
    if (on)
        m_chosenBefore = m_shown->chosen;
    m_states.reset();
    m_shown = made(sketch(), m_chosenBefore);
    emit changed();
}

void SketchDocument::replace(const Sketch& sketch, const QString& path) {
    m_file.take(path);
    m_preview.reset();
    m_undo.clear();
    m_chosenBefore = 0;
    m_content = {sketch, {}};
    m_states.reset();
    m_shown = made(sketch, 0);
    emit changed();
    emit previewEnded();
    emit replaced();
    emit historyChanged();
    emit fileChanged();
}

void SketchDocument::restore(const Sketch& sketch, const QString& path, const QByteArray& known) {
    replace(sketch, path);
    m_file.know(known);
    m_undo.resetClean(); // says fileChanged() itself
}

std::optional<FileError> SketchDocument::open(const QString& path) {
    commit();
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
    const Sketch& now = std::get<Sketch>(read);
    const auto shown = shownCase() ? caseNamed(now, sketch().inCase) : std::nullopt;
    editWhole(now, shown, QStringLiteral("Reload the file"));
    m_file.know(digestOf(std::get<QByteArray>(bytes)));
    m_undo.setClean();
    emit fileChanged();
    return std::nullopt;
}

/// At the first save of a sitting, and where it replaces what another program wrote.
void SketchDocument::keepPreviousOf(const QString& path) {
    const QString file = finalPath(path);
    const bool isOthers = path == this->path() && m_file.now() == OpenFile::Now::changed;
    if (!isOthers && m_kept.contains(file))
        return;
    m_kept.insert(file);
    keepPrevious(file);
}

void SketchDocument::leaveFile() {
    m_file.take({});
    emit fileChanged();
}

void SketchDocument::begin(const Sketch& sketch, const QString& path) {
    replace(sketch, QFileInfo(path).absoluteFilePath());
    m_file.know(digestOf({})); // what comes to stand there until it is saved is somebody else's
}

std::optional<FileError> SketchDocument::save(const QString& path) {
    commit();
    const QString absolute = QFileInfo(path).absoluteFilePath();
    keepPreviousOf(absolute);
    if (auto error = m_file.save(absolute, writeSketch(whole())))
        return error;
    sweepStaleTemporaries(QFileInfo(absolute).absolutePath());
    m_undo.setClean();
    emit fileChanged();
    return std::nullopt;
}

} // namespace tailpoint
