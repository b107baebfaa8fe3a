// SPDX-License-Identifier: MIT
#include "ui/window/handout_dialog.h"

#include "ui/canvas/canvas.h"
#include "ui/files/files.h"
#include "ui/panel/panel.h"
#include "ui/practice/practice.h"
#include "ui/window/save_name.h"
#include "ui/window/settings.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QGuiApplication>
#include <QLabel>
#include <QMainWindow>
#include <QMimeData>
#include <QPushButton>

namespace tailpoint {

namespace {

QString endingOf(const QString& form) {
    return form == QLatin1String("latex") ? QStringLiteral(".tex") : u'.' + form;
}

/// Empty: none of ours.
QString formOfEnding(const QString& ending) {
    if (ending == QLatin1String("html") || ending == QLatin1String("htm"))
        return QStringLiteral("html");
    if (ending == QLatin1String("tex"))
        return QStringLiteral("latex");
    return ending == QLatin1String("pdf") ? ending : QString();
}

void choose(QComboBox* box, const QString& data) {
    box->setCurrentIndex(std::max(0, box->findData(data)));
}

/// For who pastes it where nothing is set: all that the pages say, but for tables and figure.
QString plainText(const Handout& handout) {
    std::string all =
        titleOf(handout) + "\n\n" + toText(handout.given.sentence) + ' ' + plain(handout.question) + "\n\n";
    for (const HandoutPart& part : partsOf(handout)) {
        std::size_t number = part.first;
        for (const Step* step : part.steps) {
            all += std::to_string(number++) + ' ' + step->title + '\n' + toText(*step, Minus::typographic);
        }
    }
    if (!handout.caution.empty()) {
        all += '\n' + handout.caution + '\n';
    }
    for (const std::string& line : handout.record) {
        all += '\n' + line + '\n';
    }
    return QString::fromStdString(all);
}

} // namespace

HandoutChoice handoutChoiceOf(const WindowParts& parts) {
    HandoutChoice choice;
    choice.construction = parts.canvas.construction();
    choice.otherOrder = parts.canvas.otherOrder();
    choice.parallelMarks = parts.canvas.parallelMarks();
    choice.from = provenanceOf(parts.document.path());
    choice.ownWords = !parts.practice.isStatementStale();
    return choice;
}

HandoutDialog::HandoutDialog(const WindowParts& parts)
    : QDialog(&parts.window), m_parts(parts), m_form(new QComboBox), m_paper(new QComboBox),
      m_solution(new QCheckBox(tr("With the &worked solution"))),
      m_handRounding(new QCheckBox(tr("&Round by hand, as on paper"))),
      m_paperLabel(new QLabel(tr("&Paper"))), m_fault(new QLabel) {
    setObjectName(QStringLiteral("handoutDialog"));
    setWindowTitle(tr("Make handout"));
    build();
}

void HandoutDialog::build() {
    m_form->setObjectName(QStringLiteral("handoutForm"));
    m_form->addItem(tr("Page for a browser (HTML)"), QStringLiteral("html"));
    m_form->addItem(tr("Pages to print (PDF)"), QStringLiteral("pdf"));
    m_form->addItem(tr("LaTeX source"), QStringLiteral("latex"));
    m_paper->setObjectName(QStringLiteral("handoutPaper"));
    for (const char* name : {"A4", "Letter"}) {
        m_paper->addItem(QLatin1String(name), QLatin1String(name));
    }
    m_solution->setObjectName(QStringLiteral("handoutSolution"));
    m_handRounding->setObjectName(QStringLiteral("handoutRounding"));
    m_paperLabel->setBuddy(m_paper);
    m_fault->setObjectName(QStringLiteral("handoutFault"));
    m_fault->setForegroundRole(QPalette::BrightText);
    m_fault->setWordWrap(true);
    m_fault->hide();
    auto* buttons = new QDialogButtonBox;
    auto* save = buttons->addButton(tr("&Save as\u2026"), QDialogButtonBox::AcceptRole);
    auto* copying = buttons->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
    buttons->addButton(QDialogButtonBox::Close);
    for (QAbstractButton* button : buttons->buttons()) {
        button->setIcon({});
    }
    save->setObjectName(QStringLiteral("handoutSave"));
    save->setDefault(true);
    copying->setObjectName(QStringLiteral("handoutCopy"));
    auto* rows = new QFormLayout(this);
    rows->setContentsMargins(20, 18, 20, 16);
    rows->setHorizontalSpacing(14);
    rows->setVerticalSpacing(10);
    rows->addRow(tr("&Form"), m_form);
    rows->addRow(m_paperLabel, m_paper);
    rows->addRow(QString(), m_solution);
    rows->addRow(QString(), m_handRounding);
    rows->addRow(m_fault);
    rows->addRow(buttons);
    const auto adapt = [this] {
        m_paper->setEnabled(form() == QLatin1String("pdf"));
        m_paperLabel->setEnabled(m_paper->isEnabled());
        m_handRounding->setEnabled(m_solution->isChecked());
        m_fault->hide();
    };
    connect(m_form, &QComboBox::currentIndexChanged, this, adapt);
    connect(m_solution, &QCheckBox::toggled, this, adapt);
    connect(save, &QPushButton::clicked, this, &HandoutDialog::chooseAndSave);
    connect(copying, &QPushButton::clicked, this, &HandoutDialog::copy);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void HandoutDialog::ask(const QString& name) {
    m_name = name;
    choose(m_form, m_parts.settings.handoutForm());
    choose(m_paper, m_parts.settings.handoutPaper());
    const bool isHidden = m_parts.document.withholdsAnswer(); // the question alone can be handed out
    m_solution->setEnabled(!isHidden);
    m_solution->setChecked(!isHidden && m_parts.settings.handoutSolution());
    m_solution->setToolTip(isHidden ? tr("Not while the answer is hidden") : QString());
    m_handRounding->setChecked(m_parts.panel.handRounding());
    m_paper->setEnabled(form() == QLatin1String("pdf"));
    m_paperLabel->setEnabled(m_paper->isEnabled());
    m_handRounding->setEnabled(m_solution->isChecked());
    m_fault->hide();
    open();
}

void HandoutDialog::remember() {
    m_parts.settings.setHandoutForm(form());
    m_parts.settings.setHandoutPaper(m_paper->currentData().toString());
    if (m_solution->isEnabled())
        m_parts.settings.setHandoutSolution(m_solution->isChecked());
}

QString HandoutDialog::form() const {
    return m_form->currentData().toString();
}

HandoutChoice HandoutDialog::choice() const {
    HandoutChoice choice = handoutChoiceOf(m_parts);
    choice.solution = m_solution->isChecked();
    choice.handRounding = m_handRounding->isChecked();
    choice.method = m_parts.panel.method();
    choice.uncertainty = m_parts.panel.explainOptions().uncertainty;
    choice.parallelograms = m_parts.panel.byParallelograms();
    return choice;
}

QByteArray HandoutDialog::bytesFor(const QString& form) const {
    const Result& result = m_parts.document.result();
    if (form == QLatin1String("html")) {
        return handoutHtml(result, choice());
    }
    if (form == QLatin1String("latex")) {
        return handoutLatex(result, choice());
    }
    const bool letter = m_paper->currentData().toString() == QLatin1String("Letter");
    return handoutPdf(result, choice(), letter ? QPageSize::Letter : QPageSize::A4);
}

void HandoutDialog::chooseAndSave() {
    const QString filter = form() == QLatin1String("html")    ? tr("HTML (*.html)")
                           : form() == QLatin1String("latex") ? tr("LaTeX (*.tex)")
                                                              : tr("PDF (*.pdf)");
    const QString ending = endingOf(form()).mid(1);
    SaveName save{tr("Save the handout"), m_name + u'.' + ending, filter, ending};
    save.files = [](const QString& name) { // no form: saveTo() says so
        return formOfEnding(endingMeantBy(name)).isEmpty() ? QStringList() : QStringList{name};
    };
    const auto name = askSaveName(this, save);
    if (name && saveTo(*name)) {
        accept();
    }
}

bool HandoutDialog::saveTo(QString path) {
    if (endingMeantBy(path).isEmpty()) {
        path += endingOf(form());
    }
    const QString wanted = formOfEnding(QFileInfo(path).suffix().toLower());
    if (wanted.isEmpty()) {
        complain(tr("The name must end in .html, .pdf or .tex."));
        return false;
    }
    if (isSameFile(path, m_parts.document.path())) {
        complain(tr("%1 is the sketch itself. Choose another name.").arg(QFileInfo(path).fileName()));
        return false;
    }
    if (const auto error = saveBytes(path, bytesFor(wanted))) {
        complain(QFileInfo(path).fileName() + QStringLiteral(": ") + error->line());
        return false;
    }
    choose(m_form, wanted);
    remember();
    emit said(tr("The handout is in %1").arg(path));
    return true;
}

/// HTML as such, with the plain solution beside it; LaTeX as text; pages as PDF.
QMimeData* HandoutDialog::forClipboard() const {
    auto* mime = new QMimeData;
    const QByteArray bytes = bytesFor(form());
    if (form() == QLatin1String("latex")) {
        mime->setText(QString::fromUtf8(bytes));
        return mime;
    }
    if (form() == QLatin1String("html")) {
        mime->setHtml(QString::fromUtf8(bytes));
    } else {
        mime->setData(QStringLiteral("application/pdf"), bytes);
    }
    mime->setText(plainText(handoutOf(m_parts.document.result(), choice(), 0)));
    return mime;
}

void HandoutDialog::copy() {
    QGuiApplication::clipboard()->setMimeData(forClipboard());
    remember();
    emit said(tr("The handout is on the clipboard."));
}

void HandoutDialog::complain(const QString& line) {
    m_fault->setText(line);
    m_fault->show();
}

} // namespace tailpoint
