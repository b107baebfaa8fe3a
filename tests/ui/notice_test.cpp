// SPDX-License-Identifier: MIT
// The notice under the bar: what it says is read whole, in a wide window and in one that is enlarged to twice
// its size.
#include "ui/window/lines.h"

#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

const QString kLine =
    QStringLiteral("Work that was not saved: Survey raft on two lines (raft.json), 30 Nov 2026 00:35:49. "
                   "It is newer than the file, which is of 29 Nov 2026 23:10:00.");

class ANotice : public ::testing::Test {
protected:
    void SetUp() override {
        m_notice.ask(kLine,
                     {{QStringLiteral("Bring it back"), [] {}}, {QStringLiteral("Throw it away"), [] {}}});
        m_line = m_notice.findChild<QLabel*>(QStringLiteral("noticeText"));
        for (const char* name : {"noticeOffer0", "noticeOffer1"})
            m_offers << m_notice.findChild<QPushButton*>(QLatin1String(name));
        ASSERT_TRUE(m_line && m_offers[0] && m_offers[1]);
    }
    /// As tall as it wants to be at this width.
    void widen(int width) {
        m_notice.resize(width, 10);
        m_notice.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&m_notice));
        m_notice.resize(width, m_notice.heightForWidth(width));
        QCoreApplication::sendPostedEvents();
    }
    QRect placeOf(const QWidget* widget) const {
        return {widget->mapTo(&m_notice, QPoint()), widget->size()};
    }
    Notice m_notice;
    QLabel* m_line = nullptr;
    QList<QPushButton*> m_offers;
};

TEST_F(ANotice, HasItsOffersBesideTheLineWhereThereIsRoom) {
    widen(960);
    for (const QPushButton* offer : m_offers) {
        EXPECT_GE(placeOf(offer).left(), placeOf(m_line).right());
        EXPECT_LT(placeOf(offer).top(), placeOf(m_line).bottom());
    }
    EXPECT_GE(m_line->height(), m_line->heightForWidth(m_line->width())) << "all of it is to be seen";
}

TEST_F(ANotice, HasThemBelowWhereTheLineWouldBeSqueezed) {
    widen(380);
    for (const QPushButton* offer : m_offers) {
        EXPECT_GE(placeOf(offer).top(), placeOf(m_line).bottom());
        EXPECT_TRUE(m_notice.rect().contains(placeOf(offer)));
    }
    EXPECT_GE(m_line->height(), m_line->heightForWidth(m_line->width())) << "all of it is to be seen";
    EXPECT_LE(m_line->height(), 6 * m_line->fontMetrics().lineSpacing());
    widen(960);
    EXPECT_LT(placeOf(m_offers[0]).top(), placeOf(m_line).bottom()) << "and beside it again";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
