#include "core/quantity/typed.h"
#include "core/quantity/utf8.h"
#include "ui/document/json_text.h"
#include "ui/document/refused_keys.h"
#include "ui/document/sketch_json.h"
#include "ui/document/sketch_keys.h"
#include "ui/document/unknown_keys.h"
#include "ui/render/render.h"

#include <algorithm>
#include <charconv>

namespace tailpoint {

namespace {

using Kind = JsonValue::Kind;

/// The units there are, from the table of units, for messages.
template <class Units, class Name>
std::string listed(const Units& units, Name name) {
    std::string list;
    for (const auto unit : units)
        list += (list.empty() ? "" : ", ") + std::string(name(unit));
    return list;
}
std::string forceUnitNames() {
    return listed(kForceUnits, [](ForceUnit unit) { return symbolOf(unit); });
}
std::string angleUnitNames() {
    return listed(kAngleUnits, [](AngleUnit unit) { return nameOf(unit); });
}

/// Unwinds the reader; never leaves this file.
struct Refusal {
    std::string path, message;
    std::size_t offset;
};

/// A value and its path in the file.
struct At {
    const JsonValue& value;
    std::string path;

    [[noreturn]] void refuse(std::string message) const {
        throw Refusal{path, std::move(message), value.offset};
    }
    std::string under(std::string_view key) const {
        return path.empty() ? std::string(key) : path + '.' + std::string(key);
    }
    /// Empty where the key is absent.
    std::optional<At> maybe(std::string_view key) const {
        const JsonValue* found = value.find(key);
        return found ? std::optional<At>(At{*found, under(key)}) : std::nullopt;
    }
    At require(std::string_view key, std::string_view mend) const {
        if (auto found = maybe(key))
            return *found;
        throw Refusal{under(key), "is missing; " + std::string(mend), value.offset};
    }
    bool is(Kind kind) const { return value.kind == kind; }
};

std::string_view wordFor(Kind kind) {
    switch (kind) {
    case Kind::null:
        return "is null";
    case Kind::boolean:
        return "is true or false";
    case Kind::number:
        return "is a number";
    case Kind::string:
        return "is text";
    case Kind::array:
        return "is a list";
    case Kind::object:
        return "is an object";
    }
    return {};
}

[[noreturn]] void refuseKind(const At& at, std::string_view mend) {
    at.refuse(std::string(wordFor(at.value.kind)) + "; " + std::string(mend));
}

/// For messages: shortened, on one line.
std::string inQuotes(std::string_view text) {
    const std::string_view shown = firstCharacters(text, 40);
    return jsonString(std::string(shown) + (shown.size() < text.size() ? "..." : ""));
}

double numberIn(const At& at, std::string_view otherwise = "") {
    if (at.is(Kind::number))
        return at.value.number;
    if (at.is(Kind::string))
        at.refuse(at.value.text == "null" ? "is text; write null without quotes"
                                          : "is text; write the number without quotes");
    refuseKind(at, "write a number" + std::string(otherwise));
}

int integerIn(const At& at) {
    const double value = numberIn(at);
    if (value != static_cast<double>(static_cast<int>(std::clamp(value, -1e9, 1e9))))
        at.refuse("is not a whole number; write one");
    return static_cast<int>(value);
}

bool truthIn(const At& at) {
    if (!at.is(Kind::boolean))
        refuseKind(at, "write true or false without quotes");
    return at.value.truth;
}

const std::string& textIn(const At& at, std::string_view mend) {
    if (!at.is(Kind::string))
        refuseKind(at, mend);
    return at.value.text;
}

void requireObject(const At& at, std::string_view mend) {
    if (!at.is(Kind::object))
        refuseKind(at, mend);
}

/// A key that looks as if it changed a number or a verdict, and does not, ends the reading.
void requireHarmlessKeys(const At& at, KeyPlace place) {
    if (!at.is(Kind::object))
        return;
    for (const JsonMember& member : at.value.members)
        if (auto fault = keyFault(member.key, place))
            throw Refusal{at.path, std::move(*fault), member.value.offset};
}

std::optional<double> plusMinusIn(const At& at, bool given) {
    const auto plusMinus = at.maybe("plusMinus");
    if (!plusMinus || plusMinus->is(Kind::null))
        return std::nullopt;
    const double value = numberIn(*plusMinus);
    if (!given)
        plusMinus->refuse("stands beside nothing; give the value, or take plusMinus out");
    return value;
}

/// The unit of its own that a value has, if any.
template <class Unit>
std::optional<Unit> unitIn(const At& at, bool given, std::optional<Unit> (*read)(std::string_view),
                           const std::string& units) {
    const auto unit = at.maybe("unit");
    if (!unit || unit->is(Kind::null))
        return std::nullopt;
    const auto found = read(textIn(*unit, "write one of " + units + " in double quotes"));
    if (!found)
        unit->refuse(inQuotes(unit->value.text) + " is no unit known here; write one of " + units);
    if (!given)
        unit->refuse("stands beside no number; give the value, or take the unit out");
    return found;
}

Magnitude readMagnitude(const At& at, ForceUnit sheet) {
    Magnitude magnitude;
    if (at.is(Kind::null))
        return magnitude;
    if (!at.is(Kind::object)) {
        magnitude.value = numberIn(at, ", or null if it is to be found");
        return magnitude;
    }
    requireHarmlessKeys(at, KeyPlace::magnitude);
    const At value = at.require("value", "write a number, or null if it is to be found");
    if (!value.is(Kind::null))
        magnitude.value = numberIn(value, ", or null if it is to be found");
    magnitude.plusMinus = plusMinusIn(at, magnitude.value.has_value());
    const auto unit = unitIn(at, magnitude.value.has_value(), forceUnitFrom, forceUnitNames());
    return unit ? magnitudeOf({*magnitude.value, *unit, magnitude.plusMinus}, sheet) : magnitude;
}

SlopeForm readSlope(const At& at) {
    if (!at.is(Kind::array) || at.value.items.size() != 2)
        at.refuse("is no slope; write run and rise, as [3, 4]");
    return {numberIn({at.value.items[0], at.path + "[0]"}), numberIn({at.value.items[1], at.path + "[1]"})};
}

BearingForm readBearing(const At& at) {
    const std::string& text = textIn(at, "write a bearing, as \"N30E\"");
    const auto typed = parseDirection(text, AngleUnit::deg);
    const auto* direction = std::get_if<TypedDirection>(&typed);
    if (!direction || direction->form != TypedDirection::Form::bearing)
        at.refuse(inQuotes(text) + " is no bearing; write N or S, 0 to 90 degrees, E or W, as \"N30E\"");
    return {direction->from, direction->degrees, direction->toward};
}

Direction readDirectionObject(const At& at, AngleUnit sheet) {
    requireHarmlessKeys(at, KeyPlace::direction);
    const auto value = at.maybe("value"), slope = at.maybe("slope"), bearing = at.maybe("bearing");
    const int forms = (value ? 1 : 0) + (slope ? 1 : 0) + (bearing ? 1 : 0);
    if (forms != 1)
        at.refuse(forms == 0 ? "says no direction; write \"value\", \"slope\" or \"bearing\" in it"
                             : "says its direction twice; keep one of value, slope, bearing");
    Direction direction;
    if (slope)
        direction.form = readSlope(*slope);
    else if (bearing)
        direction.form = readBearing(*bearing);
    else if (!value->is(Kind::null))
        direction.form = AngleForm{numberIn(*value, ", or null if it is to be found")};
    direction.plusMinus = plusMinusIn(at, isGiven(direction));
    const auto* angle = std::get_if<AngleForm>(&direction.form);
    const auto unit = unitIn(at, angle != nullptr, angleUnitFrom, angleUnitNames());
    return unit ? directionOf({angle->value, *unit, direction.plusMinus}, sheet) : direction;
}

Direction readDirection(const At& at, AngleUnit sheet) {
    if (at.is(Kind::object))
        return readDirectionObject(at, sheet);
    if (at.is(Kind::null))
        return {};
    return {AngleForm{numberIn(at, ", a slope or a bearing, or null if it is to be found")}, {}};
}

bool readEither(const At& force) {
    const auto sense = force.maybe("sense");
    if (!sense || sense->is(Kind::null))
        return false;
    if (textIn(*sense, "write \"either\", or leave it out") != "either")
        sense->refuse(inQuotes(sense->value.text) + " is no sense here; write \"either\", or leave it out");
    return true;
}

Opaque unknownKeysOfForce(const At& force) {
    return unknownKeysOf(force.value, KeyPlace::force,
                         {{"magnitude", KeyPlace::magnitude}, {"direction", KeyPlace::direction}});
}

/// Two numbers: points to the right and up.
std::optional<LabelPin> readPin(const At& force, std::string_view key) {
    const auto at = force.maybe(key);
    if (!at || at->is(Kind::null))
        return std::nullopt;
    constexpr const char* mend = "write points to the right and up, as [12, -8]";
    if (!at->is(Kind::array))
        refuseKind(*at, mend);
    if (at->value.items.size() != 2)
        at->refuse(std::string("has not two numbers; ") + mend);
    const double right = numberIn({at->value.items[0], at->path + "[0]"});
    return LabelPin{right, numberIn({at->value.items[1], at->path + "[1]"})};
}

void readPins(const At& at, Force& force) {
    force.label = readPin(at, "label");
    force.directionLabel = readPin(at, "directionLabel");
}

Force readForce(const At& at, const Sketch& sheet) {
    requireObject(at, "write a force, as {\"name\": \"P\", \"magnitude\": 340, \"direction\": 25}");
    requireHarmlessKeys(at, KeyPlace::force);
    Force force;
    force.name = textIn(at.require("name", "give the force a name"), "write a name in double quotes");
    force.magnitude = readMagnitude(at.require("magnitude", "write a number, or null if it is to be found"),
                                    sheet.forceUnit);
    force.direction = readDirection(at.require("direction", "write a number, or null if it is to be found"),
                                    sheet.angleUnit);
    force.lineOfActionOnly = readEither(at);
    readPins(at, force);
    force.unknownKeys = unknownKeysOfForce(at);
    return force;
}

Force readSum(const std::optional<At>& at, const Sketch& sheet) {
    Force sum;
    sum.name = defaultSumName(sheet.forces);
    if (!at || at->is(Kind::null))
        return sum;
    requireObject(*at, "write the sum, as {\"name\": \"R\", \"magnitude\": null, \"direction\": null}");
    requireHarmlessKeys(*at, KeyPlace::force);
    if (const auto name = at->maybe("name"); name && !name->is(Kind::null))
        sum.name = textIn(*name, "write a name in double quotes");
    sum.magnitude = readMagnitude(at->require("magnitude", "write a number, or null if it is to be found"),
                                  sheet.forceUnit);
    const auto direction = at->maybe("direction");
    if (direction)
        sum.direction = readDirection(*direction, sheet.angleUnit);
    else if (sum.magnitude.value != 0.0)
        at->require("direction", "write a number, or null if it is to be found (only a zero sum needs none)");
    sum.lineOfActionOnly = readEither(*at);
    readPins(*at, sum);
    sum.unknownKeys = unknownKeysOfForce(*at);
    return sum;
}

std::vector<Force> readForces(const At& at, const Sketch& sheet) {
    if (!at.is(Kind::array))
        refuseKind(at,
                   "write a list of forces, as [{\"name\": \"P\", \"magnitude\": 340, \"direction\": 25}]");
    std::vector<Force> forces;
    forces.reserve(at.value.items.size());
    for (const JsonValue& item : at.value.items)
        forces.push_back(readForce({item, at.path + '[' + std::to_string(forces.size()) + ']'}, sheet));
    return forces;
}

void readUnits(const At& at, Sketch& sketch) {
    requireObject(at, "write the units, as {\"force\": \"N\", \"angle\": \"deg\"}");
    requireHarmlessKeys(at, KeyPlace::units);
    const At force = at.require("force", "write one of " + forceUnitNames());
    const At angle = at.require("angle", "write one of " + angleUnitNames());
    const auto forceUnit =
        forceUnitFrom(textIn(force, "write one of \"N\", \"kN\", \"lbf\", \"kip\", \"kgf\""));
    const auto angleUnit = angleUnitFrom(textIn(angle, "write one of \"deg\", \"rad\", \"gon\""));
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

Sketch readFile(const At& file) {
    requireObject(file, "a sketch is an object and begins with {");
    requireVersion(file);
    requireHarmlessKeys(file, KeyPlace::sketch);
    Sketch sketch;
    if (const auto title = file.maybe("title"))
        sketch.title = textIn(*title, "write the title in double quotes");
    readUnits(file.require("units", "write \"units\": {\"force\": \"N\", \"angle\": \"deg\"}"), sketch);
    sketch.reference = readReference(file.maybe("reference"));
    if (const auto figures = file.maybe("figures"))
        sketch.figures = integerIn(*figures);
    if (const auto decimals = file.maybe("decimals"))
        sketch.angleDecimals = integerIn(*decimals);
    sketch.forces = readForces(file.require("forces", "write \"forces\": [ ... ]"), sketch);
    sketch.sum = readSum(file.maybe("sum"), sketch);
    if (const auto smallest = file.maybe("smallest"); smallest && !smallest->is(Kind::null))
        sketch.smallest = textIn(*smallest, "write the name of a force or of the sum in double quotes");
    if (const auto caution = file.maybe("caution"); caution && !caution->is(Kind::null))
        sketch.caution = truthIn(*caution);
    sketch.unknownKeys = unknownKeysOfFile(file);
    return sketch;
}

/// The innermost value on the way of a path such as forces[2].magnitude that is in the file.
std::size_t offsetOf(const JsonValue& root, std::string_view path) {
    const JsonValue* value = &root;
    while (!path.empty()) {
        const JsonValue* next = nullptr;
        std::size_t length = path.find_first_of(".[", 1);
        length = std::min(length, path.size());
        if (path.front() == '[') {
            std::size_t index = 0;
            std::from_chars(path.data() + 1, path.data() + length, index);
            next = index < value->items.size() ? &value->items[index] : nullptr;
        } else {
            next =
                value->find(path.substr(path.front() == '.' ? 1 : 0, length - (path.front() == '.' ? 1 : 0)));
        }
        if (!next)
            break;
        value = next;
        path.remove_prefix(length);
    }
    return value->offset;
}

FileError located(std::string_view text, const std::string& path, std::size_t offset,
                  const std::string& message) {
    const LineColumn at = lineColumn(text, offset);
    const QString where = QStringLiteral("line %1, column %2").arg(at.line).arg(at.column);
    const QString place =
        path.empty() ? where : QStringLiteral("%1 (%2)").arg(QString::fromStdString(path), where);
    return {place, QString::fromStdString(message)};
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
