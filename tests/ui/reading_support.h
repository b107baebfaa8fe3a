// SPDX-License-Identifier: MIT
// What a label says as it is seen: without markup, no-break spaces as spaces.
#pragma once

#include <QLabel>
#include <QTextDocumentFragment>
#include <gtest/gtest.h>

namespace tailpoint {

/// Empty where the label is hidden.
inline QString seenIn(QWidget& parent, const char* name) {
    auto* label = parent.findChild<QLabel*>(QLatin1String(name));
    EXPECT_NE(label, nullptr) << name;
    return label && label->isVisibleTo(&parent)
               ? QTextDocumentFragment::fromHtml(label->text()).toPlainText().replace(QChar::Nbsp, u' ')
               : QString();
}

inline void expectSaid(const QString& said, const char* part) {
    EXPECT_TRUE(said.contains(QString::fromUtf8(part)))
        << "'" << part << "' is not in '" << said.toStdString() << "'";
}

} // namespace tailpoint
