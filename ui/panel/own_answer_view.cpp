// SPDX-License-Identifier: MIT
#include "ui/panel/own_answer_view.h"

#include "ui/document/sketch_document.h"
#include "ui/panel/own_answer_row.h"
#include "ui/panel/own_answer_words.h"
#include "ui/panel/panel_parts.h"
#include "ui/panel/spoken_line.h"
#include "ui/practice/problem_file.h"
#include "ui/style/symbols.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace tailpoint {

OwnAnswerView::OwnAnswerView(SketchDocument& document, OwnAnswer& answer, QWidget* parent)
    : QWidget(parent), m_document(document), m_answer(answer), m_fields(new QVBoxLayout),
      m_note(quietLabel(QStringLiteral("ownNote"))),
      m_add(linkButton(tr("Add a value on the way"), QStringLiteral("ownAdd"))),
      m_forget(linkButton(tr("Take back the drawing"), QStringLiteral("ownForget"))),
      m_show(linkButton(tr("Show the answer"), QStringLiteral("ownShow"))),
      m_slip(linkButton(tr("Show what gives this number"), QStringLiteral("ownSlip"))),
      m_mark(new QPushButton(tr("&Mark it"))), m_summary(new SpokenLine(QStringLiteral("ownSummary"))),
      m_points(quietLabel(QStringLiteral("ownPoints"))),
      m_findings(new MarkedText(QStringLiteral("ownFindings"))) {
    setObjectName(QStringLiteral("ownAnswer"));
    setAccessibleName(tr("Your answer"));
    build();
    connect(&answer, &OwnAnswer::fieldsChanged, this, &OwnAnswerView::makeRows);
    connect(&answer, &OwnAnswer::drawnChanged, this, &OwnAnswerView::showDrawn);
    connect(&answer, &OwnAnswer::marked, this, &OwnAnswerView::showMarks);
    connect(&answer, &OwnAnswer::pointingChanged, this, &OwnAnswerView::showPointing);
    const auto showMode = [this] {
        setVisible(m_answer.isOn() && !m_answer.standsAside());
        makeRows();
    };
    connect(&answer, &OwnAnswer::modeChanged, this, showMode);
    connect(&answer, &OwnAnswer::asideChanged, this, showMode);
    hide();
}

void OwnAnswerView::build() {
    m_mark->setObjectName(QStringLiteral("ownMark"));
    m_summary->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_summary->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_summary->setFixedHeight(m_summary->fontMetrics().lineSpacing() + 2);
    m_fields->setSpacing(2);
    auto* told = new QHBoxLayout;
    told->addWidget(m_summary, 1);
    told->addWidget(m_points);
    m_points->setAlignment(Qt::AlignRight | Qt::AlignTop);
    auto* links = new QHBoxLayout;
    auto* buttons = new QHBoxLayout;
    for (LinkButton* link : {m_add, m_forget, m_show, m_slip})
        link->setFlush();
    links->addWidget(m_add);
    links->addStretch(1);
    links->addWidget(m_forget);
    buttons->addWidget(m_mark);
    buttons->addStretch(1);
    buttons->addWidget(m_show);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->setSpacing(6);
    m_note->setWordWrap(true);
    column->addWidget(m_note);
    column->addLayout(m_fields);
    column->addLayout(links);
    column->addSpacing(4);
    column->addLayout(buttons);
    column->addLayout(told);
    column->addWidget(m_slip, 0, Qt::AlignLeft);
    column->addWidget(m_findings);
    for (LinkButton* later : {m_forget, m_show, m_slip}) { // their room is there before they are
        QSizePolicy kept = later->sizePolicy();
        kept.setRetainSizeWhenHidden(true);
        later->setSizePolicy(kept);
    }
    for (QWidget* part : std::initializer_list<QWidget*>{m_forget, m_show, m_slip, m_findings})
        part->hide();
    connect(m_mark, &QPushButton::clicked, &m_answer, &OwnAnswer::mark);
    connect(m_forget, &QPushButton::clicked, &m_answer, &OwnAnswer::forgetDrawn);
    connect(m_add, &QPushButton::clicked, this, &OwnAnswerView::openMenu);
    connect(m_show, &QPushButton::clicked, this, [this] { m_answer.showAnswer(!m_answer.isAnswerShown()); });
    connect(m_slip, &QPushButton::clicked, this, [this] { m_answer.showSlip(!m_answer.isSlipShown()); });
}

void OwnAnswerView::setTheme(const Theme& theme) {
    m_findings->setTheme(theme);
}

void OwnAnswerView::takeFocus() {
    if (!m_rows.isEmpty())
        m_rows.front()->field()->setFocus(Qt::TabFocusReason);
}

QList<QWidget*> OwnAnswerView::tabOrder() const {
    QList<QWidget*> order;
    for (const OwnAnswerRow* row : m_rows) {
        for (QLineEdit* field : row->fields())
            order << field;
        if (row->pointButton() != nullptr)
            order << row->pointButton();
    }
    return order << m_mark << m_show << m_slip << m_add << m_forget;
}

/// Rows whose quantities stay keep what is typed, and the keyboard; of another question nothing is typed.
void OwnAnswerView::makeRows() {
    const std::vector<Answerable> wanted = m_answer.fields();
    const auto same = [this](const OwnAnswerRow* row, const Answerable& of) {
        return row->of().id == of.id && row->of().name == of.name && row->of().asked == of.asked &&
               row->fields().size() == static_cast<qsizetype>(m_answer.answersToGive()) &&
               row->field()->accessibleName().startsWith( // its unit is in it
                   spokenName(of, m_document.sketch(), m_document.result().things()));
    };
    const bool stays = std::equal(m_rows.begin(), m_rows.end(), wanted.begin(), wanted.end(), same);
    if (!stays || wanted.empty()) {
        for (OwnAnswerRow* row : std::as_const(m_rows)) {
            m_fields->removeWidget(row);
            row->hide();
            row->setParent(nullptr); // gone at once; one of them may be what asked for it
            row->deleteLater();
        }
        m_rows.clear();
        for (const Answerable& of : wanted)
            addRow(of);
        int width = 0;
        for (const OwnAnswerRow* row : std::as_const(m_rows))
            width = std::max(width, row->symbolWidth());
        for (OwnAnswerRow* row : std::as_const(m_rows))
            row->setSymbolWidth(width);
        emit tabOrderChanged();
    }
    for (OwnAnswerRow* row : std::as_const(m_rows))
        for (qsizetype i = 0; i < row->fields().size(); ++i)
            if (const QString typed = m_answer.typed(row->of().name, static_cast<std::size_t>(i));
                row->fields()[i]->text() != typed)
                row->fields()[i]->setText(typed);
    const double of = m_answer.tellsPoints() ? m_answer.pointsToHave() : 0;
    m_points->setFixedWidth(m_points->fontMetrics().horizontalAdvance(pointsWords(of + 0.5, of)) + 2);
    showNote();
    m_add->setEnabled(!m_answer.addable().empty());
    m_mark->setEnabled(!wanted.empty());
    showDrawn();
    showMarks();
}

void OwnAnswerView::addRow(const Answerable& of) {
    auto* row =
        new OwnAnswerRow(of, m_document.sketch(), m_document.result().things(), m_answer.answersToGive());
    const bool isLong = of.id.what == What::direction || m_answer.hasScheme();
    row->setVerdictLines(isLong ? 3 : 2);
    const std::string name = of.name;
    connect(row, &OwnAnswerRow::typed, this,
            [this, name](const QString& typed, std::size_t answer) { m_answer.type(name, typed, answer); });
    connect(row, &OwnAnswerRow::entered, &m_answer, &OwnAnswer::mark);
    connect(row, &OwnAnswerRow::pointing, this, [this, name] {
        m_answer.pointing() == name ? m_answer.endPointing() : m_answer.beginPointing(name);
    });
    connect(row, &OwnAnswerRow::removed, this, [this, name] {
        m_answer.removeField(name);
        m_add->setFocus(Qt::OtherFocusReason); // the keyboard's place has gone
    });
    m_fields->addWidget(row);
    m_rows << row;
}

void OwnAnswerView::showDrawn() {
    for (OwnAnswerRow* row : std::as_const(m_rows)) {
        const QString reading = m_answer.drawnText(row->of());
        const PointableAngle* angle = m_answer.pointed(row->of().name);
        if (angle != nullptr && m_answer.typed(row->of().name).isEmpty()) {
            row->field()->clear();
            row->setDrawn(tr("pointed at"), tr("%1, pointed at").arg(wordsFor(*angle)));
        } else {
            row->setDrawn(reading, reading.isEmpty() ? QString() : tr("%1 as drawn").arg(reading));
        }
        row->setCanPoint(m_answer.canPoint(row->of()));
    }
    m_forget->setVisible(m_answer.isDrawn());
}

namespace {

/// The given directions are those of a pull.
bool isOfPulls(const Sketch& sketch) {
    const auto problem = problemIdOf(sketch);
    return problem && problem->family == "push-or-pull";
}

} // namespace

/// What the statement says of the form, where the fields alone don't.
void OwnAnswerView::showNote() {
    QStringList notes;
    if (m_answer.answersToGive() == 2)
        notes << tr("There are two answers to give; their order doesn't matter.");
    if (m_answer.hasSignedSenses())
        notes << (isOfPulls(m_document.sketch())
                      ? tr("A pull is positive, a push is negative.")
                      : tr("A force that acts against its given direction is negative."));
    m_note->setText(notes.join(u' '));
    m_note->setVisible(!notes.isEmpty());
}

QString OwnAnswerView::printed(const std::string& name) const {
    const Answerable* of = m_answer.named(name);
    return of != nullptr ? text(inPrint(m_document.result().things().symbol(of->id))) : text(name);
}

void OwnAnswerView::openMenu() {
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("ownAddMenu"));
    menu->setAttribute(Qt::WA_DeleteOnClose);
    for (const Answerable& one : m_answer.addable())
        menu->addAction(
            tr("%1: %2", "symbol and meaning")
                .arg(printed(one.name), spokenName(one, m_document.sketch(), m_document.result().things()))
                .replace(u'&', QStringLiteral("&&")),
            this, [this, name = one.name] {
                m_answer.addField(name);
                if (!m_rows.isEmpty())
                    m_rows.back()->field()->setFocus(Qt::OtherFocusReason);
            });
    menu->popup(m_add->mapToGlobal(QPoint(0, m_add->height())));
}

} // namespace tailpoint
