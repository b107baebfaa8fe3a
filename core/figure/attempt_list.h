// SPDX-License-Identifier: MIT
// Strokes of an answer that was marked as a display list of their own, to be painted over a figure: thin, the
// learner's dashed, their labels clear of everything that stands there.
#pragma once

#include "core/figure/attempt_strokes.h"

#include <span>

namespace tailpoint {

/// `under`: the figure; `taken`: where else no label may stand, points on the sheet. Painting order: what is
/// right comes last, and nothing lies over it.
DisplayList attemptList(const std::vector<AttemptStroke>& strokes, const DisplayList& under, const View& view,
                        const Style& style, const TextMeasure& measure, std::span<const Box> taken = {});

} // namespace tailpoint
