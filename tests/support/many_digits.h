// SPDX-License-Identifier: MIT
// Arithmetic of 50 and more digits, from Boost: what the core's doubles are measured against.
#pragma once

// GCC 14 inlines Boost's shift of a number into our code, so that it no longer counts as a library's, and
// warns of a limb behind the last: it cannot know that size(), which the loop stops at, is never more than
// there are. Nothing but Boost's own header is let off.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Warray-bounds"
#include <boost/multiprecision/cpp_bin_float.hpp>
#pragma GCC diagnostic pop
