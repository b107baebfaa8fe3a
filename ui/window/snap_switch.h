// SPDX-License-Identifier: MIT
// The switch at the end of the hint line: says whether drags snap, and turns it on and off.
#pragma once

#include "ui/style/theme.h"

#include <QToolButton>

namespace tailpoint {

/// Shows and triggers the same action as the bar's Snap. Object name "snapSwitch".
class SnapSwitch : public QToolButton {
    Q_OBJECT
public:
    explicit SnapSwitch(QAction* snap, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString words(bool on) const;
    const Theme* m_theme = &themeOf(ThemeName::paper);
    QPixmap m_icon;
};

} // namespace tailpoint
