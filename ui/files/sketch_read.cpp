// SPDX-License-Identifier: MIT
#include "ui/files/force_read.h"
#include "ui/files/sketch_json.h"
#include "ui/files/sketch_keys.h"
#include "ui/files/svg_read.h"
#include "ui/files/unknown_keys.h"

#include <algorithm>

namespace tailpoint {

namespace {

using namespace reading;
using Kind = JsonValue::Kind;

void readUnits(const At& at, Sketch& sketch) {
    requireObject(at, "write the units, as {\"force\": \"N\", \"angle\": \"deg\"}");
    requireHarmlessKeys(at, KeyPlace::units);
    const At force = at.require("force", "write one of " + forceUnitNames());
    const At angle = at.require("angle", "write one of " + angleUnitNames());
    const std::string& symbol = textIn(force, "write one of " + forceUnitNames() + " in double quotes");
    const auto forceUnit = sheetForceUnitFrom(symbol);
    const auto angleUnit = angleUnitFrom(textIn(angle, "write one of \"deg\", \"rad\", \"gon\""));
    if (!forceUnit && loadUnitFrom(symbol))
        force.refuse(inQuotes(symbol) + " stands beside a value alone, as {\"value\": 1, \"unit\": " +
                     jsonString(symbol) + "}; write one of " + forceUnitNames());
    if (!forceUnit)
        force.refuse(inQuotes(force.value.text) + " is no known unit; write one of " + forceUnitNames());
    if (!angleUnit)
        angle.refuse(inQuotes(angle.value.text) + " is no known unit; write one of " + angleUnitNames());
    sketch.forceUnit = *forceUnit;
    sketch.angleUnit = *angleUnit;
}

double readAxis(const At& at) {
    if (at.is(Kind::number))
        return at.value.number;
    const std::string& name = textIn(at, "write +x, -x, +y, -y in double quotes, or a number of degrees");
    for (const auto& [known, degrees] : kNamedAxes)
        if (name == known)
            return degrees;
    at.refuse(inQuotes(name) + " is no axis; write \"+x\", \"-x\", \"+y\", \"-y\", or a number of degrees");
}

Sense readSense(const At& at) {
    const std::string& word = textIn(at, "write \"ccw\" or \"cw\"");
    if (word != "ccw" && word != "cw")
        at.refuse(inQuotes(word) + " is no sense; write \"ccw\" or \"cw\"");
    return word == "ccw" ? Sense::ccw : Sense::cw;
}

Reference readReference(const std::optional<At>& at) {
    Reference reference;
    if (!at)
        return reference;
    requireObject(*at, "write the reference, as {\"axis\": \"+x\", \"sense\": \"ccw\"}");
    requireHarmlessKeys(*at, KeyPlace::reference);
    if (const auto axis = at->maybe("axis"))
        reference.axisDegrees = readAxis(*axis);
    if (const auto sense = at->maybe("sense"))
        reference.sense = readSense(*sense);
    return reference;
}

void requireVersion(const At& file) {
    const At format = file.require("format", "a sketch begins with \"format\": \"tailpoint-sketch\"");
    if (!format.is(Kind::string) || format.value.text != kSketchFormat)
        format.refuse("is not \"tailpoint-sketch\"; open a sketch");
    const At version = file.require("version", "write \"version\": 1");
    const double number = numberIn(version);
    if (number > kSketchVersion)
        version.refuse("the sketch was written by a newer Tailpoint (version " +
                       version.value.text.substr(0, 40) + "; this one reads version " +
                       std::to_string(kSketchVersion) + "); update Tailpoint");
    if (number != kSketchVersion)
        version.refuse("is no version of the format; write 1");
}

Opaque unknownKeysOfFile(const At& file) {
    return unknownKeysOf(file.value, KeyPlace::sketch,
                         {{"units", KeyPlace::units}, {"reference", KeyPlace::reference}});
}

TitleBlock readTitleBlock(const At& file) {
    TitleBlock block;
    for (const auto& [key, entry] : {std::pair{"drawn", &block.drawn}, std::pair{"checked", &block.checked},
                                     std::pair{"revision", &block.revision}})
        if (const auto at = file.maybe(key); at && !at->is(Kind::null))
            *entry = textIn(*at, "write it in double quotes");
    return block;
}

Sketch readFile(const At& file) {
    requireObject(file, "a sketch is an object and begins with {");
    requireVersion(file);
    requireHarmlessKeys(file, KeyPlace::sketch);
    Sketch sketch;
    if (const auto title = file.maybe("title"))
        sketch.title = textIn(*title, "write the title in double quotes");
    sketch.titleBlock = readTitleBlock(file);
    readUnits(file.require("units", "write \"units\": {\"force\": \"N\", \"angle\": \"deg\"}"), sketch);
    sketch.reference = readReference(file.maybe("reference"));
    if (const auto figures = file.maybe("figures"))
        sketch.figures = integerIn(*figures);
    if (const auto more = file.maybe("moreAfterOne"); more && !more->is(Kind::null))
        sketch.moreAfterOne = truthIn(*more);
    if (const auto decimals = file.maybe("decimals"))
        sketch.angleDecimals = integerIn(*decimals);
    if (const auto gravity = file.maybe("gravity"); gravity && !gravity->is(Kind::null))
        sketch.gravity = numberIn(*gravity);
    sketch.forces = readForces(file.require("forces", "write \"forces\": [ ... ]"), sketch);
    sketch.sum = readSum(file.maybe("sum"), sketch);
    if (const auto smallest = file.maybe("smallest"); smallest && !smallest->is(Kind::null))
        sketch.smallest = textIn(*smallest, "write the name of a force or of the sum in double quotes");
    sketch.cases = readCases(file.maybe("cases"), sketch);
    if (const auto caution = file.maybe("caution"); caution && !caution->is(Kind::null))
        sketch.caution = truthIn(*caution);
    sketch.unknownKeys = unknownKeysOfFile(file);
    return sketch;
}

std::variant<Sketch, FileError> readJson(std::string_view text) {
    const auto parsed = parseJson(text);
    if (const auto* fault = std::get_if<JsonFault>(&parsed))
        return located(text, {}, fault->offset, fault->message);
    const auto& root = std::get<JsonValue>(parsed);
    try {
        Sketch sketch = readFile({root, {}});
        if (const auto fault = firstFault(sketch)) {
            const std::string path =
                fault->place == "angleDecimals" ? "decimals" : fault->place; // its key in files
            return located(text, path, offsetOf(root, path), fault->message);
        }
        return sketch;
    } catch (const Refusal& refusal) {
        return located(text, refusal.path, refusal.offset, refusal.message);
    }
}

std::string_view viewOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

bool isWideText(const QByteArray& bytes) {
    return bytes.startsWith("\xFF\xFE") || bytes.startsWith("\xFE\xFF");
}

/// Files that a sketch is taken for, by their first bytes, and what is to be done.
const char* otherThanSketch(const QByteArray& bytes) {
    static constexpr struct {
        std::string_view begin;
        const char* line;
    } kinds[] = {
        {"%PDF-", "is a PDF, which carries no sketch; open the sketch it was made from, or its SVG"},
        {"\x89PNG", "is a PNG, which carries no sketch; open the sketch it was made from, or its SVG"},
        {"% pdflatex", "is TikZ, which carries no sketch; open the sketch it was made from, or its SVG"},
        {"\x1F\x8B", "is compressed; unpack it first, by gunzip say"},
        {"PK\x03\x04", "is compressed; unpack it first, by unzip say"}};
    for (const auto& kind : kinds)
        if (viewOf(bytes).starts_with(kind.begin))
            return kind.line;
    return nullptr;
}

} // namespace

bool isPicture(const QByteArray& bytes) {
    const std::string_view text = viewOf(bytes);
    const auto start = text.find_first_not_of("\xEF\xBB\xBF \t\r\n");
    return start != std::string_view::npos && text[start] == '<';
}

std::variant<Sketch, FileError> readSketch(const QByteArray& bytes) {
    const std::string_view text = viewOf(bytes);
    if (isWideText(bytes))
        return located(text, {}, 0, "the file is UTF-16; save it as UTF-8");
    if (const char* line = otherThanSketch(bytes))
        return located(text, {}, 0, line);
    if (!isPicture(bytes))
        return readJson(text);
    const QByteArray json = sketchJsonFromSvg(bytes);
    if (json.isEmpty())
        return located(text, {}, 0,
                       "is only a picture: it carries no sketch; open the sketch it was made from");
    auto read = readJson(viewOf(json));
    if (auto* error = std::get_if<FileError>(&read))
        error->place = QStringLiteral("in the picture's metadata, ") + error->place;
    return read;
}

} // namespace tailpoint
