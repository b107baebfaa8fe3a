// SPDX-License-Identifier: MIT
// What the menus work on. The window owns all of it.
#pragma once

class QMainWindow;

namespace tailpoint {

class Canvas;
class HintLine;
class LessonNotes;
class Notice;
class OwnAnswer;
class Panel;
class Practice;
class Settings;
class SketchDocument;

struct WindowParts {
    QMainWindow& window;
    SketchDocument& document;
    Canvas& canvas;
    Panel& panel;
    Notice& notice;
    HintLine& hints;
    Settings& settings;
    OwnAnswer& ownAnswer;
    LessonNotes& lessonNotes;
    Practice& practice;
};

} // namespace tailpoint
