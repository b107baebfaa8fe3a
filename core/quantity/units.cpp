#include "core/quantity/units.h"
