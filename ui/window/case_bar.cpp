// SPDX-License-Identifier: MIT
#include "ui/window/case_bar.h"

#include "core/explain/cases.h"
#include "core/sketch/cases.h"
#include "ui/document/sketch_document.h"
#include "ui/style/palette.h"
#include "ui/style/symbols.h"

#include <QAction>
#include <QBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QTabBar>
#include <QToolButton>

namespace tailpoint {

namespace {

/// A tab's text has no mnemonics.
QString onTab(std::string_view name) {
    return text(name).replace(u'&', QStringLiteral("&&"));
}

} // namespace

CaseBar::CaseBar(SketchDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_tabs(new QTabBar), m_changes(new QLabel) {
    setObjectName(QStringLiteral("caseBar"));
    setAutoFillBackground(true);
    m_tabs->setObjectName(QStringLiteral("caseTabs"));
    m_tabs->setAccessibleName(tr("Case on the sheet"));
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_tabs->setUsesScrollButtons(true);
    m_changes->setObjectName(QStringLiteral("caseChanges"));
    m_changes->setForegroundRole(QPalette::PlaceholderText);
    m_changes->setTextFormat(Qt::PlainText);
    m_changes->setMinimumWidth(0);
    m_changes->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 2, 12, 0);
    row->setSpacing(8);
    row->addWidget(m_tabs);
    row->addWidget(m_changes, 1);
    connect(m_tabs, &QTabBar::currentChanged, this, [this](int tab) {
        m_document.showCase(tab > 0 ? std::optional(static_cast<std::size_t>(tab - 1)) : std::nullopt);
    });
    connect(m_tabs, &QTabBar::tabBarDoubleClicked, this, [this](int tab) {
        if (tab > 0)
            emit renameAsked();
    });
    connect(&m_document, &SketchDocument::changed, this, &CaseBar::follow);
    follow();
}

void CaseBar::setTheme(const Theme& theme) {
    QPalette palette = paletteOf(theme);
    palette.setColor(QPalette::Window, theme.sheet);
    setPalette(palette);
}

void CaseBar::addButton(QAction* add) {
    auto* button = new QToolButton;
    button->setDefaultAction(add);
    button->setObjectName(QStringLiteral("caseAdd"));
    button->setText(QStringLiteral("+"));
    button->setToolTip(tr("Add a case"));
    button->setAccessibleName(tr("Add a case"));
    button->setAutoRaise(true);
    button->setFocusPolicy(Qt::TabFocus);
    qobject_cast<QHBoxLayout*>(layout())->insertWidget(1, button);
}

void CaseBar::follow() {
    const bool isWanted = !m_document.whole().cases.empty() && !m_document.withholdsAnswer();
    if (isWanted) {
        fillTabs();
        showChanges();
    }
    setVisible(isWanted);
}

void CaseBar::fillTabs() {
    const QSignalBlocker silent(m_tabs);
    const Sketch& sketch = m_document.whole();
    const auto count = static_cast<int>(sketch.cases.size()) + 1;
    while (m_tabs->count() > count)
        m_tabs->removeTab(m_tabs->count() - 1);
    while (m_tabs->count() < count)
        m_tabs->addTab({});
    m_tabs->setTabText(0, tr("as drawn"));
    for (int tab = 1; tab < count; ++tab) {
        const LoadCase& one = sketch.cases[static_cast<std::size_t>(tab - 1)];
        if (m_tabs->tabText(tab) != onTab(one.name))
            m_tabs->setTabText(tab, onTab(one.name));
        m_tabs->setTabToolTip(tab, text(changesTold(one, sketch)).toHtmlEscaped());
    }
    const auto shown = m_document.shownCase();
    m_tabs->setCurrentIndex(shown ? static_cast<int>(*shown) + 1 : 0);
}

void CaseBar::showChanges() {
    const auto shown = m_document.shownCase();
    if (!shown)
        m_told = tr("What you change here changes every case that does not give its own value.");
    else if (const LoadCase& one = m_document.whole().cases[*shown]; one.changes.empty())
        m_told = tr("As drawn so far: given values that you change are this case's own.");
    else
        m_told = text(changesTold(one, m_document.whole()));
    m_changes->setText(m_changes->fontMetrics().elidedText(m_told, Qt::ElideRight, m_changes->width()));
    m_changes->setToolTip(m_told.toHtmlEscaped());
    m_changes->setAccessibleName(m_told);
}

void CaseBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (!m_told.isEmpty())
        showChanges();
}

} // namespace tailpoint
