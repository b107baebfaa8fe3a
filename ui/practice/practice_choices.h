// SPDX-License-Identifier: MIT
// What can be practised: every family at each of its levels, a problem by its code, and the samples as worked
// examples. Nothing here has an answer.
#pragma once

#include "core/practice/problem.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace tailpoint {

struct PracticeChoice {
    QString group;       ///< "Two forces and their resultant", "Worked examples"
    QString title;       ///< "Level 1: magnitudes in tens …", a sample's title
    QStringList details; ///< what is asked, from where directions are measured, what is easily missed
    QString words;       ///< all that it is found by, in small letters
    ProblemId problem;   ///< its number is a code's; with an empty family a sample
    bool isCoded = false;
    QString sample; ///< the resource
};

/// Families, then samples that have an answer. Reads the samples: ask once.
std::vector<PracticeChoice> practiceChoices();
/// The problem of a code that was read aloud; empty where it is none.
std::optional<PracticeChoice> choiceOfCode(const QString& code);
/// A sample of the resources; empty: there is none, or it can't be read.
std::optional<Sketch> sampleSketch(const QString& path);
/// Every word of the query begins one of its words; a number is one of them.
bool matches(const PracticeChoice& choice, const QString& query);

} // namespace tailpoint
