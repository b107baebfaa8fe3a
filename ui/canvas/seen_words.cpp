#include "ui/canvas/seen_words.h"

#include "ui/canvas/canvas.h"
#include "ui/canvas/force_edits.h"
#include "ui/canvas/words.h"
#include "ui/document/sketch_document.h"

#include <QStringList>
#include <algorithm>

namespace tailpoint {

namespace {

bool isArrow(const Group& group) {
    return group.ends && !group.id.starts_with("other-");
}

QString writtenOn(const Group& group) {
    QStringList texts;
    for (const Item& item : group.items)
        if (const auto* text = std::get_if<Text>(&item)) {
            std::string all;
            for (const Run& run : text->runs)
                all += run.text;
            texts << QString::fromStdString(all);
        }
    return texts.join(QStringLiteral("; "));
}

/// Titles say values too: "Angle between the tails, 65.0°". Without them.
QString withoutValue(const Group& group) {
    const QString title = QString::fromStdString(group.title);
    const auto comma = title.lastIndexOf(QStringLiteral(", "));
    return comma < 0 ? title : title.left(comma);
}

QString ofArc(const Group& group) {
    const QString written = writtenOn(group);
    if (written.isEmpty())
        return withoutValue(group);
    if (group.id.starts_with("direction-")) // its title tells the sense and the axis too
        return QString::fromStdString(group.title);
    return withoutValue(group) + QStringLiteral(", ") + written;
}

QString ofArrow(const Canvas& canvas, const Group& group) {
    const Sketch& sketch = canvas.document().sketch();
    const QString name = words::name(*forceAt(sketch, group.vector)), written = writtenOn(group);
    const QString kind = group.vector == kSumIndex ? words::tr("Resultant %1") : words::tr("Force %1");
    return kind.arg(written.startsWith(name + QStringLiteral(" =")) ? written : name);
}

QString wordsOf(const Canvas& canvas, const Group& group) {
    if (group.id.starts_with("other-"))
        return words::tr("The other answer: %1").arg(writtenOn(group));
    if (isArrow(group))
        return ofArrow(canvas, group);
    switch (group.role) {
    case Role::arc:
        return ofArc(group);
    case Role::construction:
    case Role::locus:
    case Role::axis:
        return QString::fromStdString(group.title);
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
            return isArrow(group) && group.vector == vector &&
                   (group.role == Role::given || group.role == Role::sum);
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
    for (const Group& group : canvas.figure().list.groups)
        if (group.vector == vector && !group.id.starts_with("other-") &&
            (isArrow(group) || group.role == Role::arc)) {
            const QString of = wordsOf(canvas, group);
            isArrow(group) ? parts.prepend(of) : parts.append(of);
        }
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
