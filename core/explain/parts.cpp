#include "core/explain/parts.h"

namespace tailpoint::explaining {

FigurePart part(FigurePart::Kind kind, int vector, int other) {
    return {kind, vector, other};
}

AngleName named(FigurePart angle, const Formula& symbol) {
    return {angle, symbol.text, symbol.sub};
}
FigurePart arrowPart(int vector) {
    return {FigurePart::Kind::vector, vector, kNoVector};
}

} // namespace tailpoint::explaining
