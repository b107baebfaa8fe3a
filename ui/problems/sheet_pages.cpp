// SPDX-License-Identifier: MIT
#include "ui/problems/sheet_pages.h"

#include "ui/handout/handout_blocks.h"
#include "ui/problems/sheet_blocks.h"
#include "ui/problems/write_sheet.h"
#include "ui/render/pdf_record.h"

#include <algorithm>
#include <iterator>

namespace tailpoint {

namespace {

using Kept = HandoutPages::Kept;

/// "Problem 3 of 30", and whose; a long name is cut short, for the codes and the page's number stand there
/// too.
QString footOf(const ProblemPlace& place) {
    constexpr qsizetype most = 40; // characters
    const QString words = QStringLiteral("Problem %1 of %2").arg(place.number).arg(place.count);
    if (place.student.isEmpty())
        return words;
    const QString name =
        place.student.size() > most ? place.student.left(most - 1) + QChar(0x2026) : place.student;
    return name + QStringLiteral(" \u00B7 ") + words;
}

} // namespace

GrowingPdf::GrowingPdf(const QString& title, QPageSize::PageSizeId paper) {
    m_buffer.open(QIODevice::WriteOnly);
    m_writer = std::make_unique<QPdfWriter>(&m_buffer);
    prepare(*m_writer, title, paper);
    m_painter = std::make_unique<QPainter>();
    m_isSound = m_painter->begin(m_writer.get());
}

void GrowingPdf::add(const HandoutPages& pages) {
    for (int i = 0; i < pages.count() && m_isSound; ++i) {
        m_isSound = std::exchange(m_isFresh, false) || m_writer->newPage();
        if (m_isSound)
            pages.paint(*m_painter, i);
    }
}

QByteArray GrowingPdf::take() {
    m_isSound = m_isSound && m_painter->end();
    m_painter.reset();
    m_writer.reset(); // it ends its file when it goes
    settleDate(m_bytes);
    return m_isSound ? std::exchange(m_bytes, {}) : QByteArray();
}

ProblemPlace placeOf(const ProblemSheet& sheet, std::size_t problem, const QString& title) {
    const SheetVariant& variant = sheet.variants[problem];
    return {title, QString::fromStdString(variant.who), variant.place, sheet.request.count};
}

SheetPdf::SheetPdf(const ProblemSheet& sheet, const SheetLook& look)
    : m_sheet(sheet), m_look(look), m_title(titleOf(sheet)),
      m_paper(QPageSize(look.paper).size(QPageSize::Point)), m_width(HandoutPages::columnWidth(m_paper)) {}

bool SheetPdf::beginsStudent(std::size_t problem) const {
    const SheetVariant& variant = m_sheet.variants[problem];
    return problem == 0 || (!variant.who.empty() && variant.place == 1);
}

std::unique_ptr<HandoutPages> SheetPdf::problemPages(const Problem& problem, const ProblemPlace& place,
                                                     const TaskOnPage& task) const {
    const auto made = [&](double mostHeight) {
        ExerciseFigure figure = figureOf(problem, m_look, m_width, mostHeight);
        auto groups = problemGroups(problem, place, figure, m_look.grid, m_width,
                                    taskGroups(task, problem.bothAnswers, m_width));
        return std::make_unique<HandoutPages>(std::move(groups), std::move(figure.list), m_paper,
                                              HandoutPages::Foot{{}, footOf(place)});
    };
    auto pages = made(kMostExerciseHeight);
    if (pages->count() == 1 || task.faded || task.flawed)
        return pages;
    for (const double lower : {0.85, 0.7, 0.55}) // as low as can still be measured
        if (auto one = made(lower * kMostExerciseHeight); one->count() == 1)
            return one;
    return pages;
}

SheetPdf::Part SheetPdf::part(std::size_t index, const TaskOnPage& task) const {
    const SheetVariant& variant = m_sheet.variants[index];
    const ProblemPlace place = tailpoint::placeOf(m_sheet, index, m_title);
    Part part;
    part.sheet = problemPages(variant.problem, place, task);
    part.entry = keyGroups(variant.problem, place, variant.scheme, task, m_width);
    if (beginsStudent(index)) { // the head clings to the first entry
        Kept head = keyHead(m_title, place.student, m_width);
        std::move(part.entry.front().begin(), part.entry.front().end(), std::back_inserter(head));
        part.entry.front() = std::move(head);
    }
    if (m_look.solutions)
        addSolution(part, variant.problem, HandoutPages::Foot{QStringLiteral("Key"), footOf(place)});
    return part;
}

/// The figure as high as the entry above it leaves room for, where that is enough.
void SheetPdf::addSolution(Part& part, const Problem& problem, const HandoutPages::Foot& foot) const {
    addGroups(part.entry, keyCaution(problem, m_width));
    constexpr double spare = 1; // point: sums of heights are rounded
    KeySolution solution =
        keySolution(problem.sketch, HandoutPages::roomBelow(part.entry, m_paper) - kFigureGap - spare);
    addGroups(part.entry, solutionGroups(problem, solution, m_width));
    part.key = std::make_unique<HandoutPages>(std::exchange(part.entry, {}), std::move(solution.figure),
                                              m_paper, foot);
}

void SheetPdf::addQuestion(std::size_t, Part& part) {
    if (!m_pages)
        m_pages = std::make_unique<GrowingPdf>(m_title, m_look.paper);
    m_pages->add(*part.sheet);
}

void SheetPdf::addKey(std::size_t, Part& part) {
    if (!m_key)
        m_key = std::make_unique<GrowingPdf>(QStringLiteral("Key \u00B7 ") + m_title, m_look.paper);
    if (part.key)
        m_key->add(*part.key);
    addGroups(m_entries, std::move(part.entry));
}

void SheetPdf::endQuestions() {
    if (const auto pdf = std::exchange(m_pages, nullptr))
        m_pageBytes = pdf->take();
}

void SheetPdf::endKey() {
    const auto pdf = std::exchange(m_key, nullptr);
    if (!pdf)
        return;
    if (!m_entries.empty())
        pdf->add(HandoutPages(std::exchange(m_entries, {}), {}, m_paper, {QStringLiteral("Key"), m_title}));
    m_keyBytes = pdf->take();
}

std::vector<std::pair<QString, QByteArray>> SheetPdf::files() {
    std::vector<std::pair<QString, QByteArray>> all;
    all.emplace_back(QStringLiteral("sheet.pdf"), std::move(m_pageBytes));
    all.emplace_back(QStringLiteral("key.pdf"), std::move(m_keyBytes));
    return all;
}

} // namespace tailpoint
