// SPDX-License-Identifier: MIT
#include "ui/handout/handout_blocks.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QScreen>
#include <QTextLayout>
#include <QTextOption>
#include <map>

namespace tailpoint {

using Block = HandoutPages::Block;
using Kept = HandoutPages::Kept;
using Ink = HandoutPages::Ink;

namespace {

// Points.
constexpr double kMath = 11.4, kAlone = 12.4, kNote = 9.2; ///< sizes
constexpr double kTitle = 16;
constexpr double kIndent = 22, kInset = 6;

} // namespace

void GroupWriter::begin(double gap) {
    m_groups.emplace_back();
    m_gap = gap;
}

Block& GroupWriter::prose(const Prose& text, double points, double x, double before, int weight) {
    const double size = points * kMath / kHandoutText;
    return add(setProse(text, handoutFont(points, weight), typeSize(size), m_width - x * m_unit), x, before);
}

void GroupWriter::table(const Table& table, double x) {
    constexpr std::size_t kRows = 30; ///< kept on one page
    for (std::size_t from = 0; from < std::max<std::size_t>(1, table.rows.size()); from += kRows) {
        Table piece = table;
        const std::size_t end = std::min(from + kRows, table.rows.size());
        piece.rows.assign(table.rows.begin() + static_cast<std::ptrdiff_t>(from),
                          table.rows.begin() + static_cast<std::ptrdiff_t>(end));
        piece.hasTotal = table.hasTotal && end == table.rows.size();
        add(setTable(piece, handoutFont(kHandoutText), typeSize(kMath), m_width - x * m_unit), x, 6);
    }
}

void GroupWriter::figure(const DisplayList& list) {
    Block block;
    block.ink = Ink::figure;
    block.x = std::max(0.0, (m_width - list.width * m_unit) / 2);
    block.before = kFigureGap * m_unit;
    block.height = list.height * m_unit;
    m_groups.back().push_back(std::move(block));
}

void GroupWriter::step(const Step& step, int number) {
    begin(number == 0 ? 4 : 9);
    prose(inProse(step.title), kHandoutText, kIndent, 0, QFont::DemiBold).number = number;
    const double answer = step.key == StepKey::answer ? 12.5 : kHandoutText;
    for (const Prose& text : step.reasoning)
        prose(text, answer, kIndent);
    if (step.table)
        table(*step.table, kIndent);
    for (const Working& working : step.workings)
        add(setWorking(working, typeSize(kAlone), m_width - (kIndent + 6) * m_unit), kIndent + 6, 5);
    double before = 5;
    for (const Prose& text : step.conclusion)
        prose(text, kHandoutText, kIndent, std::exchange(before, 3));
    for (const Prose& text : step.notes)
        prose(text, kNote, kIndent + 8, 5).ink = Ink::note;
}

void GroupWriter::heading(const std::string& text) {
    begin(18);
    Block& block = prose(inProse(text), 11.5, 0, 0, QFont::DemiBold);
    block.rule = true;
}

void GroupWriter::joinLastTwo() {
    Kept last = std::move(m_groups.back());
    m_groups.pop_back();
    for (Block& block : last)
        m_groups.back().push_back(std::move(block));
}

void GroupWriter::parts(const Handout& handout) {
    for (const HandoutPart& part : partsOf(handout)) {
        heading(part.heading);
        int number = static_cast<int>(part.first);
        for (const Step* one : part.steps) {
            step(*one, number++);
            if (one == part.steps.front())
                joinLastTwo();
        }
    }
}

void GroupWriter::told(const TableTold& told) {
    heading(told.heading);
    table(told.table, 0);
    joinLastTwo();
    for (const Prose& remark : told.remarks)
        prose(remark, kNote, 0).ink = Ink::note;
}

void GroupWriter::limits(const Handout& handout, std::size_t answer) {
    heading(limitsHeading(handout, answer));
    for (const LimitShown& limit : handout.limits[answer])
        prose(limit.sentence, kHandoutText, kLimitSentence, 6).limit = limit;
    prose(limitsRemark(Voice(handout.sentences)), kNote, 0, 6).ink = Ink::quiet;
}

void GroupWriter::caution(const std::string& text) {
    begin(16);
    Block& block =
        add(setProse(inProse(text), handoutFont(kNote), typeSize(kNote), m_width - 2 * kInset * m_unit),
            kInset, 0);
    block.ink = Ink::caution;
    block.inset = kInset * m_unit;
    block.height += 2 * block.inset;
}

Block& GroupWriter::add(Setting setting, double x, double before) {
    Block block;
    block.height = setting.height();
    block.setting = std::move(setting);
    block.x = x * m_unit;
    block.before = (before + std::exchange(m_gap, 0)) * m_unit;
    m_groups.back().push_back(std::move(block));
    return m_groups.back().back();
}

TypeSize GroupWriter::typeSize(double points) const {
    return {points * m_unit, handoutResolution()};
}

int handoutResolution() {
    const QScreen* screen = QGuiApplication::primaryScreen();
    return screen ? qRound(screen->logicalDotsPerInchY()) : 96;
}

double unitsInPoint() {
    return kLayoutScale * handoutResolution() / 72;
}

QFont handoutFont(double points, int weight) {
    thread_local std::map<std::pair<double, int>, QFont> fonts; // of a few sizes
    const std::pair key{points, weight};
    if (const auto found = fonts.find(key); found != fonts.end())
        return found->second;
    QFont font = sansFont();
    font.setPointSizeF(points * kLayoutScale);
    font.setWeight(static_cast<QFont::Weight>(weight));
    return fonts.emplace(key, font).first->second;
}

namespace {

/// Words wider than the column are broken anywhere: each piece but the last fills a line.
std::string brokenWords(const std::string& text, const QFont& font, double width) {
    QStringList pieces;
    for (const QString& word : QString::fromStdString(text).split(QLatin1Char(' '))) {
        QTextLayout layout(word, font);
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            pieces << word.mid(line.textStart(), line.textLength());
        }
        layout.endLayout();
    }
    return pieces.join(QLatin1Char(' ')).toStdString();
}

} // namespace

std::vector<Kept> handoutGroups(const Handout& handout, const DisplayList& figure, double width) {
    GroupWriter out(width);
    out.begin(0);
    constexpr double kAllButALeaningLetter = 0.98;
    const QFont bold = handoutFont(kTitle, QFont::DemiBold);
    const std::string title = brokenWords(titleOf(handout), bold, kAllButALeaningLetter * width);
    out.prose(inProse(title), kTitle, 0, 0, QFont::DemiBold);
    if (!handout.given.sentence.pieces.empty())
        out.prose(handout.given.sentence, kHandoutText, 0, 6);
    if (handout.given.table)
        out.table(*handout.given.table, 0);
    if (!handout.question.empty())
        out.prose(proseOf(handout.question), kHandoutText, 0, 4);
    if (!handout.record.empty()) // what is assumed; the rest of it stands at the foot of every page
        out.prose(inProse(handout.record.back()), kNote, 0, 4).ink = Ink::quiet;
    if (!figure.groups.empty())
        out.figure(figure);
    out.parts(handout);
    for (std::size_t i = 0; i < handout.limits.size(); ++i)
        out.limits(handout, i);
    for (const auto* tables : {&handout.legs, &handout.tables})
        for (const TableTold& told : *tables)
            out.told(told);
    if (!handout.caution.empty())
        out.caution(handout.caution);
    return out.take();
}

} // namespace tailpoint
