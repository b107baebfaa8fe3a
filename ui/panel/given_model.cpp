// SPDX-License-Identifier: MIT
#include "ui/panel/given_model.h"

#include "core/construct/reduction.h"
#include "core/explain/question.h"
#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "ui/document/bound_edits.h"
#include "ui/document/sketch_document.h"
#include "ui/panel/panel_table.h"
#include "ui/style/symbols.h"

namespace tailpoint {

namespace {

int forcesOf(const SketchDocument& document) {
    return static_cast<int>(document.sketch().forces.size());
}

} // namespace

GivenModel::GivenModel(SketchDocument& document, QObject* parent)
    : QAbstractTableModel(parent), m_document(document), m_forces(forcesOf(document)) {}

int GivenModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : m_forces + 1;
}

int GivenModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

int GivenModel::vectorAt(int row) const {
    return row == m_forces ? kSumIndex : row;
}

int GivenModel::rowOf(int vector) const {
    return vector == kSumIndex ? m_forces : vector;
}

std::optional<Entry> GivenModel::cellAt(int column) {
    switch (column) {
    case Name:
        return Entry::name;
    case MagnitudeColumn:
        return Entry::magnitude;
    case DirectionColumn:
        return Entry::direction;
    default:
        return std::nullopt;
    }
}

Qt::ItemFlags GivenModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags plain = QAbstractTableModel::flags(index);
    return cellAt(index.column()) ? plain | Qt::ItemIsEditable : plain;
}

QVariant GivenModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    if (orientation == Qt::Vertical) { // a row is called by its vector
        const bool inside =
            section >= 0 && section <= m_forces && hasVector(m_document.sketch(), vectorAt(section));
        return inside ? text(vectorOf(m_document.sketch(), vectorAt(section)).name) : QVariant();
    }
    const QString headers[Columns]{tr("Name"), tr("Magnitude"), tr("Direction"), tr("Note")};
    return section >= 0 && section < Columns ? headers[section] : QVariant();
}

Sentence GivenModel::editedWords(const QModelIndex& index) const {
    const Sketch& sketch = m_document.sketch();
    const int vector = vectorAt(index.row());
    const Words symbol = symbolWords(m_document.result().things(), vectorId(vector));
    switch (index.column()) {
    case MagnitudeColumn:
        return sentence(
            tr("Magnitude of %1, in %2").replace(QLatin1String("%2"), text(symbolOf(sketch.forceUnit))),
            symbol);
    case DirectionColumn:
        return sentence(tr("Direction of %1, %2")
                            .replace(QLatin1String("%2"), onScreen(referenceWords(sketch.reference))),
                        symbol);
    default:
        return sentence(tr("Name of %1"), symbol);
    }
}

bool GivenModel::isStale() const {
    return m_forces != forcesOf(m_document);
}

void GivenModel::refresh() {
    m_drafts.dropStray(m_document.sketch());
    if (isStale()) {
        beginResetModel();
        m_forces = forcesOf(m_document);
        endResetModel();
        return;
    }
    emit dataChanged(index(0, 0), index(m_forces, Columns - 1));
}

/// What was stated in a unit of its own; its tolerance stands beside the sheet's value.
QString GivenModel::statedNote(int vector) const {
    const Force& force = vectorOf(m_document.sketch(), vector);
    QStringList stated;
    if (force.magnitude.typed) {
        const auto& typed = *force.magnitude.typed;
        stated += onScreen(shownAsTyped(TypedForce{typed.value, typed.unit, {}}));
    }
    if (const auto* angle = std::get_if<AngleForm>(&force.direction.form); angle && angle->typed) {
        stated += onScreen(shownAsTyped(TypedAngle{angle->typed->value, angle->typed->unit, {}}));
    }
    return stated.join(QStringLiteral(", "));
}

/// By the case on the sheet.
bool GivenModel::isChanged(int vector, Entry cell) const {
    const auto& cases = m_document.whole().cases;
    const auto shown = m_document.shownCase();
    if (!shown || *shown >= cases.size() || cell == Entry::name) {
        return false;
    }
    const std::string& name = vectorOf(m_document.sketch(), vector).name;
    for (const CaseChange& change : cases[*shown].changes) {
        if (change.of == name) {
            return cell == Entry::magnitude ? change.magnitude.has_value() : change.direction.has_value();
        }
    }
    return false;
}

/// "in the case storm; as drawn 180 N"; empty where the case leaves it as it is.
QString GivenModel::changedWords(int vector, Entry cell) const {
    if (!isChanged(vector, cell)) {
        return {};
    }
    const Sketch& whole = m_document.whole();
    const Force& drawn = vectorOf(whole, vector);
    const std::string value = cell == Entry::magnitude ? shownWithTolerance(drawn.magnitude, whole)
                                                       : shownWithTolerance(drawn.direction, whole);
    return tr("in the case %1; as drawn %2").arg(text(m_document.sketch().inCase), onScreen(value));
}

/// What is behind a value before what else is to be said, for it is what is computed with.
QStringList GivenModel::notesOf(int vector) const {
    const Sketch& sketch = m_document.sketch();
    const Force& force = vectorOf(sketch, vector);
    QStringList notes;
    if (const QString stated = statedNote(vector); !stated.isEmpty()) {
        notes += stated;
    }
    if (sketch.smallest == force.name) {
        notes += tr("smallest");
    }
    if (force.lineOfActionOnly) {
        notes += tr("either sense");
    }
    if (force.limit) { // short, so that its unit is never cut off
        notes += tr("\u2264 %1").arg(onScreen(shownAsTyped(*force.limit)));
    } else if (force.permitted) {
        notes += boundWords(sketch, vector);
    }
    return notes;
}

/// For the tooltip: the permitted directions beside a limit too.
QString GivenModel::noteInFull(int vector) const {
    QStringList notes = notesOf(vector);
    if (vectorOf(m_document.sketch(), vector).limit) {
        notes.last() = boundWords(m_document.sketch(), vector);
    }
    return notes.join(QStringLiteral(", "));
}

/// The cell has room for one: the tooltip has them all.
QString GivenModel::noteOf(int vector) const {
    const Sketch& sketch = m_document.sketch();
    const QStringList notes = notesOf(vector);
    if (!notes.isEmpty()) {
        return notes.size() == 1 ? notes.first() : tr("%1, \u2026").arg(notes.first());
    }
    if (vector != kSumIndex) {
        return {};
    }
    return isEquilibrium(sketch) ? tr("\u03a3F = 0") : tr("resultant");
}

QVariant GivenModel::shown(int vector, int column) const {
    const Sketch& sketch = m_document.sketch();
    const Force& force = vectorOf(sketch, vector);
    if (column == Name) {
        return text(force.name);
    }
    if (column == Note) {
        return noteOf(vector);
    }
    if (column == DirectionColumn && vector == kSumIndex && isEquilibrium(sketch) &&
        !isGiven(force.direction)) {
        return QStringLiteral("\u2013");
    }
    if (isToFind(sketch, vector, *cellAt(column))) {
        return tr("to find");
    }
    return onScreen(column == MagnitudeColumn ? shownWithTolerance(force.magnitude, sketch)
                                              : shownWithTolerance(force.direction, sketch));
}

const std::string& GivenModel::nameAt(const QModelIndex& index) const {
    return vectorOf(m_document.sketch(), vectorAt(index.row())).name;
}

const Draft* GivenModel::draftAt(const QModelIndex& index) const {
    return m_drafts.find(nameAt(index), index.column());
}

bool GivenModel::shownInFull(int vector, Entry cell) const {
    const Sketch& sketch = m_document.sketch();
    const Force& force = vectorOf(sketch, vector);
    return cell == Entry::magnitude   ? isShownInFull(force.magnitude, sketch)
           : cell == Entry::direction ? isShownInFull(force.direction, sketch)
                                      : true;
}

/// As it stands in the file, where that has a unit of its own.
QString GivenModel::asTyped(int vector, Entry cell) const {
    const Force& force = vectorOf(m_document.sketch(), vector);
    const auto* angle = std::get_if<AngleForm>(&force.direction.form);
    if (cell == Entry::magnitude && force.magnitude.typed) {
        return text(shownAsTyped(*force.magnitude.typed));
    }
    return cell == Entry::direction && angle && angle->typed ? text(shownAsTyped(*angle->typed)) : QString();
}

/// For the tooltip: what is kept where the cell shows less.
QString GivenModel::kept(int vector, Entry cell) const {
    const Sketch& sketch = m_document.sketch();
    const QString kept = onScreen(keptText(sketch, vector, cell));
    if (!asTyped(vector, cell).isEmpty()) {
        const QString whole = stated(vector, cell);
        return shownInFull(vector, cell) ? whole : tr("%1; kept as %2").arg(whole, kept);
    }
    return shownInFull(vector, cell) ? tr("Type a value; Space makes it given or one to find")
                                     : tr("kept as %1").arg(kept);
}

QString GivenModel::accessible(const QModelIndex& index) const {
    const int vector = vectorAt(index.row());
    const QString name = text(vectorOf(m_document.sketch(), vector).name);
    const QString what = headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString();
    const QString value = index.data().toString();
    const auto cell = cellAt(index.column());
    if (cell == Entry::name) {
        return vector == kSumIndex ? tr("Sum %1").arg(name) : tr("Force %1").arg(name);
    }
    if (const Draft* draft = draftAt(index)) {
        return tr("%1 of %2: %3, not taken: %4").arg(what, name, draft->text, draft->message);
    }
    const QString typed = cell ? asTyped(vector, *cell) : QString();
    const QString words = typed.isEmpty()
                              ? tr("%1 of %2: %3").arg(what, name, value)
                              : tr("%1 of %2: %3, given as %4").arg(what, name, value, onScreen(typed));
    const QString changed = cell ? changedWords(vector, *cell) : QString();
    return changed.isEmpty() ? words : tr("%1, %2").arg(words, changed);
}

QVariant GivenModel::data(const QModelIndex& index, int role) const {
    const int vector = index.isValid() ? vectorAt(index.row()) : kNoVector;
    const Sketch& sketch = m_document.sketch();
    if (!index.isValid() || !hasVector(sketch, vector)) {
        return {};
    }
    const auto cell = cellAt(index.column());
    const Draft* draft = draftAt(index);
    switch (role) {
    case Qt::DisplayRole:
        return draft ? QVariant(draft->text) : shown(vector, index.column());
    case Qt::EditRole:
        return draft  ? QVariant(draft->text)
               : cell ? QVariant(editedText(sketch, vector, *cell))
                      : QVariant();
    case Qt::TextAlignmentRole:
        return QVariant::fromValue((index.column() == Name ? Qt::AlignLeft : Qt::AlignRight) |
                                   Qt::AlignVCenter);
    case Qt::AccessibleTextRole:
        return accessible(index);
    case Qt::ToolTipRole:
        if (!cell) {
            return noteInFull(vector);
        }
        if (*cell == Entry::name) {
            return symbolHtml(m_document.result().things().symbol(vectorId(vector)));
        }
        if (const QString changed = changedWords(vector, *cell); !changed.isEmpty()) {
            return tr("%1; %2").arg(changed, kept(vector, *cell));
        }
        return kept(vector, *cell);
    case ChangedRole:
        return !draft && cell && isChanged(vector, *cell);
    case ToFindRole:
        return !draft && cell && isToFind(sketch, vector, *cell) &&
               shown(vector, index.column()) == tr("to find");
    case SentenceRole:
        return index.column() == Name && !draft
                   ? QVariant::fromValue(
                         Sentence{symbolWords(m_document.result().things(), vectorId(vector))})
                   : QVariant();
    case QuietRole:
        return index.column() == Note;
    case FaultRole:
        return draft ? draft->message : QString();
    case UnitRole:
        return draft || !cell || *cell == Entry::name ? QVariant()
                                                      : unitRole(index.data().toString(), sketch);
    default:
        return {};
    }
}

QString GivenModel::lines(const std::vector<int>& vectors) const {
    return asLines(m_document.sketch(), vectors);
}

Outcome GivenModel::tried(const QModelIndex& index, const QString& typed) const {
    return typedInto(m_document.sketch(), vectorAt(index.row()), *cellAt(index.column()), typed);
}

bool GivenModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto cell = cellAt(index.column());
    if (role != Qt::EditRole || !cell || !hasVector(m_document.sketch(), vectorAt(index.row()))) {
        return false;
    }
    const QString typed = value.toString();
    const bool draft = draftAt(index) != nullptr;
    if (!draft && typed == editedText(m_document.sketch(), vectorAt(index.row()), *cell)) {
        return true; // nothing was changed: no undo step, and a value kept in full stays so
    }
    const Outcome outcome = tried(index, typed);
    if (const auto* reason = std::get_if<Refused>(&outcome)) {
        keepDraft(index, typed, *reason);
        return false;
    }
    const auto& accepted = std::get<Accepted>(outcome);
    m_drafts.drop(nameAt(index), index.column());
    const QString steps[]{tr("Rename"), tr("Type a magnitude"), tr("Type a direction")};
    if (const auto fault = m_document.edit(accepted.sketch, steps[static_cast<int>(*cell)])) {
        keepDraft(index, typed, {text(fault->message)});
        return false;
    }
    emit dataChanged(index, index);
    emit taken(index, accepted.understood);
    return true;
}

void GivenModel::keepDraft(const QModelIndex& index, const QString& typed, const Refused& why) {
    m_drafts.keep(nameAt(index), index.column(), {typed, why.message, why.readings});
    emit dataChanged(index, index);
    emit refused(index, why.message);
}

std::optional<Refused> GivenModel::whyRefused(const QModelIndex& index) const {
    const bool inside = index.isValid() && hasVector(m_document.sketch(), vectorAt(index.row()));
    const Draft* draft = inside ? draftAt(index) : nullptr;
    return draft ? std::optional(Refused{draft->message, draft->readings}) : std::nullopt;
}

QString GivenModel::statedAt(const QModelIndex& index) const {
    const auto cell = index.isValid() ? cellAt(index.column()) : std::nullopt;
    const int vector = index.isValid() ? vectorAt(index.row()) : kNoVector;
    return cell && hasVector(m_document.sketch(), vector) && !asTyped(vector, *cell).isEmpty()
               ? stated(vector, *cell)
               : QString();
}

QString GivenModel::stated(int vector, Entry cell) const {
    const Sketch& sketch = m_document.sketch();
    const Force& force = vectorOf(sketch, vector);
    return cell == Entry::magnitude ? asStated(force.magnitude, sketch) : asStated(force.direction, sketch);
}

Sentence GivenModel::waitingFault() const {
    const auto waiting = m_drafts.first();
    if (!waiting) {
        return {};
    }
    Sentence line = sentence(tr("%1: "), symbolWords(m_document.result().things(), waiting->vector));
    line.push_back({waiting->message.toStdString()});
    return line;
}

void GivenModel::forgetDrafts() {
    m_drafts.clear();
    emit dataChanged(index(0, 0), index(m_forces, Columns - 1));
}

void GivenModel::discardDraft(const QModelIndex& index) {
    if (m_drafts.drop(nameAt(index), index.column())) {
        emit dataChanged(index, index);
    }
}

void GivenModel::toggle(const QModelIndex& index) {
    const auto cell = index.isValid() ? cellAt(index.column()) : std::nullopt;
    if (!cell || *cell == Entry::name) {
        return;
    }
    m_drafts.drop(nameAt(index), index.column());
    const Sketch after = toggled(m_document, vectorAt(index.row()), *cell);
    const bool toFind = isToFind(after, vectorAt(index.row()), *cell);
    if (const auto fault = m_document.edit(after, toFind ? tr("Ask for a value") : tr("Give a value"))) {
        emit refused(index, text(fault->message));
        return;
    }
    emit dataChanged(index, index);
}

} // namespace tailpoint
