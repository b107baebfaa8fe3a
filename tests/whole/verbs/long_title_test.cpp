// SPDX-License-Identifier: MIT
// The longest title is drawn and handed out in every form; a longer one is refused in one line.
#include "tests/whole/verbs/driver.h"

namespace tailpoint::whole {
namespace TAILPOINT_FILE {

class LongTitle : public Verbs {
protected:
    QString titled(const QByteArray& title) const {
        return put(QStringLiteral("titled.json"),
                   sketch(force("P", "340", "25") + "," + force("Q", "275", "-40"),
                          R"(, "title": ")" + title + '"'));
    }
};

constexpr int kLongest = 500; // the schema's maxLength

TEST_F(LongTitle, OfFiveHundredCharactersIsTakenByEveryOutput) {
    // Words, one word, and characters of three bytes that are twice as wide.
    for (const QByteArray& title : {QByteArray("word ").repeated(100).chopped(1) + "s",
                                    QByteArray(kLongest, 'W'), QByteArray("\u6CE2").repeated(kLongest)}) {
        const QString file = titled(title);
        for (const char* out : {"a.svg", "a.pdf", "a.png", "a.tex"}) {
            const Ran ran =
                run({QStringLiteral("figure"), file, QStringLiteral("-o"), path(QLatin1String(out))});
            EXPECT_EQ(ran.status, 0) << out << ran.err.toStdString();
        }
        for (const char* form : {"text", "json", "html", "latex"}) {
            const Ran ran =
                run({QStringLiteral("report"), file, QStringLiteral("--as"), QString::fromLatin1(form)});
            EXPECT_EQ(ran.status, 0) << form << ran.err.toStdString();
            const bool ascii = title.front() > 0 && title.front() < 0x7F; // LaTeX spells others its own way
            EXPECT_TRUE(ran.out.contains(title) || (!ascii && qstrcmp(form, "latex") == 0))
                << form << " says it whole";
        }
    }
}

TEST_F(LongTitle, OfMoreIsRefusedInOneLine) {
    const QString file = titled(QByteArray(kLongest + 1, 'W'));
    expectRefused(run({QStringLiteral("report"), file}),
                  {file, QStringLiteral("title"), QStringLiteral("up to 500 characters"),
                   QStringLiteral("501"), QStringLiteral("shorten it")});
    const QString enormous = titled(QByteArray(1'000'000, 'W'));
    expectRefused(
        run({QStringLiteral("figure"), enormous, QStringLiteral("-o"), path(QStringLiteral("a.svg"))}),
        {enormous, QStringLiteral("title"), QStringLiteral("shorten it")});
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint::whole
