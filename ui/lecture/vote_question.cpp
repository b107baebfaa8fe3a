// SPDX-License-Identifier: MIT
#include "ui/lecture/vote_question.h"

#include "core/explain/question.h"
#include "core/explain/statement.h"

#include <QPainter>
#include <cmath>

namespace tailpoint {

namespace {

constexpr std::size_t kMostTold = 6; ///< forces one by one
constexpr double kQuestionLineHeight = 1.28, kMostLines = 3.2;

/// The least leaves a subscript, which is no smaller than the least size, smaller than its letter.
constexpr double kQuestionSizes[]{1.25, 1.16, 1.08, 1.03};

bool isWhole(const Force& force) {
    return isGiven(force.magnitude) && isGiven(force.direction) && !force.lineOfActionOnly;
}

} // namespace

Prose voteQuestion(const Sketch& sketch) {
    Sketch told = sketch;
    if (told.forces.size() > kMostTold)
        std::erase_if(told.forces, isWhole);
    Prose prose = statement(told).sentence;
    if (!prose.pieces.empty())
        appendText(prose, " ");
    for (Piece& piece : proseOf(question(sketch)).pieces) {
        if (const auto* text = std::get_if<std::string>(&piece))
            appendText(prose, *text);
        else
            prose.pieces.push_back(std::move(piece));
    }
    return prose;
}

VoteQuestion::VoteQuestion(QWidget* parent) : QWidget(parent), m_theme(&themeOf(ThemeName::slate)) {
    setObjectName(QStringLiteral("voteQuestion"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAttribute(Qt::WA_TransparentForMouseEvents); // a click beside the sheet goes on, here too
    hide();
}

void VoteQuestion::setTheme(const Theme& theme) {
    m_theme = &theme;
    update();
}

void VoteQuestion::setSketch(const Sketch& sketch) {
    m_prose = voteQuestion(sketch);
    setAccessibleName(text());
    update();
}

QString VoteQuestion::text() const {
    return QString::fromStdString(toText(m_prose));
}

int VoteQuestion::lay(const Measures& measures, int width) {
    m_measures = measures;
    const double room = width - 1.6 * measures.margin;
    for (const double factor : kQuestionSizes) {
        QFont words = serifFont();
        words.setHintingPreference(QFont::PreferNoHinting);
        words.setPointSizeF(factor * measures.serif * 72 / logicalDpiY());
        const TypeSize size{factor * measures.serif, logicalDpiY(), measures.serif};
        m_set = setProse(m_prose, words, size, room, kQuestionLineHeight);
        if (m_set.height() <= kMostLines * kQuestionLineHeight * size.pixels)
            break;
    }
    update();
    return static_cast<int>(std::ceil(m_set.height() + measures.margin));
}

void VoteQuestion::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_theme->sheet);
    painter.setPen(m_theme->ink);
    m_set.paint(painter, {0.8 * m_measures.margin, 0.5 * m_measures.margin + m_set.ascent});
    const double thick = std::max(1.0, m_measures.height / 540);
    painter.fillRect(QRectF(0, height() - thick, width(), thick), m_theme->hairline);
}

} // namespace tailpoint
