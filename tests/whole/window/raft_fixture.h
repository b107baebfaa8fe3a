// SPDX-License-Identifier: MIT
#pragma once

#include "tests/whole/window/program.h"
#include "tests/whole/window/sight.h"
#include "tests/whole/window/wait.h"

#include <QJsonArray>
#include <gtest/gtest.h>
#include <memory>

namespace whole {

/// The program open on a copy of the raft, its arrows found on the screen.
class OnTheRaft : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(m_folder.isValid());
        m_file = copyOfSample(QStringLiteral("survey-raft.json"), m_folder);
        m_program = std::make_unique<Program>(QStringList{m_file});
        ASSERT_NE(m_program->window(), 0) << m_program->complaints().toStdString();
        QImage seen; // a screen may stand still before the window is painted
        std::optional<Raft> raft;
        eventually([&] {
            seen = settledScreen();
            raft = findRaft(seen, m_program->sheet());
            return raft.has_value();
        });
        ASSERT_TRUE(raft) << "no arrows of the raft on the screen" << keep(seen);
        m_raft = *raft;
    }

    QPointF commonPoint() const { return m_raft.p.tail; }
    double pixelsPerNewton() const { return m_raft.p.length() / 340; }
    /// From the common point, away from the sheet's edge: there it scrolls under a tip that is held, and the
    /// longer the machine takes the further.
    QPointF onSheet(double degrees, double newtons) const {
        const QPointF place = placeAt(commonPoint(), degrees, newtons * pixelsPerNewton());
        EXPECT_TRUE(m_program->sheet().contains(place.toPoint()))
            << degrees << " degrees, " << newtons << " N";
        return place;
    }
    /// On the sheet, away from every arrow and label.
    QPointF emptyPlace() const { return QPointF(m_program->sheet().topLeft()) + QPointF(6, 6); }
    QRect panel() const {
        const QRect frame = m_program->frame();
        return {frame.right() - 380, frame.top() + 110, 360, frame.height() - 160};
    }
    bool isModified() const { return m_program->title().contains(u'*'); }
    bool becomesModified(bool modified) const {
        return eventually([&] { return isModified() == modified; });
    }

    /// Ctrl+S, and the file as it then is.
    QJsonObject saved() {
        EXPECT_TRUE(key(QStringLiteral("ctrl+s")));
        EXPECT_TRUE(becomesModified(false))
            << "still modified after Ctrl+S: " << m_program->title().toStdString();
        return readJson(m_file);
    }

    static QJsonObject force(const QJsonObject& sketch, int index) {
        return sketch[QStringLiteral("forces")].toArray().at(index).toObject();
    }
    static double number(const QJsonObject& force, const char* key) {
        return force[QLatin1String(key)].toDouble();
    }

    /// Keeps a screenshot for whoever looks into a failure; its place, to be streamed into the message.
    static std::string keep(const QImage& image) {
        const std::string name = ::testing::UnitTest::GetInstance()->current_test_info()->name();
        const std::string path = ::testing::TempDir() + "tailpoint-" + name + ".png";
        image.save(QString::fromStdString(path));
        return "; the screen is in " + path;
    }

    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<Program> m_program;
    Raft m_raft;
};

} // namespace whole
