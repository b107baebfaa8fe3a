// SPDX-License-Identifier: MIT
// The thin bar: a few actions, each with a line icon of ours. Drops the words where they don't fit.
#pragma once

#include "ui/style/theme.h"

#include <QToolButton>

class QHBoxLayout;

namespace tailpoint {

class BarButton : public QToolButton {
    Q_OBJECT
public:
    /// Shows and triggers `action`; its text without mnemonic stands beside the icon.
    BarButton(QAction* action, const QString& iconName, QWidget* parent = nullptr);
    void setTheme(const Theme& theme);
    void setCompact(bool compact);
    QSize sizeHint() const override;
    int fullWidth() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString words() const;
    QString m_iconName;
    const Theme* m_theme = &themeOf(ThemeName::paper);
    QPixmap m_icon, m_disabledIcon;
    bool m_compact = false;
};

class Bar : public QWidget {
    Q_OBJECT
public:
    explicit Bar(QWidget* parent = nullptr);
    BarButton* addAction(QAction* action, const QString& iconName);
    BarButton* addActionAtEnd(QAction* action, const QString& iconName); ///< at the right
    void addSeparator();
    void setTheme(const Theme& theme);
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QHBoxLayout* m_row;
    QList<BarButton*> m_buttons;
    int m_atEnd = 0; ///< buttons to the right of the stretch
};

} // namespace tailpoint
