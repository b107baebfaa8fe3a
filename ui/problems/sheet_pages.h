// SPDX-License-Identifier: MIT
// A sheet and its key as PDF.
#pragma once

#include "ui/practice/problem_sheet.h"
#include "ui/problems/key_blocks.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <condition_variable>
#include <deque>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

namespace tailpoint {

/// A PDF that grows page by page.
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

/// A PDF that is painted on a thread of its own, in the order in which pages are added.
class PaintedApart {
public:
    PaintedApart(const QString& title, QPageSize::PageSizeId paper);
    ~PaintedApart();
    /// Waits where many wait already.
    void add(std::unique_ptr<HandoutPages> pages);
    /// Lets pages go that another has painted: taking them apart is work too.
    void letGo(std::unique_ptr<HandoutPages> pages);
    QByteArray take(); ///< as GrowingPdf
private:
    void paint(const QString& title, QPageSize::PageSizeId paper);
    void end();

    std::mutex m_mutex;
    std::condition_variable m_changed;
    std::deque<std::unique_ptr<HandoutPages>> m_waiting;
    std::vector<std::unique_ptr<HandoutPages>> m_spent;
    bool m_isEnding = false;
    QByteArray m_bytes;
    std::thread m_thread;
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
    void add(std::size_t problem, Part part);
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
    double m_width;                        ///< of the column, layout units
    std::unique_ptr<PaintedApart> m_pages; ///< beside the key, which is the most to paint
    std::unique_ptr<GrowingPdf> m_key;
    std::vector<HandoutPages::Kept> m_entries;
};

/// Where a problem stands on its sheet.
ProblemPlace placeOf(const ProblemSheet& sheet, std::size_t problem, const QString& title);

} // namespace tailpoint
