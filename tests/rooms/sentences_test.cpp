// SPDX-License-Identifier: MIT
// Every sentence of core/explain is one whole literal in SENTENCE: what the tool that collects texts for
// translators finds (lupdate of Qt, by an alias) is what the compiler sees, and no sentence goes without it.
#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <memory>
#include <regex>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace TAILPOINT_FILE {

namespace fs = std::filesystem;

using Sentence = std::pair<std::string, std::string>; // context, text
using Sentences = std::set<Sentence>;

std::string outputOf(const std::string& command) {
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    std::string out;
    std::array<char, 65536> buffer;
    for (std::size_t got = 0; pipe && (got = fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;)
        out.append(buffer.data(), got);
    return out;
}

std::vector<fs::path> sources() {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(fs::path(TAILPOINT_SOURCE) / "core/explain"))
        if (entry.path().extension() == ".cpp")
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

/// A folder of its own that goes with it.
struct Scratch {
    Scratch() {
        std::string pattern = (fs::temp_directory_path() / "tailpoint-sentences-XXXXXX").string();
        path = mkdtemp(pattern.data());
    }
    ~Scratch() {
        std::error_code ignored;
        fs::remove_all(path, ignored);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    fs::path path;
};

/// core/explain as the preprocessor leaves it, with SENTENCE standing there unexpanded.
std::string preprocessed(const fs::path& folder) {
    std::ofstream all(folder / "all.cpp");
    for (const fs::path& file : sources())
        all << "#include \"" << file.string() << "\"\n";
    all.close();
    return outputOf(std::string(TAILPOINT_CXX) +
                    " -std=c++20 -E -DTAILPOINT_KEEP_SENTENCES -I'" TAILPOINT_SOURCE
                    "' -isystem '" TAILPOINT_EIGEN "' '" +
                    (folder / "all.cpp").string() + "'");
}

/// The lines that come from core/explain itself.
std::string ownLines(const std::string& text) {
    static const std::regex marker(R"re(^# \d+ "([^"]*)".*)re");
    std::string own;
    bool inside = false;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string line = text.substr(at, end - at);
        std::smatch file;
        if (line.starts_with("# ") && std::regex_match(line, file, marker))
            inside = file[1].str().find("/core/explain/") != std::string::npos;
        else if (inside)
            own += line + '\n';
        at = end + 1;
    }
    return own;
}

/// Adjacent literals from `at` on as one, at its end `at` is behind them; empty where there is none.
std::string literal(const std::string& text, std::size_t& at) {
    std::string out;
    while (true) {
        const std::size_t open = text.find_first_not_of(" \n", at);
        if (open == std::string::npos || text[open] != '"')
            return out;
        std::size_t i = open + 1;
        for (; text[i] != '"'; ++i) {
            if (text[i] == '\\')
                ++i;
            out += text[i];
        }
        at = i + 1;
    }
}

/// Whether some words of a language stand in it.
bool isSentence(const std::string& text) {
    static const std::regex words("[A-Za-z]{2,} [A-Za-z]{2,}");
    static const std::regex markup(R"([<>\\=;]|^[a-z-]+: )");
    return std::regex_search(text, words) && !std::regex_search(text, markup);
}

struct Read {
    Sentences sentences;
    std::vector<std::string> strays; ///< sentences outside the macro
};

Read read(const std::string& text) {
    Read out;
    static const std::string macro = "SENTENCE(";
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text.compare(at, macro.size(), macro) == 0) {
            at += macro.size();
            const std::string context = literal(text, at);
            at = text.find(',', at) + 1;
            out.sentences.emplace(context, literal(text, at));
        } else if (text.compare(at, 3, "R\"(") == 0) { // style sheets and preambles
            at = text.find(")\"", at) + 1;
        } else if (text[at] == '\'') {
            at = text.find('\'', at + (text[at + 1] == '\\' ? 3 : 2));
        } else if (text[at] == '"') {
            if (const std::string stray = literal(text, at); isSentence(stray))
                out.strays.push_back(stray);
            --at;
        }
    }
    return out;
}

std::string unescaped(std::string xml) {
    for (const auto& [from, to] :
         {std::pair{"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&apos;", "'"}, {"&amp;", "&"}})
        for (auto at = xml.find(from); at != std::string::npos; at = xml.find(from, at + 1))
            xml.replace(at, std::string_view(from).size(), to);
    return xml;
}

Sentences collectedByLupdate(const fs::path& folder) {
    const fs::path catalogue = folder / "all.ts";
    outputOf(std::string("'" TAILPOINT_LUPDATE "' -silent -tr-function-alias QT_TRANSLATE_NOOP+=SENTENCE '") +
             TAILPOINT_SOURCE "/core/explain' -ts '" + catalogue.string() + "' 2>&1");
    std::ifstream file(catalogue);
    const std::string xml((std::istreambuf_iterator<char>(file)), {});
    static const std::regex part("<name>([^<]*)</name>|<source>([^<]*)</source>");
    Sentences out;
    std::string context;
    for (std::sregex_iterator i(xml.begin(), xml.end(), part), end; i != end; ++i)
        if ((*i)[1].matched)
            context = unescaped((*i)[1].str());
        else
            out.emplace(context, unescaped((*i)[2].str()));
    return out;
}

TEST(Sentences, AreWholeLiteralsThatATranslatorIsGiven) {
    if (std::string_view(TAILPOINT_LUPDATE).empty())
        GTEST_SKIP() << "lupdate is not installed (package qt6-l10n-tools)";
    const Scratch scratch;
    const Read compiled = read(ownLines(preprocessed(scratch.path)));
    EXPECT_GT(compiled.sentences.size(), 150U);
    for (const std::string& stray : compiled.strays)
        ADD_FAILURE() << "a sentence without SENTENCE: " << stray;
    const Sentences collected = collectedByLupdate(scratch.path);
    for (const Sentence& sentence : compiled.sentences)
        EXPECT_TRUE(collected.contains(sentence)) << "lupdate doesn't find: " << sentence.second;
    EXPECT_EQ(collected.size(), compiled.sentences.size());
    for (const auto& [context, text] : compiled.sentences)
        EXPECT_EQ(std::count(text.begin(), text.end(), '{'), std::count(text.begin(), text.end(), '}'))
            << text;
}

/// The reader itself: what it takes for a stray sentence.
TEST(Sentences, AStrayOneIsSeen) {
    const Read seen =
        read("say(\"Two forces act.\"); x(SENTENCE(\"solution\", \"One {p} \"\n \"acts.\")); y(\"<p "
             "class=\\\"a b\\\">\");");
    EXPECT_EQ(seen.strays, std::vector<std::string>{"Two forces act."});
    EXPECT_EQ(seen.sentences, (Sentences{{"solution", "One {p} acts."}}));
}

} // namespace TAILPOINT_FILE
