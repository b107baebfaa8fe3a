// SPDX-License-Identifier: MIT
// Files named after people.
#include "ui/marking/feedback_names.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>

namespace tailpoint {
namespace TAILPOINT_FILE {

TEST(NamesOfPages, KeepLettersOfEveryScript) {
    FeedbackNames names;
    EXPECT_EQ(names.next("Müller, Anna", 2), QStringLiteral("Müller-Anna.html"));
    EXPECT_EQ(names.next("李雷", 3), QStringLiteral("李雷.html"));
    EXPECT_EQ(names.next("O'Neil_3", 4), QStringLiteral("O-Neil_3.html"));
}

TEST(NamesOfPages, LeadOutOfNoFolderAndHideNothing) {
    for (const char* who : {"../../etc/passwd", "/root", "a/b", "a\\b", ".hidden", "..", "~", "C:\\x", "-rf",
                            "a\nb", "x.json", "a*?<>|\"b", "nul", "COM1", "", "   ", "\xF0\x9F\x98\x80"}) {
        FeedbackNames names;
        const QString name = names.next(who, 7);
        static const QRegularExpression safe(QStringLiteral("^[\\w]([\\w-]*\\w)?\\.html$"),
                                             QRegularExpression::UseUnicodePropertiesOption);
        EXPECT_TRUE(safe.match(name).hasMatch()) << who << " gave " << name.toStdString();
        EXPECT_NE(name, QStringLiteral("nul.html"));
    }
    FeedbackNames names;
    EXPECT_EQ(names.next("", 7), QStringLiteral("line-7.html"));
    EXPECT_EQ(names.next("COM1", 8), QStringLiteral("line-8-COM1.html"));
}

TEST(NamesOfPages, AreNeverTheSameHoweverLettersAreFolded) {
    FeedbackNames names;
    QSet<QString> folded;
    const char* people[] = {"Ann",         "ann", "ANN", "Ann",     "ann-2", "Ann 2",   "A n n", "Zoë",
                            "Zoe\xCC\x88", "ﬁn",  "fin", "line 12", "",      "Ann-2-2", "ann-2"};
    std::size_t line = 1;
    for (const char* who : people)
        folded.insert(names.next(who, ++line).normalized(QString::NormalizationForm_KC).toCaseFolded());
    EXPECT_EQ(folded.size(), static_cast<qsizetype>(std::size(people)));
}

TEST(NamesOfPages, AreShortEnoughForEveryFileSystem) {
    FeedbackNames names;
    for (int i = 0; i < 3; ++i) // Source: 255 bytes of a name, common practice, no source
        EXPECT_LE(names.next(std::string(5000, 'x') + std::to_string(i), 2).toUtf8().size(), 120);
    std::string wide;
    for (int i = 0; i < 300; ++i)
        wide += "\xF0\xA0\x80\x80";
    EXPECT_LE(names.next(wide, 2).toUtf8().size(), 120);
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
