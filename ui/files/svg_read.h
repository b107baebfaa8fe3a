// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>

namespace tailpoint {

/// The sketch's JSON from a SVG of ours; empty where there is none. Reads <metadata> and nothing else.
QByteArray sketchJsonFromSvg(const QByteArray& svg);

} // namespace tailpoint
