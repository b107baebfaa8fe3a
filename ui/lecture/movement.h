// SPDX-License-Identifier: MIT
// Whether the desktop wants things to move.
#pragma once

class QString;

namespace tailpoint {

/// What the person set for the whole desktop: no, where its animations are off. Qt 6.4 tells it through the
/// style alone (QStyle::SH_Widget_Animation_Duration), and its own styles don't ask the desktop; so the
/// desktop's own settings are read too. Yes, where nobody says.
bool desktopMoves();

// Parts of it, for the tests.
bool kdeMoves(const QString& kdeglobals); ///< the file; [KDE] AnimationDurationFactor=0 is off
bool gtkMoves(const QString& settings);   ///< the file; [Settings] gtk-enable-animations=0 is off
bool gnomeMoves(const QString& answer);   ///< of gsettings: "false" is off

} // namespace tailpoint
