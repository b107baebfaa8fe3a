// SPDX-License-Identifier: MIT
#include "app/verbs.h"

#include "app/gui.h"

#include <array>

namespace tailpoint {

namespace {

template <auto door>
int behind(int argc, char** argv) {
    const Gui* part = gui();
    return part ? (part->*door)(argc, argv) : kBad;
}

constexpr std::array kVerbs{Verb{"report", runReport}, Verb{"figure", behind<&Gui::figure>},
                            Verb{"mark", behind<&Gui::mark>}, Verb{"sweep", behind<&Gui::sweep>},
                            Verb{"problems", behind<&Gui::problems>}};

} // namespace

const Verb* verbNamed(const QString& name) {
    for (const Verb& verb : kVerbs)
        if (name == QLatin1String(verb.name))
            return &verb;
    return nullptr;
}

QString verbNames() {
    QStringList names;
    for (const Verb& verb : kVerbs)
        names << QLatin1String(verb.name);
    return names.join(QStringLiteral(", "));
}

QString generalHelp() {
    return QStringLiteral(R"(Tailpoint sketches concurrent planar forces and says what they amount to.

Usage:
  tailpoint [FILE]                              opens the window
  tailpoint report FILE [--as text|json|html|latex] [--rounding full|hand] [-o OUT]
                                                values and worked solution
  tailpoint report FILE... --as csv [-o OUT]    a table: a row a file and solution
  tailpoint figure FILE -o OUT.svg|OUT.pdf|OUT.png|OUT.tex [options]
                                                the figure
  tailpoint report|figure FILE... [--as FORM] -o DIR
                                                a report or a figure each, in a folder
  tailpoint sweep FILE --vary "direction of A" --from 0 --to 90 [--steps N] [--as csv|json|svg] [-o OUT]
                                                one given value varied: curves, least and greatest
  tailpoint mark FILE --answer NAME=VALUE ... | --answers CLASS.csv [--as text|json|csv|html] [-o OUT]
                                                an answer or a class marked, and which slip gives its numbers
  tailpoint mark --key DIR --answers CLASS.csv  a class whose students had problems of their own
  tailpoint problems --family NAME --count N --seed S [--level L] [--roster NAMES.txt] -o DIR
                                                problem sheets with other numbers each, and their key
  tailpoint VERB --help                         more about a verb
  tailpoint --version

FILE may be '-' (standard input) for a verb. Verbs need no display.
Exit status: 0 done (one answer or two); 1 the question has none, infinitely many, or too few or too many
unknowns, or an answer that is marked is not right; 2 bad input or usage, with one line on standard error.
)");
}

} // namespace tailpoint
