#include "ui/panel/check_text.h"

#include "core/quantity/decimals.h"
#include "core/sketch/shown.h"
#include "ui/panel/answer_text.h"
#include "ui/style/symbols.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace tailpoint {

namespace {

struct Check {
    Q_DECLARE_TR_FUNCTIONS(Check)
};

/// "5.7 . 10^-14 N": a residual is a matter of its power of ten.
QString residualHtml(double residual, const Sketch& sketch) {
    const QString unit = QStringLiteral(" ") + text(symbolOf(sketch.forceUnit));
    if (residual == 0) {
        return QStringLiteral("0") + unit;
    }
    const QString shown = QString::number(residual, 'e', 1);
    const qsizetype mark = shown.indexOf(u'e');
    const int exponent = shown.mid(mark + 1).toInt();
    return QStringLiteral("%1 \u00b7 10<sup>%2</sup>%3")
        .arg(shown.left(mark), onScreen(QString::number(exponent)), unit);
}

constexpr qsizetype kLongestSum = 28; // characters of a written-out sum, before its last term

using Part = double (*)(const Eigen::Vector2d&);

/// One place for all terms of a sum, a digit beyond the sheet's, and up to two more where what stands there
/// could not be added up by hand.
class SumDigits {
public:
    SumDigits(const Solution& solution, Part part, const Sketch& sketch) : m_sketch(sketch) {
        double greatest = std::fabs(part(solution.sum.vector));
        for (const SolvedForce& each : solution.forces) {
            greatest = std::max(greatest, std::fabs(part(each.vector)));
        }
        m_decimals = greatest > 0 ? sketch.figures - static_cast<int>(std::floor(std::log10(greatest))) : 0;
        for (int more = 0; more <= 2 && !m_addsUp; ++more) {
            m_addsUp = addsUp(solution, part, m_decimals + more);
            m_decimals += m_addsUp ? more : 0;
        }
    }
    bool addsUp() const { return m_addsUp; } ///< the terms as shown make the sum as shown
    QString shown(double value) const {
        const bool plain = m_decimals <= 12 && m_decimals >= -6;
        return onScreen(plain ? fixedDecimals(value, std::max(0, m_decimals)) : shownForce(value, m_sketch));
    }

private:
    static bool addsUp(const Solution& solution, Part part, int decimals) {
        const double place = std::pow(10.0, std::max(0, decimals));
        double sum = 0;
        for (const SolvedForce& each : solution.forces) {
            sum += std::nearbyint(part(each.vector) * place);
        }
        return sum == std::nearbyint(part(solution.sum.vector) * place);
    }

    const Sketch& m_sketch;
    int m_decimals = 0;
    bool m_addsUp = false;
};

/// "x: 308.1 + 210.7 = 518.8 N"; long sums are counted.
QString sumLine(const QString& axis, Part part, const Solution& solution, const Sketch& sketch) {
    const SumDigits digits(solution, part, sketch);
    QString terms;
    for (const SolvedForce& each : solution.forces) {
        if (terms.size() > kLongestSum) {
            terms = Check::tr("sum of %1 components").arg(solution.forces.size());
            break;
        }
        const bool minus = part(each.vector) < 0;
        const QString sign = terms.isEmpty() ? minus ? QStringLiteral("\u2212") : QString()
                             : minus ? QStringLiteral(" \u2212 ")
                                             : QStringLiteral(" + ");
        terms += sign + digits.shown(std::fabs(part(each.vector)));
    }
    const QString equals = digits.addsUp() ? QStringLiteral("=") : QStringLiteral("\u2248");
    return Check::tr("%1: %2 %3 %4 %5")
        .arg(axis, terms, equals, digits.shown(part(solution.sum.vector)), text(symbolOf(sketch.forceUnit)));
}

} // namespace

int agreeingDigits(const Solution& solution) {
    Eigen::Vector2d sum{0, 0};
    double scale = solution.sum.magnitude;
    for (const SolvedForce& each : solution.forces) {
        sum += each.vector;
        scale = std::max(scale, each.magnitude);
    }
    const double apart = std::hypot(sum.x() - solution.sum.vector.x(), sum.y() - solution.sum.vector.y());
    if (scale == 0 || apart == 0) {
        return 15;
    }
    return static_cast<int>(std::clamp(std::floor(-std::log10(apart / scale)), 0.0, 15.0));
}

QString checkText(const Result& result) {
    const Solution* solution = shownSolution(result);
    if (!solution) {
        return {};
    }
    const Sketch& sketch = result.sketch;
    const QStringList lines{
        sumLine(
            QStringLiteral("x"), [](const Eigen::Vector2d& v) { return v.x(); }, *solution, sketch),
        sumLine(
            QStringLiteral("y"), [](const Eigen::Vector2d& v) { return v.y(); }, *solution, sketch),
        Check::tr("The sum by components agrees to %1 digits").arg(agreeingDigits(*solution)),
        Check::tr("Residual %1").arg(residualHtml(solution->residual, sketch))};
    return QStringLiteral("<div style=\"line-height:125%\">%1</div>").arg(lines.join(QStringLiteral("<br>")));
}

} // namespace tailpoint
