// SPDX-License-Identifier: MIT
// How long a title may be: every output lays it out, and somebody may paste a book.
#pragma once

#include <cstddef>

namespace tailpoint {

inline constexpr std::size_t kLongestTitle = 500; ///< code points, about half a page; the schema says it too
inline constexpr std::size_t kLongestBlockEntry = 80; ///< the same of who drew and checked it, and of a revision

} // namespace tailpoint
