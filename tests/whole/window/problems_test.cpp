// SPDX-License-Identifier: MIT
// A problem sheet from the real window: the dialog driven by keys to a sheet that is written, and a sheet
// that is cancelled and leaves nothing.
#include "tests/whole/window/raft_fixture.h"

#include <QDir>
#include <QFile>

using namespace whole;

namespace TAILPOINT_FILE {

class SheetFromTheWindow : public OnTheRaft {
protected:
    void SetUp() override {
        OnTheRaft::SetUp();
        ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("out")));
        ASSERT_TRUE(key(QStringLiteral("alt+t")));
        ASSERT_TRUE(key(QStringLiteral("p")));
        ASSERT_TRUE(eventually([&] { return m_program->asks(QStringLiteral("Problem sheet")); }))
            << "no dialog" << keep(screen());
    }
    QString out() const { return m_folder.filePath(QStringLiteral("out")); }
    QStringList left() const {
        return QDir(out()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    /// Into the field that Alt and this letter lead to.
    bool fill(const QString& letter, const QString& text) {
        return key(QStringLiteral("alt+") + letter) && key(QStringLiteral("ctrl+a")) && type(text);
    }
    bool hasDialog() const { return m_program->shows(QStringLiteral("Problem sheet")); }
};

TEST_F(SheetFromTheWindow, KeysMakeTheSheetThatWasChosen) {
    ASSERT_TRUE(fill(QStringLiteral("e"), QStringLiteral("2"))); // problems for each
    ASSERT_TRUE(fill(QStringLiteral("o"), out() + QStringLiteral("/sheet")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_TRUE(eventually([&] { return !hasDialog(); })) << "still at work" << keep(screen());
    const QDir sheet(out() + QStringLiteral("/sheet"));
    EXPECT_EQ(sheet.entryList(QDir::AllEntries | QDir::NoDotAndDotDot),
              QStringList({QStringLiteral("answers.csv"), QStringLiteral("key.pdf"),
                           QStringLiteral("sheet.pdf"), QStringLiteral("sketches")}));
    EXPECT_EQ(QDir(sheet.filePath(QStringLiteral("sketches"))).entryList(QDir::Files),
              QStringList({QStringLiteral("0001.json"), QStringLiteral("0002.json")}));
    QFile pdf(sheet.filePath(QStringLiteral("sheet.pdf")));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
    EXPECT_EQ(left(), QStringList{QStringLiteral("sheet")});
}

TEST_F(SheetFromTheWindow, EscapeStopsASheetAndNothingOfItStays) {
    ASSERT_TRUE(fill(QStringLiteral("e"), QStringLiteral("4000")));
    ASSERT_TRUE(fill(QStringLiteral("o"), out() + QStringLiteral("/sheet")));
    ASSERT_TRUE(key(QStringLiteral("Return")));
    ASSERT_TRUE(eventually([&] { return !left().isEmpty(); })) << "not begun" << keep(screen());
    ASSERT_TRUE(key(QStringLiteral("Escape")));
    EXPECT_TRUE(eventually([&] { return left().isEmpty(); })) << left().join(u' ').toStdString();
    EXPECT_TRUE(hasDialog());
    ASSERT_TRUE(eventually([&] { // while it stops, Escape says the same again
        return key(QStringLiteral("Escape")) && !hasDialog();
    }));
    EXPECT_EQ(left(), QStringList());
}

} // namespace TAILPOINT_FILE
