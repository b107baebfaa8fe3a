// SPDX-License-Identifier: MIT
// What is remembered from one start to the next. Values of sketches are not among it: only how a new one
// begins.
#pragma once

#include "core/explain/explain.h"
#include "core/sketch/sketch.h"
#include "ui/style/theme.h"

#include <QByteArray>
#include <QStringList>
#include <QVariantMap>
#include <optional>

namespace tailpoint {

/// Reads and writes the user's settings file at once; holds nothing. Unknown or damaged entries read as
/// defaults.
class Settings {
public:
    QByteArray geometry() const;
    void setGeometry(const QByteArray& geometry);
    QByteArray splitter() const;
    void setSplitter(const QByteArray& state);

    ThemeName theme() const;
    void setTheme(ThemeName theme);

    /// An empty sketch with the units and digits that were set for new ones, at first the program's own.
    Sketch newSketch() const;
    void setNewSketch(const Sketch& like);
    bool beginsLike(const Sketch& sketch) const; ///< in the same units, with the same digits

    bool snapping() const;
    void setSnapping(bool on);
    /// "parallelogram", "triangle", "polygon", "none"
    QString construction() const;
    void setConstruction(const QString& name);
    bool casesOver() const;
    void setCasesOver(bool on);
    bool parallelMarks() const;
    void setParallelMarks(bool on);
    bool shadesTips() const; ///< where the tips of found vectors can lie within the tolerances
    void setShadesTips(bool on);
    bool otherOrder() const;
    void setOtherOrder(bool other);
    /// A change of unit or axis keeps the forces (true) or the numbers.
    bool keepsForces() const;
    void setKeepsForces(bool keeps);

    /// Sections of the panel that are folded.
    QStringList folded() const;
    void setFolded(const QStringList& names);

    /// The lecture view's own look, and whether new parts draw themselves.
    ThemeName lectureTheme() const;
    void setLectureTheme(ThemeName theme);
    std::optional<bool> lectureMoves() const; ///< empty: nobody chose
    void setLectureMoves(bool on);

    /// The solution carries the shown, rounded numbers.
    bool handRounding() const;
    void setHandRounding(bool on);
    Method method() const;
    void setMethod(Method method);
    bool byParallelograms() const;
    void setByParallelograms(bool on);

    /// Standard uncertainties in the solution; empty: not told.
    std::optional<tolerance::UncertaintyAsked> uncertainty() const;
    void setUncertainty(const std::optional<tolerance::UncertaintyAsked>& asked);

    /// The record of practice is kept on the disk.
    bool keepsPractice() const;
    void setKeepsPractice(bool keeps);

    /// How the last figure was exported; names as the dialog writes them.
    QVariantMap exportChoices() const;
    void setExportChoices(const QVariantMap& choices);
    /// How the last handout was made.
    QString handoutForm() const; ///< "html", "pdf", "latex"
    void setHandoutForm(const QString& form);
    bool handoutSolution() const;
    void setHandoutSolution(bool with);
    QString handoutPaper() const; ///< "A4", "Letter"; at first as the country has it
    void setHandoutPaper(const QString& name);

    /// How the sweep was used last; names as its window writes them.
    QVariantMap sweepChoices() const;
    void setSweepChoices(const QVariantMap& choices);

    /// How the last problem sheet was made; names as the dialog writes them.
    QVariantMap problemChoices() const;
    void setProblemChoices(const QVariantMap& choices);

    static constexpr int kMostRecent = 8;
    QStringList recentFiles() const;
    void addRecent(const QString& path);
    void dropRecent(const QString& path);
    void clearRecent();

    /// Somebody has opened or saved a sketch of their own: no welcome any more.
    bool hasBegun() const;
    void setBegun();
};

} // namespace tailpoint
