// SPDX-License-Identifier: MIT
// Lines of "name magnitude direction", as they come from a spreadsheet or a note.
#include "ui/document/given_edits.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <set>

namespace tailpoint {

namespace {

struct Lines {
    Q_DECLARE_TR_FUNCTIONS(Lines)
};

struct Fields {
    QString name, magnitude, direction;
};
/// A force, and what is worth saying about how it was read.
struct Pasted {
    Force force;
    QString understood;
};
using Read = std::variant<Pasted, Refused>;

/// A sheet with the same units and axis and one force on it: each line is read by itself, however many there
/// are.
Sketch bareSheet(const Sketch& sketch) {
    Sketch bare = sketch;
    bare.forces.assign(1, Force{});
    bare.forces[0].name.assign(1, 'P');
    bare.sum = emptySketch().sum;
    bare.smallest.reset();
    return bare;
}

Read readFields(Sketch sheet, const Fields& fields) {
    sheet.sum.name.assign(
        1, fields.name == QLatin1String("R") ? 'S' : 'R'); // names are compared where all are known
    const std::pair<Entry, QString> cells[]{{Entry::magnitude, fields.magnitude},
                                            {Entry::direction, fields.direction}};
    QString understood;
    for (const auto& [cell, typed] : cells) {
        Outcome outcome = typedInto(sheet, 0, cell, typed);
        if (auto* refused = std::get_if<Refused>(&outcome)) {
            return std::move(*refused);
        }
        auto& accepted = std::get<Accepted>(outcome);
        sheet = std::move(accepted.sketch);
        understood = understood.isEmpty() && cell == Entry::magnitude ? accepted.understood : understood;
    }
    sheet.forces[0].name = fields.name.toStdString();
    if (const auto fault = firstFault(sheet)) {
        return Refused{QString::fromStdString(fault->message)};
    }
    return Pasted{sheet.forces[0], understood};
}

/// "25 100": two numbers where there is room for one. Spaces part the fields of such a line, so they don't
/// group the digits of an angle too.
bool holdsTwoNumbers(const QString& direction) {
    static const QRegularExpression apart(QStringLiteral("\\d \\d"));
    return direction.contains(apart);
}

Refused twoSplits() {
    return {Lines::tr("its fields can be told apart in two ways; put tabs between them")};
}

/// A unit or a grouping may put spaces inside a field: the only split whose fields all read is taken; where
/// none does, the reason of the plain one is told.
Read readSpaced(const Sketch& sheet, const QStringList& parts) {
    std::optional<Read> plain, taken;
    for (qsizetype at = 2; at < parts.size(); ++at) {
        const QString direction = parts.mid(at).join(u' ');
        Read read = readFields(sheet, {parts[0], parts.mid(1, at - 1).join(u' '), direction});
        if (std::holds_alternative<Pasted>(read) && holdsTwoNumbers(direction)) {
            read = Refused{
                Lines::tr("'%1' holds two numbers; put tabs between the fields").arg(direction.left(40))};
        }
        if (std::holds_alternative<Refused>(read)) {
            plain = plain ? plain : std::optional(std::move(read));
        } else if (taken) {
            return twoSplits();
        } else {
            taken = std::move(read);
        }
    }
    return taken ? *taken : *plain;
}

Read readLine(const Sketch& sheet, const QString& line) {
    const bool tabs = line.contains(u'\t');
    const QStringList parts = tabs ? line.split(u'\t') : line.simplified().split(u' ');
    if (parts.size() < 3 || (tabs && parts.size() > 3)) {
        return Refused{
            Lines::tr("expected a name, a magnitude and a direction, with tabs or spaces between")};
    }
    return tabs ? readFields(sheet, {parts[0], parts[1], parts[2]}) : readSpaced(sheet, parts);
}

Refused atLine(int number, const QString& message) {
    return {Lines::tr("Line %1: %2").arg(number).arg(message)};
}

/// The names of a table's columns, above it: no field of them has a digit or asks for a value.
bool isHeading(const QString& line) {
    return std::none_of(line.begin(), line.end(), [](QChar c) { return c.isDigit() || c == u'?'; });
}

Outcome finished(Sketch after, std::size_t before, const QString& understood) {
    const std::size_t added = after.forces.size() - before;
    if (added == 0) {
        return Refused{Lines::tr("Nothing to paste: copy lines of name, magnitude and direction first")};
    }
    if (const auto fault = firstFault(after)) {
        return Refused{QString::fromStdString(fault->message)};
    }
    const QString count = added == 1 ? Lines::tr("1 force added") : Lines::tr("%1 forces added").arg(added);
    return Accepted{std::move(after),
                    understood.isEmpty() ? count : Lines::tr("%1 (%2)").arg(count, understood)};
}

} // namespace

Outcome withLinesAdded(const Sketch& sketch, const QString& lines) {
    const Sketch sheet = bareSheet(sketch);
    Sketch after = sketch;
    std::set<std::string> names{sketch.sum.name};
    for (const Force& force : sketch.forces) {
        names.insert(force.name);
    }
    int number = 0;
    QString understood;
    for (const QString& line :
         QString(lines).replace(QLatin1String("\r\n"), QLatin1String("\n")).split(u'\n')) {
        ++number;
        if (line.trimmed().isEmpty() || (number == 1 && isHeading(line))) {
            continue;
        }
        Read read = readLine(sheet, line.trimmed());
        if (auto* refused = std::get_if<Refused>(&read)) {
            return atLine(number, refused->message);
        }
        auto& [force, said] = std::get<Pasted>(read);
        understood = understood.isEmpty() ? said : understood;
        if (!names.insert(force.name).second) {
            const QString name = QString::fromStdString(force.name);
            return atLine(number, Lines::tr("the name %1 is taken; give this force another").arg(name));
        }
        after.forces.push_back(std::move(force));
    }
    return finished(std::move(after), sketch.forces.size(), understood);
}

} // namespace tailpoint
