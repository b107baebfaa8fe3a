#include "ui/document/angle_names.h"

#include "core/explain/explain.h"

namespace tailpoint {

std::vector<AngleName> angleNames(const Result& result, std::size_t solution, Stage by, bool parallelograms) {
    if (solution >= result.solved.solutions.size())
        return {};
    ExplainOptions options;
    options.parallelograms = parallelograms;
    const bool hasTails = parallelograms || result.constructionOf(solution).parallelogram.has_value();
    const auto worked = result.worked(options, solution);
    const StepKey others = solution == 0 ? StepKey::second : StepKey::first;
    std::vector<AngleName> names;
    for (const Step& step : worked->steps)
        for (const AngleName& name : step.angles)
            if (step.stage <= by && step.key != others && (hasTails || name.angle.what != What::between))
                names.push_back(name);
    return names;
}

} // namespace tailpoint
