// SPDX-License-Identifier: MIT
// Bad input of every kind: status 2, one line that names the file, the place and the mend, and no file made.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <cstring>
#include <linux/capability.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

const QByteArray kP = force("P", "340", "25");

/// One bad file a row, and what its line must name: the place and the mend.
struct Bad {
    const char* name;
    QByteArray bytes;
    QStringList parts;
};
void PrintTo(const Bad& bad, std::ostream* out) {
    *out << bad.name;
}

class BadInput : public Verbs, public ::testing::WithParamInterface<Bad> {};

TEST_P(BadInput, IsRefusedByReportOnOneLineThatNamesFilePlaceAndMend) {
    const QString file = put(QStringLiteral("bad.json"), GetParam().bytes);
    const Ran ran =
        run({QStringLiteral("report"), file, QStringLiteral("-o"), path(QStringLiteral("out.txt"))});
    expectRefused(ran, QStringList{file} + GetParam().parts);
    EXPECT_EQ(everything(), QStringList{QStringLiteral("bad.json")});
}

TEST_P(BadInput, IsRefusedByFigureAndLeavesAnOlderFigureAlone) {
    const QString file = put(QStringLiteral("bad.json"), GetParam().bytes);
    put(QStringLiteral("out.svg"), "older");
    const Ran ran =
        run({QStringLiteral("figure"), file, QStringLiteral("-o"), path(QStringLiteral("out.svg"))});
    expectRefused(ran, QStringList{file} + GetParam().parts);
    EXPECT_EQ(bytesOf(path(QStringLiteral("out.svg"))), "older");
    EXPECT_EQ(everything().size(), 2);
}

QStringList parts(const char* place, const char* mend) {
    return {QString::fromUtf8(place), QString::fromUtf8(mend)};
}

QByteArray manyForces(int count) {
    QByteArray forces = force("F0", "1", "0");
    for (int i = 1; i < count; ++i)
        forces += "," + force(("F" + std::to_string(i)).c_str(), "1", "0");
    return forces;
}

const Bad kBad[] = {
    {"NotJson", "raft: 340 N", parts("line 1, column 1", "double quotes")},
    {"Empty", "", parts("line 1, column 1", "a sketch begins with {")},
    {"BrokenOff", "{\n  \"format\": \"tailpoint-sketch\",\n", parts("line 3, column 1", "} is missing")},
    {"WrongType", sketch(force("P", "[340]", "25")), parts("forces[0].magnitude", "write a number")},
    {"MissingKey", sketch(kP + R"(, {"name": "Q", "direction": 25})"),
     parts("forces[1].magnitude", "is missing")},
    {"UnknownUnit",
     R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "stone", "angle": "deg"}, "forces": []})",
     parts("units.force", "N, kN, daN, lbf, kip, kgf, tonf")},
    {"NumberAsText", sketch(kP + "," + force("Q", "1", "2") + "," + force("S", "\"340\"", "25")),
     parts("forces[2].magnitude", "write the number without quotes")},
    {"NotANumber", sketch(force("P", "NaN", "25")), parts("line 1, column 125", "finite number")},
    {"OutOfRange", sketch(force("P", "1e999", "25")), parts("line 1, column 125", "1e150")},
    {"EndlessAngle", sketch(force("P", "340", "1e300")),
     parts("forces[0].direction", "give an angle within a full turn")},
    {"AHundredThousandForces", sketch(manyForces(100'000)), parts("forces", "more than the 10000")},
    {"ControlCharactersInAName", sketch(force("P\\u001b[31m\\u0007", "1", "2")),
     parts("forces[0].name", "can't be printed")},
    {"NegativeMagnitude", sketch(force("P", "-340", "25")),
     parts("forces[0].magnitude", "turn the direction round instead")},
    {"TwoForcesOfOneName", sketch(kP + "," + kP), parts("forces[1].name", "unique")},
    {"KeyTwice", sketch(R"({"name": "P", "magnitude": 1, "magnitude": 2, "direction": 0})"),
     parts("line 1, column", "take one out")},
    {"NewerVersion", R"({"format": "tailpoint-sketch", "version": 9})", parts("version", "update Tailpoint")},
    {"OtherFormat", R"({"format": "shopping-list"})", parts("format", "open a sketch")},
    {"NotUtf8", "{\"title\": \"caf\xE9\"}", parts("line 1, column 15", "save it as UTF-8")},
    {"DeepNesting", QByteArray(200'000, '['), parts("line 1, column", "nested deeper")},
    {"NewlineInAName", sketch(force("P\\nQ", "1", "2")), parts("forces[0].name", "printed")},
    {"NewlineInAUnit",
     R"({"format": "tailpoint-sketch", "version": 1, "units": {"force": "N\nm", "angle": "deg"}, "forces": []})",
     parts("units.force", "no known unit")},
    {"OnlyAPicture", "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
     parts("line 1, column 1", "only a picture")},
    {"APdf", "%PDF-1.4\n%\xE2\xE3\n", parts("is a PDF, which carries no sketch", "or its SVG")},
    {"APng", "\x89PNG\r\n\x1A\n", parts("is a PNG, which carries no sketch", "or its SVG")},
    {"ACompressedSvg", "\x1F\x8B\x08", parts("is compressed", "unpack it first")},
    {"BrokenMarkup", "<svg><metadata>", parts("line 1, column 1", "only a picture")},
};

INSTANTIATE_TEST_SUITE_P(Verbs, BadInput, ::testing::ValuesIn(kBad),
                         [](const auto& row) { return std::string(row.param.name); });

class BadFiles : public Verbs {
protected:
    void expectBothRefuse(const QString& file, const QStringList& parts,
                          const std::function<void()>& inChild = nullptr) {
        expectRefused(run({QStringLiteral("report"), file}, {}, inChild), QStringList{file} + parts);
        const QString out = path(QStringLiteral("out.svg"));
        expectRefused(run({QStringLiteral("figure"), file, QStringLiteral("-o"), out}, {}, inChild),
                      QStringList{file} + parts);
        EXPECT_FALSE(QFile::exists(out));
    }
};

TEST_F(BadFiles, AFileThatIsNotThere) {
    expectBothRefuse(path(QStringLiteral("none.json")), {QStringLiteral("does not exist")});
}

TEST_F(BadFiles, AFigureInAFormThatCarriesNoSketch) {
    const QString good = put(QStringLiteral("good.json"), sketch(kP));
    for (const char* form : {"pdf", "png", "tex"}) {
        const QString figure = path(QStringLiteral("figure.") + QLatin1String(form));
        ASSERT_EQ(run({QStringLiteral("figure"), good, QStringLiteral("-o"), figure}).status, 0);
        expectBothRefuse(figure, {QStringLiteral("carries no sketch; open the sketch it was made from")});
    }
}

TEST_F(BadFiles, AFolder) {
    expectBothRefuse(m_folder.path(), {QStringLiteral("is a folder; name a file in it")});
}

TEST_F(BadFiles, AFileOf200MegaBytes) {
    QFile huge(path(QStringLiteral("huge.json")));
    ASSERT_TRUE(huge.open(QIODevice::WriteOnly));
    ASSERT_TRUE(huge.resize(200'000'000));
    huge.close();
    expectBothRefuse(huge.fileName(), {QStringLiteral("larger than 16 MiB")});
}

/// Root reads everything; without this capability it is bound by permissions like anybody.
void giveUpReadingEverything() {
    ::prctl(PR_CAPBSET_DROP, CAP_DAC_OVERRIDE);
    ::prctl(PR_CAPBSET_DROP, CAP_DAC_READ_SEARCH);
}

TEST_F(BadFiles, AFileWithoutPermission) {
    const QString file = put(QStringLiteral("closed.json"), sketch(kP));
    ASSERT_EQ(::chmod(qPrintable(file), 0), 0);
    expectBothRefuse(file, {QStringLiteral("no permission; change the permissions")},
                     giveUpReadingEverything);
}

/// A socket that nobody listens to any more, as a compositor that died leaves it.
QString deadSocket(const QString& path) {
    const int fd = ::socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un name{};
    name.sun_family = AF_UNIX;
    std::strncpy(name.sun_path, qPrintable(path), sizeof name.sun_path - 1);
    EXPECT_EQ(::bind(fd, reinterpret_cast<const sockaddr*>(&name), sizeof name), 0);
    ::close(fd);
    return path;
}

/// Left behind, as in a terminal that outlived its session, or never there.
TEST_F(BadFiles, ADisplayThatNobodyServesIsSaidInOneLineOfOurs) {
    const QString good = put(QStringLiteral("good.json"), sketch(kP));
    const auto var = [](const char* name) { return QString::fromLatin1(name); };
    const QString x = var("DISPLAY"), wayland = var("WAYLAND_DISPLAY"), platform = var("QT_QPA_PLATFORM");
    const QString dead = deadSocket(path(QStringLiteral("wayland-9")));
    const Environment kinds[] = {{},
                                 {{x, QString()}},
                                 {{x, var(":9973")}},
                                 {{x, var(":9973.0")}},
                                 {{x, var(":")}},
                                 {{x, var(":x")}},
                                 {{x, var("nonsense")}},
                                 {{wayland, dead}},
                                 {{wayland, dead}, {platform, var("wayland")}},
                                 {{wayland, var("wayland-8")}, {platform, var("wayland")}},
                                 {{wayland, dead}, {x, var(":9973")}},
                                 {{platform, var("nosuch")}},
                                 {{platform, var("xcb")}},
                                 {{platform, var("vkkhrdisplay")}},
                                 {{x, var(":9973")}, {platform, var("wayland;xcb")}}};
    for (const Environment& kind : kinds) {
        expectRefused(run({good}, {}, nullptr, kind), {QStringLiteral("no display for the window")});
        expectRefused(run({path(QStringLiteral("none.json"))}, {}, nullptr, kind),
                      {QStringLiteral("none.json: does not exist")});
        expectRefused(run({QStringLiteral("nosuch")}, {}, nullptr, kind),
                      {QStringLiteral("'nosuch' is no verb and no file; the verbs are report, figure, mark, "
                                      "sweep, problems")});
    }
}

TEST_F(BadFiles, APipeIsRefusedAndNotWaitedFor) {
    const QString pipe = path(QStringLiteral("pipe.json"));
    ASSERT_EQ(::mkfifo(qPrintable(pipe), 0600), 0);
    expectBothRefuse(pipe, {QStringLiteral("is a pipe, not a file")});
    const QString good = put(QStringLiteral("good.json"), sketch(kP));
    expectRefused(run({QStringLiteral("report"), good, QStringLiteral("-o"), pipe}),
                  {pipe, QStringLiteral("nobody reads the pipe")});
}

TEST_F(BadFiles, WithoutAnyFontAFigureIsRefused) {
    const QString good = put(QStringLiteral("good.json"), sketch(kP));
    const QString none = put(QStringLiteral("fonts.conf"), "<fontconfig></fontconfig>");
    const Environment fontless{{QStringLiteral("FONTCONFIG_FILE"), none},
                               {QStringLiteral("QT_QPA_FONTDIR"), m_folder.path()}};
    for (const char* form : {"svg", "pdf", "png"}) {
        const QString out = path(QStringLiteral("a.") + QLatin1String(form));
        expectRefused(run({QStringLiteral("figure"), good, QStringLiteral("-o"), out}, {}, nullptr, fontless),
                      {QStringLiteral("there is no font to write with; install one")});
        EXPECT_FALSE(QFile::exists(out));
    }
    EXPECT_EQ(run({QStringLiteral("report"), good}, {}, nullptr, fontless).status, 0) << "words need none";
}

TEST_F(BadFiles, AsksNoDisplayForHelpBehindAFile) {
    const Ran ran = run({put(QStringLiteral("good.json"), sketch(kP)), QStringLiteral("--help")});
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_TRUE(ran.out.contains("opens the window")) << ran.out.toStdString();
    EXPECT_EQ(ran.err.toStdString(), "");
}

TEST_F(BadFiles, ANameWithANewlineStaysOnTheOneLine) {
    expectRefused(run({QStringLiteral("report"), path(QStringLiteral("two\nlines.json"))}),
                  {QStringLiteral("two lines.json")});
}

TEST_F(BadFiles, StandardInputIsNamedInWords) {
    expectRefused(run({QStringLiteral("report"), QStringLiteral("-")}, "{"),
                  {QStringLiteral("standard input"), QStringLiteral("line 1, column 2")});
}

/// One wrong call a row.
struct Usage {
    const char* name;
    QStringList arguments;
    QString part;
};
void PrintTo(const Usage& usage, std::ostream* out) {
    *out << usage.name;
}

class WrongUsage : public Verbs, public ::testing::WithParamInterface<Usage> {};

TEST_P(WrongUsage, IsRefusedOnOneLineWithTheMendAndMakesNoFile) {
    QStringList arguments = GetParam().arguments;
    const QString file = put(QStringLiteral("good.json"), sketch(kP));
    arguments.replaceInStrings(QStringLiteral("GOOD"), file)
        .replaceInStrings(QStringLiteral("FOLDER"), m_folder.path());
    expectRefused(run(arguments), {GetParam().part});
    EXPECT_EQ(everything(), QStringList{QStringLiteral("good.json")});
}

QStringList call(const char* words) {
    return QString::fromLatin1(words).split(QLatin1Char(' '));
}

const Usage kUsages[] = {
    {"ReportWithoutAFile", call("report"), QStringLiteral("wants one FILE")},
    {"ReportOfTwoFilesWithoutAFolder", call("report GOOD GOOD"),
     QStringLiteral("several FILEs want a folder for an output each; name it with -o DIR")},
    {"ReportInAnUnknownForm", call("report GOOD --as sheet"), QStringLiteral("text, json")},
    {"ReportWithAnUnknownOption", call("report GOOD --colour red"), QStringLiteral("--as")},
    {"ReportWithoutTheValue", call("report GOOD --as"), QStringLiteral("wants a value")},
    {"ReportWithAnUnknownOptionOfOneLetter", call("report GOOD -x"),
     QStringLiteral("-x is no option here; use one of --as")},
    {"ReportWithADashTooFew", call("report GOOD -as json"),
     QStringLiteral("-as is no option here; use one of --as")},
    {"ReportWithHelpADashTooFew", call("report GOOD -help"),
     QStringLiteral("-help is no option here; use one of --as")},
    {"ReportWithAnOptionForAValue", call("report GOOD --as --no-solution"),
     QStringLiteral("--as knows no '--no-solution'")},
    {"ReportWithAValueForAFlag", call("report GOOD --as html --no-solution=yes"),
     QStringLiteral("--no-solution takes no value")},
    {"ReportOfAnOptionAsAFile", call("report -- --as"), QStringLiteral("--as: does not exist")},
    {"ReportTwice", call("report GOOD --as text --as json"), QStringLiteral("twice")},
    {"ReportTwiceInBothForms", call("report GOOD --as=text --as json"), QStringLiteral("--as stands twice")},
    {"ReportTwiceThroughAFlag", call("report GOOD --no-solution --as html --no-solution"),
     QStringLiteral("--no-solution stands twice")},
    {"ReportOfOneFileTwice", call("report GOOD GOOD -o FOLDER"), QStringLiteral("would both become")},
    {"ReportOntoTheSketchInItsFolder", call("report GOOD --as json -o FOLDER"),
     QStringLiteral("would replace one of the FILEs")},
    {"FigureWithAFormAndAFile", call("figure GOOD --as svg -o FOLDER/a.svg"),
     QStringLiteral("--as goes with -o DIR")},
    {"ReportIntoNoFolder", call("report GOOD -o FOLDER/no/out.txt"), QStringLiteral("folder does not exist")},
    {"FigureWithoutOut", call("figure GOOD"), QStringLiteral("-o is missing")},
    {"FigureInAnUnknownForm", call("figure GOOD -o FOLDER/a.bmp"), QStringLiteral(".svg, .pdf")},
    {"FigureWithoutAForm", call("figure GOOD -o FOLDER/a"), QStringLiteral(".svg, .pdf")},
    {"FigureWithAnUnknownTheme", call("figure GOOD -o FOLDER/a.svg --theme neon"),
     QStringLiteral("paper, slate, contrast")},
    {"FigureWithAnUnknownConstruction", call("figure GOOD -o FOLDER/a.svg --construction cube"),
     QStringLiteral("parallelogram, triangle, polygon")},
    {"FigureAtANegativeStage", call("figure GOOD -o FOLDER/a.svg --stage -1"), QStringLiteral("--stage")},
    {"FigureAtHalfAStage", call("figure GOOD -o FOLDER/a.svg --stage 1.5"), QStringLiteral("--stage")},
    {"FigureBeyondTheLastStage", call("figure GOOD -o FOLDER/a.svg --stage 9"),
     QStringLiteral("0 to 8, or all")},
    {"FigureOfPixelsAndDpi", call("figure GOOD -o FOLDER/a.png --pixels 800 --dpi 300"),
     QStringLiteral("--dpi and --pixels both set the pixels; leave one")},
    {"FigureOfVectorsWithDpi", call("figure GOOD -o FOLDER/a.pdf --dpi 300"),
     QStringLiteral("--dpi goes with a .png")},
    {"FigureOnAPageOfAnotherWidth", call("figure GOOD -o FOLDER/a.svg --paper a4 --width 300"),
     QStringLiteral("--paper a4 has a size of its own; leave --width out")},
    {"FigureAtANegativeScale", call("figure GOOD -o FOLDER/a.svg --per-cm -5"),
     QStringLiteral("a force above 0")},
    {"FigureAtAScaleOfNoForce", call("figure GOOD -o FOLDER/a.svg --per-cm 50kg"),
     QStringLiteral("--per-cm: '50kg'")},
    {"FigureToStandardOutput", call("figure GOOD -o -"), QStringLiteral(".svg, .pdf")},
    {"FigureOfNoWidth", call("figure GOOD -o FOLDER/a.svg --width 0"), QStringLiteral("--width")},
    {"FigureOfEndlessWidth", call("figure GOOD -o FOLDER/a.svg --width inf"), QStringLiteral("--width")},
    {"FigureOfASecondAnswerThatIsNotThere", call("figure GOOD -o FOLDER/a.svg --solution 2"),
     QStringLiteral("no second answer")},
    {"FigureIntoNoFolder", call("figure GOOD -o FOLDER/no/a.svg"), QStringLiteral("folder does not exist")},
    {"AnUnknownVerb", call("reprot GOOD"), QStringLiteral("tailpoint --help")},
    {"AnUnknownVerbBeforeAFile", call("figur GOOD"), QStringLiteral("'figur' is no verb")},
    {"AnUnknownVerbAlone", call("figur"),
     QStringLiteral("'figur' is no verb and no file; the verbs are report, figure, mark, sweep, problems")},
    {"AWindowOnAFileThatIsNotThere", call("FOLDER/none.json"),
     QStringLiteral("none.json: does not exist; check the name")},
    {"AWindowWithAnUnknownOption", call("--nope GOOD"), QStringLiteral("--nope is no option here")},
    {"AWindowOnTwoFiles", call("GOOD GOOD"), QStringLiteral("the window opens one FILE")},
    {"NoDisplayForTheWindow", call("GOOD"), QStringLiteral("no display")},
    {"NoDisplayThoughThePlatformIsNamed", call("-platform xcb GOOD"), QStringLiteral("no display")},
    {"NoDisplayThoughAStyleIsNamed", call("-style fusion GOOD"), QStringLiteral("no display")},
    {"APlatformThatIsNotThere", call("GOOD -platform marble"), QStringLiteral("no display")},
};

INSTANTIATE_TEST_SUITE_P(Verbs, WrongUsage, ::testing::ValuesIn(kUsages),
                         [](const auto& row) { return std::string(row.param.name); });

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
