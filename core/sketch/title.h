// How long a title may be: every output lays it out, and somebody may paste a book.
#pragma once

#include <cstddef>

namespace tailpoint {

inline constexpr std::size_t kLongestTitle = 500; ///< code points, about half a page; the schema says it too

} // namespace tailpoint
