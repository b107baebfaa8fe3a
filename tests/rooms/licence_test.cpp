// SPDX-License-Identifier: MIT
// Every source says its licence in its first lines (tests/rooms/spdx writes it), and the licence itself is
// there.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>
#include <string>

namespace TAILPOINT_FILE {

namespace fs = std::filesystem;

constexpr const char* kLine = "SPDX-License-Identifier: MIT";

bool isSource(const fs::path& path) {
    static const std::set<std::string> endings{".cpp", ".h", ".cmake", ".py", ".sh", ".bash", ".fish"};
    if (endings.contains(path.extension().string()) || path.filename() == "CMakeLists.txt")
        return true;
    std::ifstream in(path);
    std::string begin(2, ' ');
    in.read(begin.data(), 2);
    return begin == "#!";
}

bool saysItsLicence(const fs::path& path) {
    std::ifstream in(path);
    std::string line;
    for (int i = 0; i < 3 && std::getline(in, line); ++i)
        if (line.find(kLine) != std::string::npos)
            return true;
    return false;
}

TEST(TheLicence, IsNamedInEverySource) {
    const fs::path source(TAILPOINT_SOURCE);
    int sources = isSource(source / "CMakeLists.txt") ? 1 : 0;
    EXPECT_TRUE(saysItsLicence(source / "CMakeLists.txt"));
    for (const char* folder : {"app", "core", "resources", "tests", "ui", ".ci"})
        for (const auto& entry : fs::recursive_directory_iterator(source / folder))
            if (entry.is_regular_file() && isSource(entry.path())) {
                ++sources;
                EXPECT_TRUE(saysItsLicence(entry.path()))
                    << fs::relative(entry.path(), source) << " lacks it: tests/rooms/spdx writes it";
            }
    EXPECT_GT(sources, 1000);
}

TEST(TheLicence, IsThere) {
    std::ifstream in(fs::path(TAILPOINT_SOURCE) / "resources" / "LICENSE");
    const std::string text((std::istreambuf_iterator<char>(in)), {});
    EXPECT_NE(text.find("MIT License"), std::string::npos);
    EXPECT_NE(text.find("The Tailpoint authors"), std::string::npos);
}

} // namespace TAILPOINT_FILE
