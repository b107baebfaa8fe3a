// SPDX-License-Identifier: MIT
// The window with a learner's own answer under way, and everything that can be read of it.
#pragma once

#include "tests/ui/panel_support.h"
#include "tests/ui/window_fixture.h"
#include "ui/canvas/canvas.h"
#include "ui/marking/own_answer.h"
#include "ui/panel/own_answer_view.h"
#include "ui/panel/panel.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QApplication>
#include <QLineEdit>
#include <QPushButton>

namespace tailpoint::test {

/// All words that assistive technology can reach, hidden widgets and values among them.
inline void readAll(QAccessibleInterface* of, QStringList& words, int depth = 0) {
    if (of == nullptr || !of->isValid() || depth > 40)
        return;
    for (const auto what :
         {QAccessible::Name, QAccessible::Value, QAccessible::Description, QAccessible::Help})
        words << of->text(what);
    if (QAccessibleValueInterface* value = of->valueInterface())
        words << value->currentValue().toString();
    for (int i = 0; i < of->childCount(); ++i)
        readAll(of->child(i), words, depth + 1);
}

class OwnAnswerTest : public OpenWindow {
protected:
    void begin() {
        if (!view().answer().isOn()) // a problem's file opens as a question
            trigger("ownAnswer");
        ASSERT_TRUE(view().answer().isOn());
    }
    OwnAnswerView& view() { return *window->panel().ownAnswer(); }
    OwnAnswer& answer() { return view().answer(); }
    QLineEdit* field(const char* name) {
        return child<QLineEdit>(view(), (std::string("ownField-") + name).c_str());
    }
    QString verdict(const char* name) {
        return child<QLabel>(view(), (std::string("ownVerdict-") + name).c_str())->text();
    }
    void type(const char* name, const char* value) {
        QLineEdit* at = field(name);
        at->setFocus();
        at->selectAll();
        QTest::keyClicks(at, QString::fromUtf8(value));
        if (*value == 0)
            QTest::keyClick(at, Qt::Key_Delete);
    }
    void mark() { QTest::mouseClick(child<QPushButton>(view(), "ownMark"), Qt::LeftButton); }
    void press(const char* button) { QTest::mouseClick(child<QPushButton>(view(), button), Qt::LeftButton); }
    QString findings() { return child<MarkedText>(view(), "ownFindings")->plainText(); }
    QString summary() { return child<QLabel>(view(), "ownSummary")->text(); }

    /// What can be read anywhere in the window: labels, tooltips, tables, the sheet, assistive technology.
    QString everything() {
        QStringList words{window->windowTitle()};
        for (const QWidget* widget : window->findChildren<QWidget*>())
            words << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription()
                  << widget->statusTip() << widget->whatsThis();
        for (const QLabel* label : window->findChildren<QLabel*>())
            words << QTextDocumentFragment::fromHtml(label->text()).toPlainText();
        for (const QAction* action : window->findChildren<QAction*>())
            words << action->text() << action->toolTip();
        for (const QAbstractItemView* table : window->findChildren<QAbstractItemView*>())
            for (int row = 0; row < table->model()->rowCount(); ++row)
                for (int column = 0; column < table->model()->columnCount(); ++column)
                    for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::EditRole),
                                           int(Qt::AccessibleTextRole)})
                        words << table->model()->index(row, column).data(role).toString();
        words << onSheet();
        readAll(QAccessible::queryAccessibleInterface(window.get()), words);
        return words.join(u'\n').replace(QChar(0x2212), u'-').replace(QChar::Nbsp, u' ');
    }
    QString onSheet() {
        const DisplayList& list = window->canvas().figure().list;
        std::string all = list.title + '\n' + list.description;
        for (const Group& group : list.groups) {
            all += '\n' + group.title.whole() + '\n';
            for (const Item& item : group.items)
                if (const auto* text = std::get_if<Text>(&item))
                    for (const auto& run : text->runs)
                        all += run.text;
        }
        return QString::fromStdString(all);
    }
    QPoint pixel(double x, double y) {
        const Point at = window->canvas().view().toSheet({x, y});
        return (QPointF(at.x, at.y) * window->canvas().pixelsPerPoint()).toPoint();
    }
};

} // namespace tailpoint::test
