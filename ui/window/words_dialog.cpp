// SPDX-License-Identifier: MIT
#include "ui/window/words_dialog.h"

#include "core/explain/question.h"
#include "core/explain/statement.h"
#include "ui/document/sketch_document.h"
#include "ui/practice/practice.h"
#include "ui/practice/problem_file.h"
#include "ui/style/symbols.h"
#include "ui/window/dialog_frame.h"
#include "ui/window/dialog_size.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QMainWindow>
#include <QPlainTextEdit>
#include <QPushButton>

namespace tailpoint {

namespace {

constexpr QSize kWordsSize(560, 320);

} // namespace

WordsDialog::WordsDialog(const WindowParts& parts)
    : QDialog(&parts.window), m_parts(parts), m_note(new QLabel), m_words(new QPlainTextEdit),
      m_fromValues(nullptr), m_take(nullptr) {
    setObjectName(QStringLiteral("wordsDialog"));
    setWindowTitle(tr("Question in words"));
    build();
    resize(withinScreen(*this, kWordsSize));
}

void WordsDialog::build() {
    m_note->setObjectName(QStringLiteral("wordsNote"));
    m_note->setWordWrap(true);
    m_note->setForegroundRole(QPalette::PlaceholderText);
    m_words->setObjectName(QStringLiteral("words"));
    m_words->setAccessibleName(tr("Question in words"));
    m_words->setPlaceholderText(tr("What happens, what is given, what is asked, and in which form the answer "
                                   "is wanted"));
    m_words->setTabChangesFocus(true);
    auto* buttons = new QDialogButtonBox;
    m_fromValues = buttons->addButton(tr("Words &from the values"), QDialogButtonBox::ActionRole);
    m_fromValues->setObjectName(QStringLiteral("wordsFromValues"));
    m_fromValues->setAutoDefault(false);
    m_take = buttons->addButton(tr("&Take these words"), QDialogButtonBox::AcceptRole);
    m_take->setObjectName(QStringLiteral("wordsTake"));
    m_take->setDefault(true);
    buttons->addButton(QDialogButtonBox::Cancel);
    frameDialog(*this, {m_words, m_note}, buttons);
    connect(m_words, &QPlainTextEdit::textChanged, this, &WordsDialog::refresh);
    connect(m_fromValues, &QPushButton::clicked, this, [this] { m_words->setPlainText(text(fromValues())); });
    connect(buttons, &QDialogButtonBox::accepted, this, &WordsDialog::take);
}

void WordsDialog::ask() {
    m_parts.document.commit();
    m_words->setPlainText(text(statementOf(m_parts.document.sketch())));
    m_fromValues->setEnabled(!fromValues().empty());
    refresh();
    m_words->setFocus();
    m_words->moveCursor(QTextCursor::End);
    open();
}

/// As the generator words a problem, else what is given and asked; empty where that takes a table.
std::string WordsDialog::fromValues() const {
    const Sketch& sketch = m_parts.document.sketch();
    const auto id = problemIdOf(sketch);
    const auto made = id ? problem(*id) : std::nullopt;
    const bool isSameKind = made && made->sketch.forces.size() == sketch.forces.size();
    if (isSameKind && m_parts.practice.problem())
        return statementFor(*id, sketch);
    const Statement given = statement(sketch);
    if (given.table || given.sentence.pieces.empty())
        return {};
    return toText(given.sentence, Minus::typographic) + ' ' + onScreen(plain(question(sketch))).toStdString();
}

QString WordsDialog::words() const {
    return m_words->toPlainText().simplified();
}

void WordsDialog::refresh() {
    const bool isLong = words().size() > kLongestWords;
    m_take->setEnabled(!isLong);
    m_note->setText(isLong ? tr("These are %1 characters; there is room for %2.")
                                 .arg(QString::number(words().size()), QString::number(kLongestWords))
                    : m_parts.practice.isStatementStale()
                        ? tr("These words were written for other values than the sheet has now.")
                        : tr("They stand above the sheet and on everything that is handed out; without any, "
                             "what is given and asked is said there."));
}

/// Who takes them says that they hold for the values as they are.
void WordsDialog::take() {
    m_parts.document.edit(withStatement(m_parts.document.sketch(), words().toStdString()),
                          tr("Question in words"));
    m_parts.practice.confirmStatement();
    accept();
}

} // namespace tailpoint
