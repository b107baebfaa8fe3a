// Whether a window can be shown at all. Qt would end the process with an abort where there is no display.
#pragma once

namespace tailpoint {

bool hasDisplay(int argc, char** argv);

} // namespace tailpoint
