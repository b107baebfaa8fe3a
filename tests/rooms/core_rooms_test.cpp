// SPDX-License-Identifier: MIT
// The plan of the house, kept by a test: core/ knows no Qt, and a folder of it includes only the folders
// before it in the list. That core's own tests link without Qt is the other half of the proof.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <optional>
#include <regex>
#include <string>
#include <vector>

namespace TAILPOINT_FILE {

namespace fs = std::filesystem;

constexpr std::array kRooms{"quantity", "formula", "sketch", "solve",    "construct",
                            "derive",   "explain", "mark",   "practice", "figure"};

std::optional<std::size_t> rankOf(const std::string& room) {
    const auto found = std::find(kRooms.begin(), kRooms.end(), room);
    if (found == kRooms.end())
        return {};
    return static_cast<std::size_t>(found - kRooms.begin());
}

struct Include {
    fs::path file; ///< relative to core/
    int line = 0;
    std::string target;
};

std::string where(const Include& include) {
    return "core/" + include.file.string() + ":" + std::to_string(include.line) + " includes " +
           include.target;
}

void collect(const fs::path& file, const fs::path& core, std::vector<Include>& into) {
    static const std::regex pattern(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
    std::ifstream stream(file);
    std::string text;
    for (int line = 1; std::getline(stream, text); ++line) {
        std::smatch match;
        if (std::regex_search(text, match, pattern))
            into.push_back({fs::relative(file, core), line, match[1]});
    }
}

std::vector<Include> includesOfCore() {
    const fs::path core = fs::path(TAILPOINT_SOURCE) / "core";
    std::vector<Include> all;
    for (const auto& entry : fs::recursive_directory_iterator(core)) {
        const auto extension = entry.path().extension();
        if (extension == ".h" || extension == ".cpp")
            collect(entry.path(), core, all);
    }
    return all;
}

/// Qt's headers are named Q... or q... without a dot-h of ours, or stand below a folder Qt....
bool isQtHeader(const std::string& target) {
    static const std::regex pattern(R"((^|/)(Q[A-Z]\w*|q[a-z]+\w*\.h|Qt\w*/.*)$)");
    const bool ours = target.starts_with("core/");
    return !ours && std::regex_search(target, pattern);
}

/// What core/ may include: its own rooms, Eigen, and the standard library's headers (no slash, no suffix).
bool isAllowed(const std::string& target) {
    static const std::regex standard(R"(^[a-z_]+$)");
    static const std::array<std::string, 3> c{"fenv.h", "math.h", "stdint.h"};
    return target.starts_with("core/") || target.starts_with("Eigen/") ||
           std::regex_match(target, standard) || std::find(c.begin(), c.end(), target) != c.end();
}

TEST(CoreRooms, QtHeadersAreRecognisedAsSuch) {
    for (const char* header : {"QString", "QtCore/QString", "qt6/QtGui/QFont", "qglobal.h", "QtMath"})
        EXPECT_TRUE(isQtHeader(header) || !isAllowed(header)) << header;
    for (const char* header : {"vector", "Eigen/Core", "core/quantity/units.h", "core/quantity/quaint.h"})
        EXPECT_FALSE(isQtHeader(header)) << header;
}

TEST(CoreRooms, NoFileOfCoreIncludesAHeaderOfQt) {
    const auto includes = includesOfCore();
    ASSERT_GT(includes.size(), 20u) << "core/ was not found where the build said";
    for (const Include& include : includes)
        EXPECT_FALSE(isQtHeader(include.target)) << where(include);
}

TEST(CoreRooms, CoreIncludesNothingButItselfEigenAndTheStandardLibrary) {
    for (const Include& include : includesOfCore())
        EXPECT_TRUE(isAllowed(include.target)) << where(include);
}

TEST(CoreRooms, EveryFolderOfCoreIsInTheList) {
    for (const auto& entry : fs::directory_iterator(fs::path(TAILPOINT_SOURCE) / "core")) {
        if (entry.is_directory()) {
            EXPECT_TRUE(rankOf(entry.path().filename().string())) << entry.path().filename();
        }
    }
}

TEST(CoreRooms, AFolderIncludesOnlyItselfAndTheFoldersBeforeIt) {
    for (const Include& include : includesOfCore()) {
        if (!include.target.starts_with("core/"))
            continue;
        const std::string room = include.target.substr(5, include.target.find('/', 5) - 5);
        const auto from = rankOf(include.file.begin()->string());
        const auto to = rankOf(room);
        ASSERT_TRUE(from && to) << where(include);
        EXPECT_LE(*to, *from) << where(include);
    }
}

} // namespace TAILPOINT_FILE
