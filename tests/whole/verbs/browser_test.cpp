// SPDX-License-Identifier: MIT
// The HTML handout in a real browser: what it sets, what it complains of, what it prints. The script that
// measures stands in a copy of the page; the page itself has none.
#include "tests/whole/verbs/driver.h"

#include <QDir>
#include <QJsonDocument>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

constexpr int kLongestRunMs = 50'000;

QStringList samples() {
    QStringList paths;
    for (const QString& name : QDir(QStringLiteral(TAILPOINT_SAMPLES)).entryList({QStringLiteral("*.json")}))
        paths << QStringLiteral(TAILPOINT_SAMPLES "/") + name;
    return paths;
}

QByteArray pageOf(const QString& sample) {
    return run({QStringLiteral("report"), sample, QStringLiteral("--as=html")}).out;
}

QByteArray bodyOf(const QByteArray& page) {
    const qsizetype start = page.indexOf("<body>") + 6;
    return page.mid(start, page.lastIndexOf("</body>") - start);
}

/// Counts, for every <main>, formulas and those that are empty or stick out of the column.
const QByteArray kMeasure = R"(<script>
const found = [];
for (const main of document.querySelectorAll("main")) {
  const column = main.getBoundingClientRect(), one = {name: main.id, formulas: 0, empty: [], wide: [], scrolled: []};
  for (const box of main.querySelectorAll("*")) // a scroll bar of a line's height hides what stands there
    if (getComputedStyle(box).overflowY !== "visible" && box.scrollHeight > box.clientHeight && box.closest("svg") === null)
      one.scrolled.push([box.className, box.scrollHeight, box.clientHeight, box.textContent.slice(0, 40)]);
  for (const math of main.querySelectorAll("math")) {
    const box = math.getBoundingClientRect();
    ++one.formulas;
    if (!(box.width > 2 && box.height > 5)) one.empty.push(math.textContent);
    if (box.right > column.right + 1) one.wide.push(math.textContent);
  }
  for (const leaf of main.querySelectorAll("mi, mn, mo, mtext"))
    if (leaf.textContent.trim() && !/[\u2061\u2062]/.test(leaf.textContent) && !(leaf.getBoundingClientRect().width > 0))
      one.empty.push(leaf.outerHTML);
  const svg = main.querySelector("svg").getBoundingClientRect();
  one.figure = svg.width > 200 && svg.height > 150 && svg.right <= column.right + 1;
  found.push(one);
}
const out = document.createElement("pre");
out.id = "measured";
out.textContent = JSON.stringify(found);
document.body.append(out);
</script>)";

class Browser : public Verbs {
protected:
    struct Shown {
        QString out, complaints;
    };

    Shown browse(const QStringList& arguments) const {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOME"), m_folder.path());
        if (!m_fonts.isEmpty())
            environment.insert(QStringLiteral("FONTCONFIG_FILE"), m_fonts);
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral("chromium"),
                      QStringList{QStringLiteral("--headless"), QStringLiteral("--no-sandbox"),
                                  QStringLiteral("--disable-gpu"), QStringLiteral("--disable-dev-shm-usage"),
                                  QStringLiteral("--enable-logging=stderr"),
                                  QStringLiteral("--user-data-dir=") + path(QStringLiteral("profile"))} +
                          arguments);
        if (!process.waitForFinished(kLongestRunMs)) {
            process.kill();
            process.waitForFinished();
            ADD_FAILURE() << "the browser did not end";
        }
        EXPECT_EQ(process.exitCode(), 0) << process.errorString().toStdString();
        Shown shown{QString::fromUtf8(process.readAllStandardOutput()), {}};
        for (const QByteArray& line : process.readAllStandardError().split('\n'))
            if (line.contains(":CONSOLE"))
                shown.complaints += QString::fromUtf8(line) + u'\n';
        return shown;
    }

    QString m_fonts; ///< a fontconfig file of its own

    static QJsonArray measuredIn(const QString& dom) {
        const qsizetype start = dom.indexOf(QLatin1String("<pre id=\"measured\">")) + 19;
        QString json = dom.mid(start, dom.indexOf(QLatin1String("</pre>"), start) - start);
        json.replace(QLatin1String("&lt;"), QLatin1String("<"))
            .replace(QLatin1String("&gt;"), QLatin1String(">"));
        json.replace(QLatin1String("&amp;"), QLatin1String("&"));
        return QJsonDocument::fromJson(json.toUtf8()).array();
    }
};

std::string text(const QJsonValue& value) {
    return QJsonDocument(value.toArray()).toJson(QJsonDocument::Compact).toStdString();
}

TEST_F(Browser, SetsEveryFormulaOfEverySampleWithinTheColumnAndComplainsOfNothing) {
    QByteArray all = pageOf(samples().front());
    QByteArray bodies;
    for (const QString& sample : samples())
        bodies += "<main id=\"" + QFileInfo(sample).baseName().toUtf8() + "\">" + bodyOf(pageOf(sample)) +
                  "</main>";
    all = all.left(all.indexOf("<body>") + 6) + bodies + kMeasure + "</body></html>";
    const Shown shown = browse({QStringLiteral("--window-size=1000,900"), QStringLiteral("--dump-dom"),
                                QStringLiteral("file://") + put(QStringLiteral("all.html"), all)});
    EXPECT_EQ(shown.complaints.toStdString(), "");
    const QJsonArray measured = measuredIn(shown.out);
    ASSERT_EQ(measured.size(), samples().size());
    for (const QJsonValue& value : measured) {
        const QJsonObject page = value.toObject();
        const std::string name = page[QLatin1String("name")].toString().toStdString();
        EXPECT_GT(page[QLatin1String("formulas")].toInt(), 3) << name;
        EXPECT_EQ(text(page[QLatin1String("empty")]), "[]") << name;
        EXPECT_EQ(text(page[QLatin1String("wide")]), "[]") << name;
        EXPECT_EQ(text(page[QLatin1String("scrolled")]), "[]") << name;
        EXPECT_TRUE(page[QLatin1String("figure")].toBool()) << name;
    }
}

/// No font that a bare Debian's browser falls back to has the sizes of a sign: the page brings them along.
const char* const kTextFontsOnly = R"(<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  FOLDERS
  <cachedir>CACHE</cachedir>
  <selectfont>
    <rejectfont><pattern><patelt name="family"><string>DejaVu Math TeX Gyre</string></patelt></pattern></rejectfont>
  </selectfont>
</fontconfig>
)";

/// How high a sign is beside what it holds, and how wide a root's sign, in ems.
const QByteArray kSigns = R"(<script>
const found = [];
document.fonts.ready.then(() => {
  for (const sign of document.querySelectorAll('mo[stretchy="true"]')) {
    const held = sign.nextElementSibling ?? sign.previousElementSibling;
    found.push({sign: sign.textContent, height: sign.getBoundingClientRect().height / held.getBoundingClientRect().height});
  }
  for (const root of document.querySelectorAll("msqrt"))
    found.push({sign: "root", width: (root.firstElementChild.getBoundingClientRect().left - root.getBoundingClientRect().left) /
                                     parseFloat(getComputedStyle(root).fontSize)});
  const out = document.createElement("pre");
  out.id = "measured";
  out.textContent = JSON.stringify(found);
  document.body.append(out);
});
</script>)";

/// Of the fonts of a bare Debian's desktop, as fontconfig has them.
QByteArray textFonts() {
    QByteArray folders;
    for (const QString& fonts : QStandardPaths::standardLocations(QStandardPaths::FontsLocation))
        for (const char* family : {"/truetype/dejavu", "/truetype/liberation"})
            if (const QString folder = fonts + QLatin1String(family); QDir(folder).exists())
                folders += "<dir>" + folder.toUtf8() + "</dir>";
    return folders;
}

TEST_F(Browser, StretchesRootsAndParenthesesWithoutAMathematicalFont) {
    m_fonts = put(QStringLiteral("fonts.conf"), QByteArray(kTextFontsOnly)
                                                    .replace("CACHE", m_folder.path().toUtf8())
                                                    .replace("FOLDERS", textFonts()));
    QByteArray page = pageOf(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"));
    page.insert(page.lastIndexOf("</body>"), kSigns);
    const Shown shown = browse({QStringLiteral("--dump-dom"), QStringLiteral("--virtual-time-budget=4000"),
                                QStringLiteral("file://") + put(QStringLiteral("signs.html"), page)});
    int roots = 0, parentheses = 0;
    for (const QJsonValue& value : measuredIn(shown.out)) {
        const QJsonObject one = value.toObject();
        if (one[QLatin1String("sign")].toString() == QLatin1String("root")) {
            EXPECT_NEAR(one[QLatin1String("width")].toDouble(), 0.66, 0.02) << "the sign is another font's";
            ++roots;
        } else {
            EXPECT_GE(one[QLatin1String("height")].toDouble(), 0.95)
                << one[QLatin1String("sign")].toString().toStdString();
            ++parentheses;
        }
    }
    EXPECT_GE(roots, 2);
    EXPECT_GE(parentheses, 2);
}

/// A class with every quantity on the way, slips of all places, a name of one long word, a bad row.
QByteArray classPage() {
    QByteArray table = "who,R,theta_R,R_x,R_y,P_x,P_y,Q_x,Q_y,gamma,alpha,beta,phi\n";
    const char* const rows[] = {"520,-3.6,519,-33.1,308,144,211,-177,115,36.4,28.6,65",
                                "335,,,,,,,,,,,",
                                "615,-7.5,,,,,,,,,,",
                                "520,3.6,,,,,,,,,,",
                                "520 lbf,93.6,,,,,,,,,,",
                                "12x,,,,,,,,,,,",
                                ",,,,144,308,,,,,,",
                                "437.3,,,,,,,,,,,"};
    for (const char* row : rows)
        table += "Wolfeschlegelsteinhausenbergerdorff " + QByteArray::number(table.size()) + "," + row + "\n";
    return run({QStringLiteral("mark"), QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json"),
                QStringLiteral("--answers"), QStringLiteral("-"), QStringLiteral("--as=html"),
                QStringLiteral("--names")},
               table)
        .out;
}

TEST_F(Browser, SetsTheClassesPageWithinTheColumnAndComplainsOfNothing) {
    QByteArray page = classPage();
    page.replace("<body>", "<body><main id=\"class\">").replace("</body>", "</main>" + kMeasure + "</body>");
    const Shown shown = browse({QStringLiteral("--window-size=1000,900"), QStringLiteral("--dump-dom"),
                                QStringLiteral("file://") + put(QStringLiteral("class.html"), page)});
    EXPECT_EQ(shown.complaints.toStdString(), "");
    const QJsonArray measured = measuredIn(shown.out);
    ASSERT_EQ(measured.size(), 1);
    const QJsonObject one = measured[0].toObject();
    EXPECT_GT(one[QLatin1String("formulas")].toInt(), 20);
    for (const char* fault : {"empty", "wide", "scrolled"})
        EXPECT_EQ(text(one[QLatin1String(fault)]), "[]") << fault;
}

TEST_F(Browser, ComplainsOfNothingOnThePageAsItIs) {
    const QString file =
        put(QStringLiteral("raft.html"), pageOf(QStringLiteral(TAILPOINT_SAMPLES "/survey-raft.json")));
    const Shown shown = browse({QStringLiteral("--dump-dom"), QStringLiteral("file://") + file});
    EXPECT_EQ(shown.complaints.toStdString(), "");
    EXPECT_TRUE(shown.out.contains(QLatin1String("Law of cosines")));
}

/// A paper with its size in points.
struct Paper {
    const char* name;
    double width, height;
};

class Printed : public Browser, public ::testing::WithParamInterface<Paper> {
protected:
    /// Prints a copy of the page on that paper, and gives the words with their places.
    QByteArray wordsOn(const Paper& paper, QByteArray page) const {
        page.replace("@page { margin", QByteArray("@page { size: ") + paper.name + "; margin");
        const QString html = put(QStringLiteral("page.html"), page), pdf = path(QStringLiteral("page.pdf"));
        browse({QStringLiteral("--no-pdf-header-footer"), QStringLiteral("--print-to-pdf=") + pdf,
                QStringLiteral("file://") + html});
        QProcess words;
        words.start(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), pdf, QStringLiteral("-")});
        EXPECT_TRUE(words.waitForFinished());
        return words.readAllStandardOutput();
    }
};

double number(const QRegularExpressionMatch& match, int group) {
    return match.captured(group).toDouble();
}

class PrintedWords : public Printed {
protected:
    /// Every word of the page stands between the margins of that paper. The words and their places.
    QString expectWithin(const Paper& paper, const QByteArray& html, const char* name) const {
        const QString words = QString::fromUtf8(wordsOn(paper, html));
        static const QRegularExpression page(
            QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\""));
        static const QRegularExpression word(QStringLiteral(
            "<word xMin=\"(-?[0-9.]+)\" yMin=\"(-?[0-9.]+)\" xMax=\"(-?[0-9.]+)\" yMax=\"(-?[0-9.]+)\">"));
        const auto sheet = page.match(words);
        EXPECT_TRUE(sheet.hasMatch()) << name;
        EXPECT_NEAR(number(sheet, 1), paper.width, 1);
        EXPECT_NEAR(number(sheet, 2), paper.height, 1);
        const double margin = 40; // 18 mm are 51 points
        int count = 0;
        for (auto it = word.globalMatch(words); it.hasNext(); ++count) {
            const auto box = it.next();
            EXPECT_TRUE(number(box, 1) > margin && number(box, 3) < paper.width - margin &&
                        number(box, 2) > margin && number(box, 4) < paper.height - margin)
                << name << ": " << words.mid(box.capturedStart(), 140).toStdString();
        }
        EXPECT_GT(count, 200) << name;
        return words;
    }
};

TEST_P(PrintedWords, StandWithinThePaper) {
    for (const char* sample : {"survey-raft", "five-forces", "two-answers"}) {
        const QString file = QStringLiteral(TAILPOINT_SAMPLES "/%1.json").arg(QLatin1String(sample));
        const QString words = expectWithin(GetParam(), pageOf(file), sample);
        EXPECT_TRUE(words.contains(QLatin1String("Check</word>"))) << sample;
        EXPECT_LE(words.count(QLatin1String("<page ")), 6) << sample;
    }
}

TEST_P(PrintedWords, OfAClassStandWithinThePaperToo) {
    const QString words = expectWithin(GetParam(), classPage(), "the class");
    EXPECT_LE(words.count(QLatin1String("<page ")), 6);
}

INSTANTIATE_TEST_SUITE_P(Browser, PrintedWords, // sizes: ISO 216 and ANSI Y14.1, in points of 1/72 inch
                         ::testing::Values(Paper{"A4", 595.28, 841.89}, Paper{"letter", 612, 792}),
                         [](const auto& row) { return std::string(row.param.name); });

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
