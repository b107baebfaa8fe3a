// SPDX-License-Identifier: MIT
#include "ui/window/settings.h"

#include <QFileInfo>
#include <QLocale>
#include <QSettings>

namespace tailpoint {

namespace {

QSettings file() {
    return QSettings(QStringLiteral("Tailpoint"), QStringLiteral("Tailpoint"));
}

template <class T>
T read(const char* key, const T& otherwise) {
    return file().value(QLatin1String(key), QVariant::fromValue(otherwise)).template value<T>();
}

template <class T>
void write(const char* key, const T& value) {
    file().setValue(QLatin1String(key), QVariant::fromValue(value));
}

int within(int value, int least, int most, int otherwise) {
    return value >= least && value <= most ? value : otherwise;
}

QString fromView(std::string_view view) {
    return QString::fromUtf8(view.data(), static_cast<qsizetype>(view.size()));
}

} // namespace

QByteArray Settings::geometry() const {
    return read("window/geometry", QByteArray());
}
void Settings::setGeometry(const QByteArray& geometry) {
    write("window/geometry", geometry);
}
QByteArray Settings::splitter() const {
    return read("window/splitter", QByteArray());
}
void Settings::setSplitter(const QByteArray& state) {
    write("window/splitter", state);
}

ThemeName Settings::theme() const {
    return themeFrom(read("window/theme", QString())).value_or(ThemeName::paper);
}
void Settings::setTheme(ThemeName theme) {
    write("window/theme", nameOf(theme));
}

Sketch Settings::newSketch() const {
    Sketch sketch = emptySketch();
    const std::string force = read("newSheet/forceUnit", QString()).toStdString();
    const std::string angle = read("newSheet/angleUnit", QString()).toStdString();
    sketch.forceUnit = sheetForceUnitFrom(force).value_or(sketch.forceUnit);
    sketch.angleUnit = angleUnitFrom(angle).value_or(sketch.angleUnit);
    sketch.figures = within(read("newSheet/figures", sketch.figures), 1, 12, sketch.figures);
    sketch.moreAfterOne = read("newSheet/moreAfterOne", sketch.moreAfterOne);
    sketch.angleDecimals =
        within(read("newSheet/angleDecimals", sketch.angleDecimals), 0, 8, sketch.angleDecimals);
    return sketch;
}

void Settings::setNewSketch(const Sketch& like) {
    write("newSheet/forceUnit", fromView(symbolOf(like.forceUnit)));
    write("newSheet/angleUnit", fromView(nameOf(like.angleUnit)));
    write("newSheet/figures", like.figures);
    write("newSheet/moreAfterOne", like.moreAfterOne);
    write("newSheet/angleDecimals", like.angleDecimals);
}

bool Settings::beginsLike(const Sketch& sketch) const {
    const Sketch begun = newSketch();
    return begun.forceUnit == sketch.forceUnit && begun.angleUnit == sketch.angleUnit &&
           begun.figures == sketch.figures && begun.moreAfterOne == sketch.moreAfterOne &&
           begun.angleDecimals == sketch.angleDecimals;
}

bool Settings::snapping() const {
    return read("sheet/snapping", true);
}
void Settings::setSnapping(bool on) {
    write("sheet/snapping", on);
}
QString Settings::construction() const {
    return read("sheet/construction", QStringLiteral("parallelogram"));
}
void Settings::setConstruction(const QString& name) {
    write("sheet/construction", name);
}
bool Settings::casesOver() const {
    return read("sheet/casesOver", true);
}
void Settings::setCasesOver(bool on) {
    write("sheet/casesOver", on);
}
bool Settings::parallelMarks() const {
    return read("sheet/parallelMarks", false);
}
void Settings::setParallelMarks(bool on) {
    write("sheet/parallelMarks", on);
}
bool Settings::shadesTips() const {
    return read("sheet/shadesTips", true);
}
void Settings::setShadesTips(bool on) {
    write("sheet/shadesTips", on);
}
bool Settings::otherOrder() const {
    return read("sheet/otherOrder", false);
}
void Settings::setOtherOrder(bool other) {
    write("sheet/otherOrder", other);
}
bool Settings::keepsForces() const {
    return read("sheet/keepsForces", true);
}
void Settings::setKeepsForces(bool keeps) {
    write("sheet/keepsForces", keeps);
}

QStringList Settings::folded() const {
    return read("panel/folded", QStringList());
}
void Settings::setFolded(const QStringList& names) {
    write("panel/folded", names);
}

ThemeName Settings::lectureTheme() const {
    return themeFrom(read("lecture/theme", QString())).value_or(ThemeName::slate);
}
void Settings::setLectureTheme(ThemeName theme) {
    write("lecture/theme", nameOf(theme));
}
std::optional<bool> Settings::lectureMoves() const {
    const QVariant chosen = file().value(QStringLiteral("lecture/moves"));
    return chosen.isValid() ? std::optional(chosen.toBool()) : std::nullopt;
}
void Settings::setLectureMoves(bool on) {
    write("lecture/moves", on);
}

bool Settings::handRounding() const {
    return read("question/handRounding", false);
}
Method Settings::method() const {
    return methodFrom(read("question/method", QString()).toStdString());
}
void Settings::setMethod(Method method) {
    write("question/method", fromView(nameOf(method)));
}
bool Settings::byParallelograms() const {
    return read("question/parallelograms", false);
}
void Settings::setByParallelograms(bool on) {
    write("question/parallelograms", on);
}
void Settings::setHandRounding(bool on) {
    write("question/handRounding", on);
}

// "rectangular", "normal 2"; anything else: not told.
std::optional<tolerance::UncertaintyAsked> Settings::uncertainty() const {
    const QStringList words = read("question/uncertainty", QString()).split(QLatin1Char(' '));
    tolerance::UncertaintyAsked asked;
    if (words.front() == QLatin1String("rectangular"))
        return asked;
    asked.spread = tolerance::Spread::normal;
    asked.k = words.value(1).toDouble();
    return words.front() == QLatin1String("normal") && asked.k > 0 && asked.k <= 100 ? std::optional(asked)
                                                                                     : std::nullopt;
}
void Settings::setUncertainty(const std::optional<tolerance::UncertaintyAsked>& asked) {
    write("question/uncertainty", !asked ? QStringLiteral("none")
                                  : asked->spread == tolerance::Spread::rectangular
                                      ? QStringLiteral("rectangular")
                                      : QStringLiteral("normal %1").arg(asked->k));
}

bool Settings::keepsPractice() const {
    return read("practice/kept", false);
}
void Settings::setKeepsPractice(bool keeps) {
    write("practice/kept", keeps);
}

QVariantMap Settings::exportChoices() const {
    return read("export/choices", QVariantMap());
}
void Settings::setExportChoices(const QVariantMap& choices) {
    write("export/choices", choices);
}

QVariantMap Settings::sweepChoices() const {
    return read("sweep/choices", QVariantMap());
}
void Settings::setSweepChoices(const QVariantMap& choices) {
    write("sweep/choices", choices);
}

QVariantMap Settings::problemChoices() const {
    return read("problems/choices", QVariantMap());
}
void Settings::setProblemChoices(const QVariantMap& choices) {
    write("problems/choices", choices);
}

QString Settings::handoutForm() const {
    return read("handout/form", QStringLiteral("html"));
}
void Settings::setHandoutForm(const QString& form) {
    write("handout/form", form);
}
bool Settings::handoutSolution() const {
    return read("handout/solution", true);
}
void Settings::setHandoutSolution(bool with) {
    write("handout/solution", with);
}
QString Settings::handoutPaper() const {
    const bool letter = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
    return read("handout/paper", letter ? QStringLiteral("Letter") : QStringLiteral("A4"));
}
void Settings::setHandoutPaper(const QString& name) {
    write("handout/paper", name);
}

QStringList Settings::recentFiles() const {
    return read("files/recent", QStringList()).mid(0, kMostRecent);
}

void Settings::addRecent(const QString& path) {
    QStringList files = recentFiles();
    const QString whole = QFileInfo(path).absoluteFilePath();
    files.removeAll(whole);
    files.prepend(whole);
    write("files/recent", QStringList(files.mid(0, kMostRecent)));
}

void Settings::dropRecent(const QString& path) {
    QStringList files = recentFiles();
    files.removeAll(path);
    write("files/recent", files);
}

void Settings::clearRecent() {
    write("files/recent", QStringList());
}

bool Settings::hasBegun() const {
    return read("begun", false);
}
void Settings::setBegun() {
    write("begun", true);
}

} // namespace tailpoint
