// SPDX-License-Identifier: MIT
// The guide's tables of a number's way name functions where they are: each row's file has its function.
#include <gtest/gtest.h>

#include <fstream>
#include <regex>
#include <sstream>
#include <string>

namespace TAILPOINT_FILE {

std::string textOf(const std::string& path) {
    std::ifstream in(std::string(TAILPOINT_SOURCE) + "/" + path);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

TEST(ANumbersWay, IsAsTheGuideTellsIt) {
    const std::string guide = textOf("DEVELOPERS.md");
    const std::size_t begin = guide.find("## A number's way through the house");
    ASSERT_NE(begin, std::string::npos);
    const std::string part = guide.substr(begin, guide.find("\n## ", begin + 1) - begin);
    static const std::regex row(R"(\| ([\w/]+\.cpp) \| `([^`]+)` \|)");
    int rows = 0;
    for (std::sregex_iterator each(part.begin(), part.end(), row), end; each != end; ++each, ++rows) {
        const std::string file = (*each)[1], function = (*each)[2];
        EXPECT_NE(textOf(file).find(function + "("), std::string::npos) << file << " has no " << function;
    }
    EXPECT_EQ(rows, 22);
}

} // namespace TAILPOINT_FILE
