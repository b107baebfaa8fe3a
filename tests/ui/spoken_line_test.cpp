// SPDX-License-Identifier: MIT
#include "ui/panel/spoken_line.h"

#include <QImage>
#include <gtest/gtest.h>

namespace tailpoint {
namespace TAILPOINT_FILE {

const QString kLong = QStringLiteral("Opened as a question: F7 or Esc shows the answer.");

/// As a label of that width paints it.
template <class Label>
QImage painted(Label& label, int width) {
    label.resize(width, 30);
    return label.grab().toImage();
}

TEST(SpokenLine, WhatThereIsNoRoomForEndsInAnEllipsis) {
    SpokenLine line(QStringLiteral("line"));
    line.say(kLong, kLong);
    for (const int width : {60, 120, 180}) {
        QLabel elided;
        elided.setText(elided.fontMetrics().elidedText(kLong, Qt::ElideRight, width));
        EXPECT_TRUE(elided.text().endsWith(QChar(0x2026)));
        EXPECT_EQ(painted(line, width), painted(elided, width)) << width;
    }
    QLabel whole(kLong);
    EXPECT_EQ(painted(line, 1000), painted(whole, 1000));
    EXPECT_EQ(line.text(), kLong) << "what is read out stays whole";
}

} // namespace TAILPOINT_FILE
} // namespace tailpoint
