// SPDX-License-Identifier: MIT
// What a class that votes must know, over the sheet: all that is given, in words with its values, and what is
// asked. The sheet alone can't show a magnitude without a direction.
#pragma once

#include "core/explain/prose.h"
#include "ui/lecture/measures.h"
#include "ui/render/formula.h"
#include "ui/style/theme.h"

#include <QWidget>

namespace tailpoint {

/// Everything given and the question, one sentence after the other. Of very many forces only those that are
/// given in part: the sheet shows the others with their values.
Prose voteQuestion(const Sketch& sketch);

class VoteQuestion : public QWidget {
    Q_OBJECT
public:
    explicit VoteQuestion(QWidget* parent);
    void setTheme(const Theme& theme);
    void setSketch(const Sketch& sketch);
    /// Sets it for this width, as large as three lines allow, never under the least size. Returns the height
    /// that it takes, pixels.
    int lay(const Measures& measures, int width);
    QString text() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme* m_theme;
    Prose m_prose;
    Setting m_set;
    Measures m_measures;
};

} // namespace tailpoint
