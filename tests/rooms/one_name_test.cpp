// SPDX-License-Identifier: MIT
// Two types of one name in one namespace are no error to compiler or linker: of the functions that both have
// (copy, destroy, a vector of them) one is taken for both, and memory goes wrong where they aren't inlined.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

namespace TAILPOINT_FILE {

namespace fs = std::filesystem;

using Definitions = std::map<std::string, std::vector<std::string>>; // "namespace::Type": where

/// Types outside unnamed namespaces. The style has them, and the namespaces, begin with the line.
void collect(std::istream& in, const std::string& file, Definitions& into) {
    static const std::regex opens(R"(^namespace ?([\w:]*) \{)"), closes(R"(^\} // namespace.*)"),
        defines(R"(^(?:struct|class|enum class) (\w+)(?: final)?(?: :.*)? \{.*)");
    std::vector<std::string> spaces;
    int number = 0;
    for (std::string line; std::getline(in, line);) {
        ++number;
        std::smatch found;
        if (std::regex_search(line, found, opens))
            spaces.push_back(found[1]);
        else if (std::regex_match(line, closes) && !spaces.empty())
            spaces.pop_back();
        else if (std::regex_match(line, found, defines) && !spaces.empty() && !spaces.back().empty())
            into[spaces.back() + "::" + found[1].str()].push_back(file + ":" + std::to_string(number));
    }
}

Definitions ofTheProgram() {
    Definitions all;
    const fs::path source(TAILPOINT_SOURCE);
    for (const char* folder : {"core", "ui", "app"})
        for (const auto& entry : fs::recursive_directory_iterator(source / folder))
            if (const fs::path& path = entry.path(); path.extension() == ".h" || path.extension() == ".cpp") {
                std::ifstream in(path);
                collect(in, fs::relative(path, source).generic_string(), all);
            }
    return all;
}

TEST(ANameOfAType, IsGivenOnce) {
    const Definitions all = ofTheProgram();
    EXPECT_TRUE(all.contains("tailpoint::Sketch") && all.contains("tailpoint::explaining::Board"));
    for (const auto& [name, places] : all)
        EXPECT_EQ(places.size(), 1U) << name << " is defined in " << places.front() << " and in "
                                     << places.back();
}

TEST(ANameOfAType, MayStandInTwoNamespacesOrInAnUnnamedOne) {
    std::istringstream in("namespace a {\nnamespace {\nstruct X {\n};\n} // namespace\nstruct X {\n};\n"
                          "} // namespace a\nnamespace b {\nclass X : public Y {\n};\n} // namespace b\n");
    Definitions found;
    collect(in, "f.h", found);
    EXPECT_EQ(found, (Definitions{{"a::X", {"f.h:6"}}, {"b::X", {"f.h:10"}}}));
}

} // namespace TAILPOINT_FILE
