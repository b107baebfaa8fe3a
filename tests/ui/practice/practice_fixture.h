// SPDX-License-Identifier: MIT
// The window in practice, its problem begun by its code.
#pragma once

#include "core/practice/scheme.h"
#include "tests/ui/attempt/own_answer_fixture.h"
#include "ui/practice/problem_file.h"
#include "ui/window/practice_dialog.h"
#include "ui/window/practice_summary.h"

#include <QListWidget>
#include <QPlainTextEdit>
#include <algorithm>

namespace tailpoint::test {

// 0NGFZD: P = 185 N at 60 degrees, Q = 235 N at -19. By hand R = sqrt(185^2 + 235^2 + 2*185*235*cos 79)
// = 325.64 N at 14.895 degrees; with the supplement's cosine 269.92 N, the magnitudes added 420 N.
inline const char* const kCode = "0NGFZD";

class PracticeWindow : public OwnAnswerTest {
protected:
    void begin(const QString& code = QString::fromLatin1(kCode)) {
        auto& dialog = ask<PracticeDialog>("practice");
        auto* search = child<QLineEdit>(dialog, "practiceSearch");
        search->clear();
        QTest::keyClicks(search, code);
        QTest::keyClick(search, Qt::Key_Return);
        ASSERT_FALSE(dialog.isVisible());
        ASSERT_TRUE(answer().isOn());
    }
    QString statement() {
        return QTextDocumentFragment::fromHtml(child<QLabel>(*window, "statement")->text())
            .toPlainText()
            .replace(QChar::Nbsp, u' ');
    }
    QString said() { return child<QLabel>(*window, "practiceSaid")->text(); }
    QString hints() { return child<MarkedText>(*window, "hints")->plainText(); }
    ProblemId id() { return problemIdOf(window->document().sketch()).value_or(ProblemId()); }
    void give(const char* magnitude, const char* direction) {
        type("R", magnitude);
        type("theta_R", direction);
        QTest::keyClick(field("theta_R"), Qt::Key_Return);
    }
    /// What the slip gives, all fields in its line.
    void giveSlip(const std::string& slip) {
        for (const SlipNumber& one : schemeOf(*problem(id())).numbers)
            if (std::find(one.slips.begin(), one.slips.end(), slip) != one.slips.end())
                type(one.name.c_str(), one.text.c_str());
        mark();
    }
    void makeTwoSlips() {
        begin();
        giveSlip("supplement-in-cosines");
        trigger("practiceNext");
        EXPECT_FALSE(child<QWidget>(*window, "notice")->isVisible());
        giveSlip("supplement-in-cosines");
        trigger("practiceNext");
    }
    QString summaryWords() {
        auto& dialog = ask<PracticeSummary>("practiceSummary");
        const QString words = child<QPlainTextEdit>(dialog, "summaryWords")->toPlainText();
        dialog.reject();
        return words;
    }
    static QStringList rows(QListWidget& list, bool headings) {
        QStringList texts;
        for (int row = 0; row < list.count(); ++row)
            if (list.item(row)->data(Qt::UserRole).isValid() != headings)
                texts << list.item(row)->text();
        return texts;
    }
};

} // namespace tailpoint::test
