// Names, numbers and units as the panel sets them: symbols in serif italic with a real subscript, digits and
// units upright, U+2212 for the minus.
#pragma once

#include <QString>
#include <string>
#include <string_view>

namespace tailpoint {

/// Rich text for labels, the name in two parts as everywhere (symbolOfName): "F12" is F with subscript 12,
/// "T_A" T with subscript A. `name` is escaped.
QString symbolHtml(std::string_view name);
/// The same with a further subscript in words or letters: R_x.
QString symbolHtml(std::string_view name, const QString& subscript);
/// The same within a text that is set in the serif font already.
QString symbolInSerif(std::string_view name);

/// Shown values and words (ASCII) as the window writes them: a sign '-' becomes U+2212, a hyphen stays.
QString onScreen(std::string_view shown);
QString onScreen(const QString& shown);

/// Core's text as it is.
QString text(std::string_view utf8);

} // namespace tailpoint
