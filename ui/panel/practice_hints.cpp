// SPDX-License-Identifier: MIT
#include "ui/panel/practice_hints.h"

#include "ui/panel/marked_text.h"
#include "ui/panel/panel_parts.h"
#include "ui/practice/practice.h"
#include "ui/style/symbols.h"

#include <QVBoxLayout>

namespace tailpoint {

PracticeHints::PracticeHints(Practice& practice, QWidget* parent)
    : QWidget(parent), m_practice(practice), m_text(new MarkedText(QStringLiteral("hints"))) {
    setObjectName(QStringLiteral("practiceHints"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    column->addWidget(headingLabel(tr("Hints")));
    column->addWidget(m_text);
    connect(&practice, &Practice::hintsChanged, this, &PracticeHints::refresh);
    hide();
}

void PracticeHints::setTheme(const Theme& theme) {
    m_text->setTheme(theme);
}

void PracticeHints::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    emit laidOut();
}

/// Of each line what is told of it: the question for its principle goes over into its name and the letters,
/// these into the numbers.
void PracticeHints::refresh() {
    using Told = HintedLine::Told;
    std::vector<MarkedText::Block> blocks;
    m_last.clear();
    for (const HintedLine& line : m_practice.hints().lines()) {
        if (line.told == Told::nothing)
            continue;
        const Prose words = line.told == Told::principle ? line.asks : inProse(line.principle);
        blocks.push_back({words, {}, MarkedText::Ink::plain, blocks.empty() ? 2.0 : 12.0});
        m_last = text(toText(words));
        if (line.told == Told::principle)
            continue;
        const Working& working = line.told == Told::letters ? line.letters : line.numbers;
        blocks.push_back({{}, working, MarkedText::Ink::plain, 6});
        m_last += u'\n' + MarkedText::plainOf(working);
    }
    setVisible(m_practice.problem() && !blocks.empty());
    m_text->show(std::move(blocks));
}

} // namespace tailpoint
