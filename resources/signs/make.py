#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Draws the signs that grow with a formula - root, parentheses, bar - as a font with a MATH table, so that a
handout in HTML stretches them, and places scripts and fractions, whatever fonts its reader has. Needs fontTools (Debian: python3-fonttools).

    resources/signs/make.py > core/explain/signs_font.cpp
"""
import base64
import io

from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import newTable
from fontTools.ttLib.tables import otTables

EM, AXIS, RULE = 1000, 250, 46  # rule: how thick a root's bar is
HEIGHTS = [round(1000 * 1.16**i) for i in range(15)]  # to eight ems
# A sign is as wide in every size: browsers keep the room of its widest.


def pen_with(*contours):
    """Each contour: points, of which those in a pair with None are off the curve."""
    pen = TTGlyphPen(None)
    for contour in contours:
        pen.moveTo(contour[0])
        for step in contour[1:]:
            pen.qCurveTo(*step) if isinstance(step[0], tuple) else pen.lineTo(step)
        pen.closePath()
    return pen.glyph()


def parenthesis(height, mirrored):
    half, middle = height / 2, AXIS
    bulge, thick, thin = 150, 52 + 0.012 * height, 26
    width = round(bulge + 2 * thin + 110)

    def x(value):
        return round(width - value if mirrored else value)

    top, bottom = round(middle + half), round(middle - half)
    outer, inner = 60, 60 + thick
    end = 60 + bulge
    # Two quadratic arcs a side; at the middle both run straight up.
    points = [
        (x(end + thin), top),
        ((x(outer), round(middle + 0.62 * half)), (x(outer), middle)),
        ((x(outer), round(middle - 0.62 * half)), (x(end + thin), bottom)),
        (x(end + thin * 1.6), bottom),
        ((x(inner), round(middle - 0.6 * half)), (x(inner), middle)),
        ((x(inner), round(middle + 0.6 * half)), (x(end + thin * 1.6), top)),
    ]
    return pen_with(points), width


def bar(height):
    top, bottom = round(AXIS + height / 2), round(AXIS - height / 2)
    return pen_with([(80, bottom), (80, top), (80 + RULE, top), (80 + RULE, bottom)]), 160 + RULE


def root(height):
    """From a tick at the left down to the foot and up to the bar, which goes on at the right end."""
    top = round(AXIS + height / 2)
    bottom = round(AXIS - height / 2)
    tick = round(bottom + min(0.55 * height, 620))
    foot = 330
    right = foot + 330
    return (
        pen_with(
            [
                (60, tick - 60),
                (190, tick),
                (foot + 20, bottom + 190),
                (right - RULE, top),
                (right, top),
                (right, top - RULE),
                (right - 10, top - RULE),
                (foot + 30, bottom),
                (foot - 30, bottom),
                (150, tick - 70),
                (75, tick - 100),
            ]
        ),
        right,
    )


def value(number):
    record = otTables.MathValueRecord()
    record.Value = number
    return record


def math_table(variants):
    """Every sign in its sizes, and where scripts, fractions and roots stand in thousandths of an em."""
    constants = otTables.MathConstants()
    plain = {"ScriptPercentScaleDown": 72, "ScriptScriptPercentScaleDown": 58, "DelimitedSubFormulaMinHeight": 1300,
             "DisplayOperatorMinHeight": 1300, "RadicalDegreeBottomRaisePercent": 60}
    values = {"AxisHeight": AXIS, "RadicalVerticalGap": 70, "RadicalDisplayStyleVerticalGap": 110,
              "RadicalRuleThickness": RULE, "RadicalExtraAscender": RULE,
              "SubscriptShiftDown": 220, "SubscriptTopMax": 370, "SubscriptBaselineDropMin": 160,
              "SuperscriptShiftUp": 370, "SuperscriptShiftUpCramped": 330, "SuperscriptBottomMin": 120,
              "SuperscriptBaselineDropMax": 250, "SubSuperscriptGapMin": 160,
              "SuperscriptBottomMaxWithSubscript": 380, "SpaceAfterScript": 40,
              "FractionRuleThickness": RULE, "FractionNumeratorShiftUp": 420, "FractionDenominatorShiftDown": 380,
              "FractionNumeratorDisplayStyleShiftUp": 640, "FractionDenominatorDisplayStyleShiftDown": 640,
              "FractionNumeratorGapMin": 80, "FractionDenominatorGapMin": 80,
              "FractionNumDisplayStyleGapMin": 130, "FractionDenomDisplayStyleGapMin": 130,
              "OverbarRuleThickness": RULE, "UnderbarRuleThickness": RULE}
    for name in [converter.name for converter in constants.getConverters()]:
        number = plain.get(name, values.get(name, 0))
        setattr(constants, name, number if name in plain else value(number))
    table = otTables.MATH()
    table.Version = 0x00010000
    table.MathConstants = constants
    info = table.MathGlyphInfo = otTables.MathGlyphInfo()  # browsers refuse a table without it
    info.MathItalicsCorrectionInfo = info.MathTopAccentAttachment = None
    info.ExtendedShapeCoverage = info.MathKernInfo = None
    table.MathVariants = otTables.MathVariants()
    table.MathVariants.MinConnectorOverlap = 0
    coverage = otTables.Coverage()
    coverage.glyphs = list(variants)
    table.MathVariants.VertGlyphCoverage = coverage
    table.MathVariants.HorizGlyphCoverage = None
    constructions = []
    for glyphs in variants.values():
        construction = otTables.MathGlyphConstruction()
        construction.GlyphAssembly = None
        construction.MathGlyphVariantRecord = []
        for name, height in glyphs:
            record = otTables.MathGlyphVariantRecord()
            record.VariantGlyph, record.AdvanceMeasurement = name, height
            construction.MathGlyphVariantRecord.append(record)
        construction.VariantCount = len(glyphs)
        constructions.append(construction)
    table.MathVariants.VertGlyphConstruction = constructions
    table.MathVariants.VertGlyphCount = len(constructions)
    table.MathVariants.HorizGlyphConstruction = []
    table.MathVariants.HorizGlyphCount = 0
    return table


def font_bytes():
    signs = {"left": (0x28, lambda h: parenthesis(h, False)), "right": (0x29, lambda h: parenthesis(h, True)),
             "bar": (0x7C, bar), "root": (0x221A, root)}
    glyphs, metrics, variants, order = {".notdef": TTGlyphPen(None).glyph()}, {".notdef": (500, 0)}, {}, [".notdef"]
    for name, (_, draw) in signs.items():
        sizes = []
        for i, height in enumerate(HEIGHTS):
            glyph_name = name if i == 0 else f"{name}{i}"
            glyph, width = draw(height)
            glyphs[glyph_name], metrics[glyph_name] = glyph, (width, 0)
            order.append(glyph_name)
            sizes.append((glyph_name, height))
        variants[name] = sizes
    order_of = {name: i for i, name in enumerate(order)}
    variants = dict(sorted(variants.items(), key=lambda item: order_of[item[0]]))
    builder = FontBuilder(EM, isTTF=True)
    builder.setupGlyphOrder(order)
    builder.setupCharacterMap({code: name for name, (code, _) in signs.items()})
    builder.setupGlyf(glyphs)
    for name in order:
        glyph = builder.font["glyf"][name]
        metrics[name] = (metrics[name][0], getattr(glyph, "xMin", 0) or 0)
    builder.setupHorizontalMetrics(metrics)
    builder.setupHorizontalHeader(ascent=750, descent=-250)
    builder.setupNameTable({"familyName": "Tailpoint Signs", "styleName": "Regular"})
    builder.setupOS2(sTypoAscender=750, sTypoDescender=-250, sxHeight=470, sCapHeight=660, usWinAscent=750, usWinDescent=250)
    builder.setupPost(keepGlyphNames=False)
    builder.font["MATH"] = newTable("MATH")
    builder.font["MATH"].table = math_table(variants)
    builder.font["head"].created = builder.font["head"].modified = 0
    out = io.BytesIO()
    builder.font.recalcTimestamp = False
    builder.save(out)
    return out.getvalue()


def main():
    text = base64.b64encode(font_bytes()).decode()
    lines = [text[i : i + 100] for i in range(0, len(text), 100)]
    print("// SPDX-License-Identifier: MIT\n// Written by resources/signs/make.py; see there.")
    print('#include "core/explain/signs_font.h"\n\nnamespace tailpoint {\n')
    print("std::string_view signsFont() {\n    return")
    print("\n".join(f'        "{line}"' for line in lines) + ";")
    print("}\n\n} // namespace tailpoint")


main()
