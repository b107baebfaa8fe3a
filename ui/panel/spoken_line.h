// SPDX-License-Identifier: MIT
// One line that is news whenever it changes: seen in its place, and spoken by a screen reader wherever the
// keyboard is.
#pragma once

#include <QLabel>

namespace tailpoint {

class SpokenLine : public QLabel {
    Q_OBJECT
public:
    explicit SpokenLine(const QString& objectName, QWidget* parent = nullptr);
    /// `spoken`: what is read out for it, more than there is room for; empty: nothing.
    void say(const QString& shown, const QString& spoken);

protected:
    void paintEvent(QPaintEvent* event) override; ///< what there is no room for ends in an ellipsis
};

} // namespace tailpoint
