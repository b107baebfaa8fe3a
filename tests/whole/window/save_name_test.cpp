// SPDX-License-Identifier: MIT
// Names typed without their ending into the real dialogs: nothing that is there is replaced unasked.
#include "tests/whole/window/raft_fixture.h"

#include <QDir>
#include <QFile>

using namespace whole;

namespace TAILPOINT_FILE {

const QByteArray kKept = "somebody's work";

class Saving : public OnTheRaft {
protected:
    QString put(const QString& name) {
        QFile file(m_folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(kKept) == kKept.size());
        return file.fileName();
    }
    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    bool becomesAsked(const char* title) {
        return eventually([&] { return m_program->asks(QLatin1String(title)); });
    }
    /// Into the file dialog of this title.
    bool name(const char* dialog, const QString& typed) {
        return becomesAsked(dialog) && key(QStringLiteral("ctrl+a")) && type(m_folder.filePath(typed)) &&
               key(QStringLiteral("Return"));
    }
    /// A question before this file is touched.
    bool asksBefore(const QString& file, const char* question) {
        eventually([&] { return m_program->asks(QLatin1String(question)) || bytesOf(file) != kKept; });
        return m_program->asks(QLatin1String(question)) && bytesOf(file) == kKept;
    }
    bool isGone(const char* dialog) {
        return eventually([&] { return !m_program->shows(QLatin1String(dialog)); }) && m_program->turnTo();
    }
};

TEST_F(Saving, SaveAsWithoutTheEndingAsksBeforeItReplacesTheFileThatHasIt) {
    const QString other = put(QStringLiteral("other.json"));
    ASSERT_TRUE(key(QStringLiteral("ctrl+shift+s")));
    ASSERT_TRUE(name("Save the sketch", QStringLiteral("other")));
    ASSERT_TRUE(asksBefore(other, "Already there"));
    ASSERT_TRUE(key(QStringLiteral("Return"))); // the safe one: another name
    ASSERT_TRUE(name("Save the sketch", QStringLiteral("v1.2")));
    ASSERT_TRUE(becomesAsked("Another ending"));
    settledScreen();                            // a window has the keys before it is there for them
    ASSERT_TRUE(key(QStringLiteral("Return"))); // the safe one: with the ending
    EXPECT_TRUE(eventually([&] { return m_program->title().startsWith(QStringLiteral("v1.2.json")); }))
        << m_program->title().toStdString();
    EXPECT_EQ(bytesOf(other), kKept);
    EXPECT_FALSE(QFile::exists(m_folder.filePath(QStringLiteral("v1.2"))));

    ASSERT_TRUE(isGone("Save the sketch"));
    ASSERT_TRUE(key(QStringLiteral("ctrl+shift+s")));
    ASSERT_TRUE(name("Save the sketch", QStringLiteral("other.json")));
    ASSERT_TRUE(becomesAsked("Already there"));
    ASSERT_TRUE(key(QStringLiteral("alt+r")));
    EXPECT_TRUE(eventually([&] { return m_program->title().startsWith(QStringLiteral("other.json")); }));
    EXPECT_EQ(readJson(other)[QStringLiteral("forces")].toArray().size(), 2) << "asked once, and replaced";
}

TEST_F(Saving, AllStagesAskOnceForEveryFileThatIsThere) {
    QStringList files;
    for (int stage = 0; stage <= 8; ++stage)
        files << put(QStringLiteral("k-%1.svg").arg(stage));
    ASSERT_TRUE(key(QStringLiteral("ctrl+e")));
    ASSERT_TRUE(becomesAsked("Export figure"));
    ASSERT_TRUE(key(QStringLiteral("alt+a")) && key(QStringLiteral("Down"))); // Stage: all of them
    ASSERT_TRUE(key(QStringLiteral("alt+s")));
    ASSERT_TRUE(name("Save the figure", QStringLiteral("k")));
    ASSERT_TRUE(asksBefore(files.front(), "Already there"));
    for (const QString& file : files)
        EXPECT_EQ(bytesOf(file), kKept) << file.toStdString();
    ASSERT_TRUE(key(QStringLiteral("alt+r")));
    EXPECT_TRUE(eventually([&] { return !m_program->shows(QStringLiteral("Export figure")); }));
    for (const QString& file : files) // written once the dialogue is gone
        EXPECT_TRUE(eventually([&] { return bytesOf(file).contains("</svg>"); })) << file.toStdString();
}

TEST_F(Saving, AHandoutWithoutTheEndingAsksBeforeItReplacesTheFileThatHasIt) {
    const QString sheet = put(QStringLiteral("sheet.html"));
    ASSERT_TRUE(key(QStringLiteral("ctrl+h")));
    ASSERT_TRUE(becomesAsked("Make handout"));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_TRUE(name("Save the handout", QStringLiteral("sheet")));
    ASSERT_TRUE(asksBefore(sheet, "Already there"));
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    EXPECT_TRUE(isGone("Already there"));
    EXPECT_TRUE(m_program->shows(QStringLiteral("Make handout")));
    EXPECT_EQ(bytesOf(sheet), kKept);
}

} // namespace TAILPOINT_FILE
