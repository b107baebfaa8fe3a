// Check: the answer looked at another way.
#pragma once

#include "ui/document/sketch_document.h"

#include <QString>

namespace tailpoint {

/// Rich text: the components added up by hand, how many digits agree, the residual. Empty without an answer.
QString checkText(const Result& result);

/// Decimal digits to which the plain sum of the forces' components agrees with the sum's own, 0..15, of the
/// greatest magnitude among them.
int agreeingDigits(const Solution& solution);

} // namespace tailpoint
