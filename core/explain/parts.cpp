// SPDX-License-Identifier: MIT
#include "core/explain/parts.h"

#include "core/construct/reduction.h"

namespace tailpoint::explaining {

namespace {

using Kind = FigurePart::Kind;

FigureShape shape(FigureShape::Kind kind, int vector) {
    return {kind, vectorId(vector)};
}

} // namespace

tailpoint::FigurePart part(Kind kind, int vector, int other) {
    switch (kind) {
    case Kind::vector:
        return sideId(vector);
    case Kind::direction:
        return directionId(sideId(vector));
    case Kind::tails:
        return betweenId(sideId(vector), sideId(other));
    case Kind::opposite:
        return oppositeId(sideId(vector));
    case Kind::parallelogram:
        return shape(FigureShape::Kind::parallelogram, vector);
    case Kind::triangle:
        return shape(FigureShape::Kind::triangle, vector);
    case Kind::polygon:
        return shape(FigureShape::Kind::polygon, vector);
    case Kind::locus:
        return shape(FigureShape::Kind::locus, vector);
    case Kind::axis:
        break;
    }
    return shape(FigureShape::Kind::axis, vector);
}

AngleName named(const tailpoint::FigurePart& angle, const Formula& symbol) {
    const bool isAngle = symbol.id.what == What::between || symbol.id.what == What::opposite;
    const bool isOfPair = isAngle && symbol.id.part > 0;
    return {isOfPair ? symbol.id : std::get<QuantityId>(angle), {symbol.text, symbol.sub, symbol.slant}};
}

tailpoint::FigurePart arrowPart(int vector) {
    return sideId(vector);
}

} // namespace tailpoint::explaining
