// SPDX-License-Identifier: MIT
// The table of given values: one row a force and the sum last. Reads the document, keeps no number of it;
// what it does keep is a typed text that could not be taken, so that it is not lost.
#pragma once

#include "core/explain/question.h"
#include "ui/document/given_edits.h"
#include "ui/panel/drafts.h"

#include <QAbstractTableModel>

namespace tailpoint {

class SketchDocument;

class GivenModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Name, MagnitudeColumn, DirectionColumn, Note, Columns };

    explicit GivenModel(SketchDocument& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// What a field over the cell edits: "Magnitude of P, in N", with the name as a symbol.
    Sentence editedWords(const QModelIndex& index) const;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// Row <-> vector of the sketch: the sum stands last.
    int vectorAt(int row) const;
    int rowOf(int vector) const;
    static std::optional<Entry> cellAt(int column);

    /// Brings the rows up to the document. Call after it changed; cheap where only numbers did.
    void refresh();
    /// The rows no longer fit the document: refresh at once.
    bool isStale() const;

    /// What typing this would do, without doing it.
    Outcome tried(const QModelIndex& index, const QString& typed) const;
    void toggle(const QModelIndex& index);
    /// Vectors as lines of tab-separated fields, as they can be pasted again.
    QString lines(const std::vector<int>& vectors) const;
    void discardDraft(const QModelIndex& index);
    void forgetDrafts();
    /// Why the text that waits in a cell was not taken; empty where none waits.
    std::optional<Refused> whyRefused(const QModelIndex& index) const;
    /// What was stated in a unit of its own, with what the sheet makes of it; empty where nothing was.
    QString statedAt(const QModelIndex& index) const;
    /// "P: ..." of the first text that still waits to be mended; empty where there is none.
    Sentence waitingFault() const;

signals:
    void refused(const QModelIndex& index, const QString& message);
    void taken(const QModelIndex& index, const QString& understood);

private:
    const std::string& nameAt(const QModelIndex& index) const;
    const Draft* draftAt(const QModelIndex& index) const;
    QVariant shown(int vector, int column) const;
    QString noteOf(int vector) const;
    QString statedNote(int vector) const;
    bool isChanged(int vector, Entry cell) const;
    QString changedWords(int vector, Entry cell) const;
    QStringList notesOf(int vector) const;
    QString noteInFull(int vector) const;
    QString accessible(const QModelIndex& index) const;
    bool shownInFull(int vector, Entry cell) const;
    QString asTyped(int vector, Entry cell) const;
    QString stated(int vector, Entry cell) const;
    QString kept(int vector, Entry cell) const;
    void keepDraft(const QModelIndex& index, const QString& text, const Refused& why);

    SketchDocument& m_document;
    int m_forces = 0;
    Drafts m_drafts;
};

} // namespace tailpoint
