// SPDX-License-Identifier: MIT
#include "ui/canvas/seen_words.h"

#include "core/construct/reduction.h"
#include "core/figure/words.h"
#include "ui/canvas/canvas.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"
#include "ui/document/sketch_document.h"

#include <QStringList>
#include <algorithm>

namespace tailpoint {

namespace {

QString writtenOn(const Group& group) {
    QStringList texts;
    for (const Item& item : group.items)
        if (const auto* text = std::get_if<Text>(&item))
            texts << QString::fromStdString(plainText(text->runs));
    return texts.join(QStringLiteral("; "));
}

bool isDirection(const Group& group) {
    const auto* quantity = group.part ? std::get_if<QuantityId>(&*group.part) : nullptr;
    return quantity != nullptr && quantity->what == What::direction;
}

QString ofArc(const Group& group) {
    const QString written = writtenOn(group);
    if (isDirection(group) && !written.isEmpty()) // its title tells the sense and the axis too
        return QString::fromStdString(group.title.whole());
    return QString::fromStdString(Title{group.title.name, written.toStdString()}.whole());
}

bool saysMagnitude(const Group& arrow) {
    const FigurePart magnitude = magnitudeId(vectorOf(arrow));
    return std::any_of(arrow.items.begin(), arrow.items.end(), [&](const Item& item) {
        const auto* text = std::get_if<Text>(&item);
        return text && text->part == magnitude;
    });
}

QString ofArrow(const Canvas& canvas, const Group& group) {
    const Sketch& sketch = canvas.document().sketch();
    const int vector = indexOf(vectorOf(group));
    const QString kind = vector == kSumIndex ? words::tr("Resultant %1") : words::tr("Force %1");
    return kind.arg(saysMagnitude(group) ? writtenOn(group) : words::name(*forceAt(sketch, vector)));
}

QString wordsOf(const Canvas& canvas, const Group& group) {
    if (group.otherAnswer)
        return words::tr("The other answer: %1").arg(writtenOn(group));
    if (isArrow(group))
        return ofArrow(canvas, group);
    switch (group.role) {
    case Role::arc:
        return ofArc(group);
    case Role::given: // a line of action
    case Role::sum:
    case Role::construction:
    case Role::locus:
    case Role::axis:
    case Role::region:
        return QString::fromStdString(group.title.whole());
    case Role::label:
    case Role::titleblock:
        return writtenOn(group);
    default:
        return {};
    }
}

} // namespace

std::vector<int> vectorsSeen(const Canvas& canvas) {
    std::vector<int> seen;
    const auto& groups = canvas.figure().list.groups;
    const auto isDrawn = [&](int vector) {
        return std::any_of(groups.begin(), groups.end(), [&](const Group& group) {
            return isArrow(group) && vectorOf(group) == vectorId(vector);
        });
    };
    const auto forces = static_cast<int>(canvas.document().sketch().forces.size());
    for (int i = 0; i < forces; ++i)
        if (isDrawn(i))
            seen.push_back(i);
    if (isDrawn(kSumIndex))
        seen.push_back(kSumIndex);
    return seen;
}

QString wordsSeen(const Canvas& canvas, int vector) {
    QStringList parts;
    const VectorId who = vectorId(vector);
    for (const Group& group : canvas.figure().list.groups)
        if (isArrow(group) && vectorOf(group) == who)
            parts.prepend(wordsOf(canvas, group));
        else if (group.part == FigurePart(directionId(who)) || group.part == FigurePart(slopeId(who)))
            parts.append(wordsOf(canvas, group));
    return parts.join(QStringLiteral(". "));
}

QString wordsSeen(const Canvas& canvas) {
    QStringList parts;
    for (const Group& group : canvas.figure().list.groups)
        if (const QString of = wordsOf(canvas, group); !of.isEmpty() && !parts.contains(of))
            parts << of;
    return parts.join(QStringLiteral(". "));
}

} // namespace tailpoint
