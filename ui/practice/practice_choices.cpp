// SPDX-License-Identifier: MIT
#include "ui/practice/practice_choices.h"

#include "core/explain/question.h"
#include "core/practice/families.h"
#include "core/solve/solve.h"
#include "ui/files/sketch_json.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTextDocumentFragment>

namespace tailpoint {

namespace {

struct Choices {
    Q_DECLARE_TR_FUNCTIONS(Choices)
};

PracticeChoice levelChoice(const FamilyEntry& family, int level) {
    const LevelEntry& entry = family.levels[static_cast<std::size_t>(level - 1)];
    PracticeChoice choice;
    choice.group = text(family.title);
    choice.title = Choices::tr("Level %1: %2").arg(level).arg(text(entry.numbers));
    choice.details << text(family.asks) << Choices::tr("Directions: %1.").arg(text(entry.reference))
                   << Choices::tr("Easily missed: %1.").arg(text(entry.traps));
    choice.problem = {std::string(family.id), level, 0};
    QStringList words{choice.group, choice.title, choice.details.join(u' '), text(family.id)};
    for (const SceneEntry& scene : family.scenes)
        words << text(scene.title);
    choice.words = words.join(u' ').toLower();
    return choice;
}

std::optional<PracticeChoice> sampleChoice(const QString& path) {
    const auto sketch = sampleSketch(path);
    if (!sketch)
        return std::nullopt;
    const Solved solved = solve(*sketch);
    if (solved.solutions.empty() || solved.family == Family::check)
        return std::nullopt;
    PracticeChoice choice;
    choice.group = Choices::tr("Worked examples");
    choice.title = text(sketch->title);
    choice.details << QTextDocumentFragment::fromHtml(htmlOf(question(*sketch))).toPlainText();
    choice.sample = path;
    choice.words = QStringList{choice.group, choice.title, choice.details.front()}.join(u' ').toLower();
    return choice;
}

} // namespace

std::vector<PracticeChoice> practiceChoices() {
    std::vector<PracticeChoice> all;
    for (const FamilyEntry& family : problemFamilies())
        for (int level = 1; level <= kLevels; ++level)
            all.push_back(levelChoice(family, level));
    const QDir samples(QStringLiteral(":/samples"));
    for (const QString& name : samples.entryList({QStringLiteral("*.json")}))
        if (auto choice = sampleChoice(samples.filePath(name)))
            all.push_back(std::move(*choice));
    return all;
}

std::optional<PracticeChoice> choiceOfCode(const QString& code) {
    const auto id = problemIdOf(code.trimmed().toStdString());
    const FamilyEntry* family = id ? familyNamed(id->family) : nullptr;
    if (family == nullptr)
        return std::nullopt;
    PracticeChoice choice = levelChoice(*family, id->level);
    choice.title = Choices::tr("Problem %1, level %2").arg(text(problemCode(*id))).arg(id->level);
    choice.problem = *id;
    choice.isCoded = true;
    return choice;
}

std::optional<Sketch> sampleSketch(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    auto read = readSketch(file.readAll());
    auto* sketch = std::get_if<Sketch>(&read);
    return sketch != nullptr ? std::optional(std::move(*sketch)) : std::nullopt;
}

bool matches(const PracticeChoice& choice, const QString& query) {
    for (const QString& word : query.toLower().split(u' ', Qt::SkipEmptyParts))
        if (!choice.words.contains(
                QRegularExpression(QStringLiteral("(?<!\\w)%1%2")
                                       .arg(QRegularExpression::escape(word),
                                            word.back().isDigit() ? QStringLiteral("(?!\\w)") : QString()))))
            return false;
    return true;
}

} // namespace tailpoint
