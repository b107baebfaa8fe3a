// Lists in running text. Internal to explain/.
#pragma once

#include "core/explain/wording.h"

namespace tailpoint::explaining {

/// "P", "P and Q", "P, Q and S".
Prose listed(const Voice& voice, std::vector<Prose> items);

} // namespace tailpoint::explaining
