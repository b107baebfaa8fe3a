// SPDX-License-Identifier: MIT
#include "ui/canvas/accessible.h"

#include "ui/canvas/accessible_vector.h"
#include "ui/canvas/seen_words.h"
#include "ui/document/sketch_document.h"

#include <algorithm>
#include <mutex>

namespace tailpoint {

namespace {

QAccessibleInterface* makeAccessible(const QString&, QObject* object) {
    auto* canvas = qobject_cast<Canvas*>(object);
    return canvas != nullptr ? new AccessibleCanvas(canvas) : nullptr;
}

} // namespace

void installAccessibleCanvas() {
    static std::once_flag once;
    std::call_once(once, [] { QAccessible::installFactory(makeAccessible); });
}

int vectorOfChild(const Canvas& canvas, int index) {
    if (canvas.isStaged()) {
        const std::vector<int> seen = vectorsSeen(canvas);
        const auto at = static_cast<std::size_t>(index);
        return index >= 0 && at < seen.size() ? seen[at] : kNoVector;
    }
    const auto forces = static_cast<int>(canvas.document().sketch().forces.size());
    return index == forces ? kSumIndex : index >= 0 && index < forces ? index : kNoVector;
}

int childOfVector(const Canvas& canvas, int vector) {
    if (canvas.isStaged()) {
        const std::vector<int> seen = vectorsSeen(canvas);
        const auto at = std::find(seen.begin(), seen.end(), vector);
        return at == seen.end() ? -1 : static_cast<int>(at - seen.begin());
    }
    return vector == kSumIndex ? static_cast<int>(canvas.document().sketch().forces.size()) : vector;
}

AccessibleCanvas::AccessibleCanvas(Canvas* canvas) : QAccessibleWidget(canvas, QAccessible::Canvas) {}

AccessibleCanvas::~AccessibleCanvas() {
    for (const QAccessible::Id id : m_ids) {
        QAccessible::deleteAccessibleInterface(id);
    }
}

Canvas* AccessibleCanvas::canvas() const {
    return static_cast<Canvas*>(widget());
}

int AccessibleCanvas::vectors() const {
    if (canvas() != nullptr && canvas()->isStaged()) {
        return static_cast<int>(vectorsSeen(*canvas()).size());
    }
    return canvas() != nullptr ? static_cast<int>(canvas()->document().sketch().forces.size()) + 1 : 0;
}

int AccessibleCanvas::childCount() const {
    return vectors() + QAccessibleWidget::childCount();
}

QAccessibleInterface* AccessibleCanvas::child(int index) const {
    if (index >= vectors()) {
        return QAccessibleWidget::child(index - vectors());
    }
    while (index >= 0 && m_ids.size() <= static_cast<std::size_t>(index)) {
        const auto next = static_cast<int>(m_ids.size());
        auto* vector = new AccessibleVector(canvas(), next);
        m_ids.push_back(QAccessible::registerAccessibleInterface(vector));
        m_names << vector->text(QAccessible::Name);
    }
    return index >= 0 ? QAccessible::accessibleInterface(m_ids[static_cast<std::size_t>(index)]) : nullptr;
}

int AccessibleCanvas::indexOfChild(const QAccessibleInterface* child) const {
    for (std::size_t i = 0; i < m_ids.size(); ++i) {
        if (QAccessible::accessibleInterface(m_ids[i]) == child) {
            return static_cast<int>(i);
        }
    }
    const int widget = QAccessibleWidget::indexOfChild(child);
    return widget < 0 ? -1 : widget + vectors();
}

QAccessibleInterface* AccessibleCanvas::childAt(int x, int y) const {
    for (int i = vectors() - 1; i >= 0; --i) {
        QAccessibleInterface* at = child(i);
        if (at->rect().contains(x, y)) {
            return at;
        }
    }
    return QAccessibleWidget::childAt(x, y);
}

QAccessibleInterface* AccessibleCanvas::focusChild() const {
    const int selected = canvas() != nullptr && canvas()->hasFocus() ? canvas()->selected() : kNoVector;
    return selected == kNoVector ? QAccessibleWidget::focusChild()
                                 : child(childOfVector(*canvas(), selected));
}

void AccessibleCanvas::tellNew() {
    const int count = vectors();
    if (std::exchange(m_count, count) != count) {
        QAccessibleEvent event(widget(), QAccessible::ObjectReorder);
        QAccessible::updateAccessibility(&event);
    }
    for (int i = 0; i < std::min(count, static_cast<int>(m_names.size())); ++i) {
        const QString name = child(i)->text(QAccessible::Name);
        if (std::exchange(m_names[i], name) == name) {
            continue;
        }
        QAccessibleEvent event(widget(), QAccessible::NameChanged);
        event.setChild(i);
        QAccessible::updateAccessibility(&event);
    }
}

void tellNewNames(Canvas& canvas) {
    if (QAccessible::isActive()) {
        if (auto* sheet = static_cast<AccessibleCanvas*>(QAccessible::queryAccessibleInterface(&canvas))) {
            sheet->tellNew();
        }
    }
}

QString AccessibleCanvas::text(QAccessible::Text what) const {
    if (what == QAccessible::Description && canvas() != nullptr) {
        return canvas()->isStaged() ? wordsSeen(*canvas())
                                    : QString::fromStdString(canvas()->figure().list.description);
    }
    return QAccessibleWidget::text(what);
}

} // namespace tailpoint
