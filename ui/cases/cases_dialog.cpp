// SPDX-License-Identifier: MIT
#include "ui/cases/cases_dialog.h"

#include "core/explain/cases.h"
#include "core/sketch/cases.h"
#include "ui/document/sketch_document.h"
#include "ui/files/provenance.h"
#include "ui/style/symbols.h"

#include <QBoxLayout>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QGuiApplication>
#include <QMimeData>
#include <QPushButton>
#include <QScrollBar>
#include <QTextBrowser>

namespace tailpoint {

namespace {

QString cellHtml(const Formula& cell, const char* tag, bool isFirst) {
    return QStringLiteral("<%1 align=\"%2\">%3</%1>")
        .arg(QLatin1String(tag), isFirst ? QStringLiteral("left") : QStringLiteral("right"),
             htmlOf(Prose{{cell}}));
}

/// Of two columns both hold words.
QString rowHtml(const std::vector<Formula>& cells, const char* tag) {
    QString row;
    for (const Formula& cell : cells)
        row += cellHtml(cell, tag, &cell == &cells.front() || cells.size() == 2);
    return QStringLiteral("<tr>%1</tr>").arg(row);
}

QString rowText(const std::vector<Formula>& cells) {
    QStringList texts;
    for (const Formula& cell : cells)
        texts << text(toText(cell));
    return texts.join(u'\t') + u'\n';
}

} // namespace

QString casesHtml(const std::vector<TableTold>& told) {
    QString all;
    for (const TableTold& one : told) {
        all += QStringLiteral("<h4>%1</h4><table cellspacing=\"0\" cellpadding=\"4\">")
                   .arg(text(one.heading).toHtmlEscaped());
        all += rowHtml(one.table.head, "th");
        for (const auto& row : one.table.rows)
            all += rowHtml(row, "td");
        all += QStringLiteral("</table>");
        for (const Prose& remark : one.remarks)
            all += QStringLiteral("<p>%1</p>").arg(htmlOf(remark));
    }
    return all;
}

QString casesText(const std::vector<TableTold>& told) {
    QString all;
    for (const TableTold& one : told) {
        all += (all.isEmpty() ? QString() : QStringLiteral("\n")) + text(one.heading) + u'\n';
        all += rowText(one.table.head);
        for (const auto& row : one.table.rows)
            all += rowText(row);
        for (const Prose& remark : one.remarks)
            all += text(toText(remark)) + u'\n';
    }
    return all;
}

CasesDialog::CasesDialog(SketchDocument& document, QWidget* parent)
    : QDialog(parent), m_document(document), m_text(new QTextBrowser), m_copy(nullptr) {
    setObjectName(QStringLiteral("casesDialog"));
    setWindowTitle(tr("Differences and envelope of the cases"));
    setModal(false);
    resize(620, 560);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    m_text->setObjectName(QStringLiteral("casesText"));
    m_text->setAccessibleName(windowTitle());
    m_text->setOpenLinks(false);
    column->addWidget(m_text, 1);
    auto* buttons = new QDialogButtonBox;
    m_copy = buttons->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
    m_copy->setObjectName(QStringLiteral("casesCopy"));
    buttons->addButton(QDialogButtonBox::Close)->setIcon({});
    column->addWidget(buttons);
    connect(m_copy, &QPushButton::clicked, this, &CasesDialog::copy);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(&m_document, &SketchDocument::changed, this, &CasesDialog::follow);
}

void CasesDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    follow();
}

/// Outer bounds while a hand moves, the ranges to the full at rest.
std::vector<TableTold> CasesDialog::told() const {
    const auto effort = m_document.result().isMoving ? tolerance::kWhileDragging : tolerance::kExact;
    return casesTold(m_document.whole(), withRanges(m_document.caseStates(), effort));
}

void CasesDialog::follow() {
    if (!isVisible())
        return;
    const auto tables = told();
    m_copy->setEnabled(!tables.empty());
    const int place = m_text->verticalScrollBar()->value();
    if (m_document.withholdsAnswer())
        m_text->setPlainText(tr("Hidden while the answer is."));
    else if (tables.empty())
        m_text->setPlainText(tr("The sketch has no cases yet: Question › Cases › Add a case."));
    else
        m_text->setHtml(casesHtml(tables));
    m_text->verticalScrollBar()->setValue(place);
}

QString CasesDialog::shown() const {
    return m_text->toPlainText();
}

/// Under the title, with caution and record at the end, as every copy has them.
void CasesDialog::copy() {
    const auto tables = told();
    const QString title = text(titleWithCase(m_document.whole()));
    QString html = title.isEmpty() ? title : QStringLiteral("<p><b>%1</b></p>").arg(title.toHtmlEscaped()),
            plain = title.isEmpty() ? title : title + QStringLiteral("\n\n");
    html += casesHtml(tables);
    plain += casesText(tables);
    for (const std::string& line : closingLines(m_document.whole(), provenanceOf(m_document.path()))) {
        html += QStringLiteral("<p>%1</p>").arg(text(line).toHtmlEscaped());
        plain += u'\n' + text(line) + u'\n';
    }
    auto* copied = new QMimeData;
    copied->setHtml(html);
    copied->setText(plain);
    QGuiApplication::clipboard()->setMimeData(copied);
}

} // namespace tailpoint
