// SPDX-License-Identifier: MIT
// A sheet and its key as PDF.
#pragma once

#include "ui/practice/problem_sheet.h"
#include "ui/problems/key_blocks.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <memory>
#include <vector>

namespace tailpoint {

/// A PDF that grows page by page, on one thread from its beginning to its end.
class GrowingPdf {
public:
    GrowingPdf(const QString& title, QPageSize::PageSizeId paper);
    void add(const HandoutPages& pages);
    /// Ends it. Empty where it could not be made.
    QByteArray take();

private:
    QByteArray m_bytes;
    QBuffer m_buffer{&m_bytes};
    std::unique_ptr<QPdfWriter> m_writer;
    std::unique_ptr<QPainter> m_painter;
    bool m_isFresh = true, m_isSound = true;
};

/// See writePages() (write_sheet.cpp). `sheet` outlives it.
class SheetPdf {
public:
    SheetPdf(const ProblemSheet& sheet, const SheetLook& look);

    struct Part {
        std::unique_ptr<HandoutPages> sheet, key; ///< `key`: with its solution pages of its own
        std::vector<HandoutPages::Kept> entry;    ///< of the key, without
    };
    Part part(std::size_t problem, const TaskOnPage& task) const;
    void addQuestion(std::size_t problem, Part& part);
    void addKey(std::size_t problem, Part& part);
    void endQuestions();
    void endKey();
    std::vector<std::pair<QString, QByteArray>> files();

private:
    bool beginsStudent(std::size_t problem) const;
    /// A question alone stands on one page, where a lower figure makes it fit.
    void addSolution(Part& part, const Problem& problem, const HandoutPages::Foot& foot) const;
    std::unique_ptr<HandoutPages> problemPages(const Problem& problem, const ProblemPlace& place,
                                               const TaskOnPage& task) const;

    const ProblemSheet& m_sheet;
    SheetLook m_look;
    QString m_title;
    QSizeF m_paper;
    double m_width;                             ///< of the column, layout units
    std::unique_ptr<GrowingPdf> m_pages, m_key; ///< made by the first that is added
    QByteArray m_pageBytes, m_keyBytes;
    std::vector<HandoutPages::Kept> m_entries;
};

/// Where a problem stands on its sheet.
ProblemPlace placeOf(const ProblemSheet& sheet, std::size_t problem, const QString& title);

} // namespace tailpoint
