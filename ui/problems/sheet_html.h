// SPDX-License-Identifier: MIT
// A sheet and its key as pages for a browser: HTML 5, UTF-8, well-formed as XML too, MathML, no script,
// nothing from the network; printed, every problem begins a page, and figures keep their scale.
#pragma once

#include "ui/practice/problem_sheet.h"
#include "ui/problems/key_blocks.h"

namespace tailpoint {

/// See writePages() (write_sheet.cpp). `sheet` outlives it.
class SheetHtml {
public:
    SheetHtml(const ProblemSheet& sheet, const SheetLook& look);

    struct Part {
        std::string sheet, key;
    };
    Part part(std::size_t problem, const TaskOnPage& task) const;
    void addQuestion(std::size_t, Part& part) { m_pages += part.sheet; }
    void addKey(std::size_t, Part& part) { m_key += part.key; }
    void endQuestions() {}
    void endKey() {}
    std::vector<std::pair<QString, QByteArray>> files();

private:
    const ProblemSheet& m_sheet;
    SheetLook m_look;
    QString m_title;
    std::string m_pages, m_key;
};

} // namespace tailpoint
