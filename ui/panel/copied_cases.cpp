// SPDX-License-Identifier: MIT
#include "ui/panel/copied_cases.h"

#include "core/explain/ranges.h"
#include "core/sketch/shown.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <algorithm>

namespace tailpoint {

namespace {

struct CopiedCases {
    Q_DECLARE_TR_FUNCTIONS(CopiedCases)
};

QuantityId idOf(int vector, CasePart part) {
    const VectorId of = vectorId(vector);
    switch (part) {
    case CasePart::magnitude:
        return magnitudeId(of);
    case CasePart::direction:
        return directionId(of);
    case CasePart::x:
        return {What::x, of};
    case CasePart::y:
        break;
    }
    return {What::y, of};
}

/// "R (N)", "theta_R (deg)".
QString headOf(int vector, CasePart part, const Sketch& sketch, const Things& things) {
    return withUnit(text(things.at(idOf(vector, part)).plain),
                    part == CasePart::direction ? nameOf(sketch.angleUnit) : symbolOf(sketch.forceUnit));
}

class StatesTable {
public:
    StatesTable(const std::vector<CaseState>& states, const Sketch& sketch)
        : m_states(states), m_sketch(sketch), m_things(states.front().sketch) {
        for (const CaseState& state : states)
            m_hasRanges = m_hasRanges || tolerance::boxOf(state.sketch).hasTolerance;
        for (const Envelope& one : envelopesOf(states))
            if (one.answer.value_or(0) == 0 &&
                (one.part == CasePart::magnitude || one.part == CasePart::direction))
                m_found.emplace_back(one.vector, one.part);
    }

    BareTable all() const {
        BareTable table{{CopiedCases::tr("case")}, {}};
        for (const auto& [vector, part] : m_found) {
            const QString head = headOf(vector, part, m_sketch, m_things);
            table.heads << head;
            if (m_hasRanges)
                table.heads << CopiedCases::tr("low: %1").arg(head) << CopiedCases::tr("high: %1").arg(head);
        }
        table.heads << CopiedCases::tr("given differently");
        for (std::size_t s = 0; s < m_states.size(); ++s)
            for (std::size_t a = 0; a < std::max<std::size_t>(1, m_states[s].solved.solutions.size()); ++a)
                table.rows << row({s, a});
        return table;
    }

private:
    QStringList row(const CaseAnswer& which) const {
        const CaseState& state = m_states[which.state];
        const bool hasAnswer = which.answer < state.solved.solutions.size();
        QStringList cells{hasAnswer ? text(nameOf(which, m_states))
                                    : CopiedCases::tr("%1: no answer").arg(text(state.name))};
        for (const auto& [vector, part] : m_found)
            if (hasAnswer)
                cells << values(state, which.answer, vector, part);
            else
                cells << QStringList(m_hasRanges ? 3 : 1);
        const QString changed =
            which.state == 0 ? QString() : text(changesTold(m_sketch.cases[which.state - 1], m_sketch));
        return cells << QString(changed).replace(QChar(0x2212), u'-');
    }

    QStringList values(const CaseState& state, std::size_t answer, int vector, CasePart part) const {
        const Solution& solution = state.solved.solutions[answer];
        const SolvedForce& own =
            vector == kSumIndex ? solution.sum : solution.forces[static_cast<std::size_t>(vector)];
        const bool isAngle = part == CasePart::direction;
        QStringList cells{isAngle ? own.direction ? text(shownAngle(*own.direction, m_sketch)) : QString()
                                  : text(shownForce(own.magnitude, m_sketch))};
        if (m_hasRanges) {
            const auto* range = answer < state.ranges.size() ? state.ranges[answer].find(vector) : nullptr;
            const EndsTold ends = range == nullptr ? EndsTold()
                                  : isAngle        ? endsTold(range->direction, m_sketch)
                                                   : endsTold(range->magnitude, m_sketch);
            cells << text(ends.from) << text(ends.to);
        }
        for (QString& cell : cells)
            cell = bareNumber(cell);
        return cells;
    }

    const std::vector<CaseState>& m_states;
    const Sketch& m_sketch;
    Things m_things;
    bool m_hasRanges = false;
    std::vector<std::pair<int, CasePart>> m_found;
};

/// As it is told in words, its units in the first column.
BareTable envelopeTable(const std::vector<Envelope>& envelopes, const TableTold& told, const Sketch& sketch,
                        const Things& things) {
    BareTable table{{text(told.heading), CopiedCases::tr("least, or from"), CopiedCases::tr("in"),
                     CopiedCases::tr("greatest, or to"), CopiedCases::tr("in")},
                    {}};
    for (std::size_t i = 0; i < envelopes.size() && i < told.table.rows.size(); ++i) {
        const Envelope& one = envelopes[i];
        QString name = headOf(one.vector, one.part, sketch, things);
        if (one.answer)
            name = CopiedCases::tr("%1, answer %2").arg(name).arg(*one.answer + 1);
        QStringList cells{name};
        const std::vector<Formula>& row = told.table.rows[i];
        for (std::size_t c = 1; c < row.size(); ++c) {
            const QString words = text(toText(row[c], Minus::ascii)), number = bareNumber(words);
            const bool isEnd = c == 1 || c == 3; // the others name cases
            cells << (isEnd && !number.isEmpty() ? number : words);
        }
        table.rows << cells;
    }
    return table;
}

} // namespace

std::vector<CaseState> copiedStates(const Result& result) {
    return result.isWithheld ? std::vector<CaseState>() : withRanges(caseStates(result.sketch));
}

QList<BareTable> caseTables(const std::vector<CaseState>& states, const Sketch& sketch) {
    if (states.empty())
        return {};
    QList<BareTable> tables{StatesTable(states, sketch).all()};
    if (const auto envelopes = envelopesOf(states); !envelopes.empty())
        tables << envelopeTable(envelopes, casesTold(sketch, states).back(), sketch,
                                Things(states.front().sketch));
    return tables;
}

QStringList caseLines(const std::vector<CaseState>& states, const Sketch& sketch) {
    QStringList lines;
    const std::vector<TableTold> told = casesTold(sketch, states);
    for (const Prose& remark : told.empty() ? std::vector<Prose>() : told.back().remarks)
        lines << onScreen(toText(remark));
    return lines;
}

} // namespace tailpoint
