// SPDX-License-Identifier: MIT
#pragma once

#include <QColor>
#include <QImage>
#include <QPoint>
#include <QPointF>
#include <QRect>
#include <functional>
#include <optional>

namespace whole {

/// What is on the screen now.
QImage screen();
/// The screen once it stopped changing; empty when it never did.
QImage settledScreen();
/// The screen once `condition` holds for it; empty when it never did.
QImage screenWhere(const std::function<bool(const QImage&)>& condition);

inline const QColor kGiven(0x0F, 0x4C, 0x5C), kSum(0x8F, 0x2F, 0x10), kSheet(0xFA, 0xF8, 0xF2),
    kWarning(0x6B, 0x46, 0x00);

/// How many pixels differ clearly between two screens within `region`.
int changedPixels(const QImage& before, const QImage& after, const QRect& region);
int countNear(const QImage& image, const QRect& region, const QColor& colour);

/// An arrow as it stands on the screen.
struct Arrow {
    QPointF tail, tip;
    double length() const;
};

/// Walks from `tail` at `degrees` (counter-clockwise from the right, as seen) as long as pixels of `colour`
/// are close by, and gives the end.
Arrow followed(const QImage& image, QPointF tail, double degrees, const QColor& colour);

/// The given forces of the raft, found by their colour: they spread to the right of the common point.
struct Raft {
    Arrow p, q;
};
std::optional<Raft> findRaft(const QImage& image, const QRect& region, double pDegrees = 25,
                             double qDegrees = -40, const QColor& colour = kGiven);

/// A point on the screen at `degrees` and `length` pixels from `tail`.
QPointF placeAt(QPointF tail, double degrees, double length);

} // namespace whole
