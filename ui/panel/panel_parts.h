// SPDX-License-Identifier: MIT
// Small parts that the panel is made of.
#pragma once

#include "core/explain/question.h"

#include <QAbstractButton>
#include <QLabel>
#include <QPushButton>
#include <QWidget>

namespace tailpoint {

/// A hairline across the panel.
class Rule : public QWidget {
    Q_OBJECT
public:
    explicit Rule(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// A value that can be selected and copied, by mouse and keyboard; shows where the keyboard is.
class ValueLabel : public QLabel {
    Q_OBJECT
public:
    explicit ValueLabel(const QString& objectName, QWidget* parent = nullptr);
    /// Sets the text only where it differs, so that a selection outlives a repaint.
    void show(const QString& richText);
    /// A layout asks for its height at all the width that there is; it takes no more than its greatest.
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// Lines of values whose numbers change with every frame of a drag: as high as the lines and their symbols
/// ask, so that a new number is painted and nothing is laid out anew. Lines are not wrapped unless that is
/// asked for: then the height follows them.
class SteadyLines : public QWidget {
    Q_OBJECT
public:
    explicit SteadyLines(const QString& objectName, QWidget* parent = nullptr);
    /// Lines are apart by <br>.
    void show(const QString& richText);
    /// Its height then follows its text; else lines that have no room are cut, and nothing moves.
    void setWrapped(bool on = true);
    QLabel* label() const { return m_label; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitWrapped();

    ValueLabel* m_label;
    qsizetype m_tags = -1;
};

/// Text to press, underlined plainly under the pointer and the keyboard; at least 24 px high. The letter
/// behind an & is its access key, as on every button.
class LinkButton : public QPushButton {
    Q_OBJECT
public:
    using QPushButton::QPushButton;
    /// Among lines of text: the words begin where the button does, with a hairline under them.
    void setFlush() { m_padding = 0; }
    /// An icon's name (resources/icons): in front of the words, in their colour.
    void setSign(const QString& icon);
    /// Words with symbols among them; text() says them plainly.
    void setSentence(const Sentence& sentence);
    QSize sizeHint() const override;

protected:
    void keyPressEvent(QKeyEvent* event) override; ///< Return follows it, as Space does
    void paintEvent(QPaintEvent* event) override;

private:
    int wordsWidth() const;
    int signWidth() const;
    void paintSign(QPainter& painter);
    void paintWords(QPainter& painter, const QRect& room) const;
    int m_padding = 8;   ///< as beside a cell's text
    Sentence m_sentence; ///< empty: text() as it is
    QString m_sign;
};

/// A section's heading that folds what is under it; the mark at its right says which way it stands.
class SectionHead : public QAbstractButton {
    Q_OBJECT
public:
    explicit SectionHead(const QString& title);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

/// "GIVEN": small and spaced.
QLabel* headingLabel(const QString& title);
QLabel* quietLabel(const QString& objectName);
LinkButton* linkButton(const QString& title, const QString& objectName);

} // namespace tailpoint
