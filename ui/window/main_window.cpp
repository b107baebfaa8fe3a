// SPDX-License-Identifier: MIT
#include "ui/window/main_window.h"

#include "core/explain/explain.h"
#include "ui/canvas/canvas.h"
#include "ui/document/recovery.h"
#include "ui/document/sketch_document.h"
#include "ui/marking/own_answer.h"
#include "ui/panel/line_exercise_view.h"
#include "ui/panel/own_answer_view.h"
#include "ui/panel/panel.h"
#include "ui/panel/panel_parts.h"
#include "ui/panel/practice_hints.h"
#include "ui/panel/practice_strip.h"
#include "ui/practice/line_exercise.h"
#include "ui/practice/practice.h"
#include "ui/style/icons.h"
#include "ui/style/palette.h"
#include "ui/window/announcer.h"
#include "ui/window/bar.h"
#include "ui/window/case_bar.h"
#include "ui/window/cases_menu.h"
#include "ui/window/dialog_room.h"
#include "ui/window/edit_menu.h"
#include "ui/window/file_menu.h"
#include "ui/window/help_menu.h"
#include "ui/window/item_focus.h"
#include "ui/window/lesson_notes.h"
#include "ui/window/lines.h"
#include "ui/window/menu_key.h"
#include "ui/window/practice_menu.h"
#include "ui/window/question_menu.h"
#include "ui/window/settings.h"
#include "ui/window/sheet_menu.h"
#include "ui/window/snap_switch.h"
#include "ui/window/stylesheet.h"
#include "ui/window/teach_menu.h"
#include "ui/window/unsaved_work.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSplitter>
#include <QTimer>
#include <QUrl>
#include <QVBoxLayout>
#include <utility>

namespace tailpoint {

namespace {

constexpr QSize kFirstSize{1280, 760}, kLeastSize{640, 400};
constexpr int kPanelWidth = 400;
constexpr int kAfterFirstPaint = 100; // milliseconds

QString droppedFile(const QMimeData* data) {
    const QList<QUrl> urls = data->urls();
    return urls.size() == 1 && urls.front().isLocalFile() ? urls.front().toLocalFile() : QString();
}

} // namespace

class MainWindow::Private {
public:
    explicit Private(MainWindow& owner);
    void lay();
    void fillBar();
    void connectParts();
    void orderTabs();
    void restore();
    void showTitle();

    MainWindow& window;
    Settings settings;
    SketchDocument document;
    OwnAnswer ownAnswer{document};
    Sitting sitting;
    Practice practice{document, ownAnswer, sitting};
    LineExercise exercise{document, ownAnswer, practice};
    Canvas* canvas;
    Panel* panel;
    PracticeStrip* strip;
    CaseBar* caseBar;
    PracticeHints* practiceHints;
    LineExerciseView* exerciseView;
    Bar* bar;
    Notice* notice;
    HintLine* hints;
    LessonNotes* lessonNotes;
    SnapSwitch* snap;
    QSplitter* splitter;
    FileMenu* files;
    EditMenu* edits;
    SheetMenu* sheet;
    TeachMenu* teach;
    PracticeMenu* practising;
    std::unique_ptr<UnsavedWork> unsavedWork; ///< after the first paint
    bool shown = false;

    WindowParts parts() {
        return {window, document, *canvas,   *panel,       *notice,
                *hints, settings, ownAnswer, *lessonNotes, practice};
    }
};

MainWindow::Private::Private(MainWindow& owner)
    : window(owner), canvas(new Canvas(document)), panel(new Panel(document, &ownAnswer)),
      strip(new PracticeStrip(practice)), caseBar(new CaseBar(document)),
      practiceHints(new PracticeHints(practice)), exerciseView(new LineExerciseView(document, exercise)),
      bar(new Bar), notice(new Notice), hints(new HintLine), lessonNotes(new LessonNotes),
      splitter(new QSplitter(Qt::Horizontal)) {
    canvas->setOwnAnswer(ownAnswer);
    canvas->setConstruction(constructionFrom(settings.construction()));
    canvas->setOtherOrder(settings.otherOrder());
    canvas->setParallelMarks(settings.parallelMarks());
    canvas->setShadesTips(settings.shadesTips());
    canvas->setSnapping(settings.snapping());
    canvas->setKeepsForces(settings.keepsForces());
    panel->setFolded(settings.folded());
    panel->setHandRounding(settings.handRounding());
    panel->setMethod(settings.method());
    panel->setUncertainty(settings.uncertainty());
    panel->setByParallelograms(settings.byParallelograms());
    canvas->setByParallelograms(addsByParallelograms(panel->explainOptions()));
    QMenuBar* menus = window.menuBar();
    files = new FileMenu(parts(), menus->addMenu(tr("&File")));
    edits = new EditMenu(parts(), menus->addMenu(tr("&Edit")));
    sheet = new SheetMenu(parts(), menus->addMenu(tr("&Sheet")));
    QMenu* question = menus->addMenu(tr("&Question"));
    const auto* asking = new QuestionMenu(parts(), question); // belongs to its menu
    caseBar->addButton(asking->cases->add);
    QObject::connect(caseBar, &CaseBar::renameAsked, asking->cases, &CasesMenu::rename);
    QMenu* teaching = menus->addMenu(tr("&Teach"));
    teach = new TeachMenu(parts(), teaching);
    practising = new PracticeMenu(parts(),
                                  {practice, *strip, *practiceHints, exercise, *exerciseView,
                                   teach->ownAnswer, [this] { return files->mayLoseChanges(); }},
                                  teaching, question);
    addHelp(menus->addMenu(tr("&Help")), &window);
}

void MainWindow::Private::lay() {
    auto* sheetSide = new QWidget; // the question in words, and the sheet under it
    auto* sheetColumn = new QVBoxLayout(sheetSide);
    sheetColumn->setContentsMargins(0, 0, 0, 0);
    sheetColumn->setSpacing(0);
    sheetColumn->addWidget(notice); // over the sheet alone: it comes late, and a hand may be in the table
    sheetColumn->addWidget(strip);
    sheetColumn->addWidget(caseBar);
    sheetColumn->addWidget(canvas, 1);
    splitter->addWidget(sheetSide);
    panel->addUnderFind(practiceHints);
    panel->addUnderFind(exerciseView);
    splitter->addWidget(panel);
    splitter->setStretchFactor(0, 1);
    splitter->setHandleWidth(1);
    splitter->setChildrenCollapsible(false);
    splitter->setObjectName(QStringLiteral("splitter"));
    panel->setMinimumWidth(300);
    canvas->setMinimumWidth(280);
    auto* all = new QWidget;
    auto* column = new QVBoxLayout(all);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (QWidget* part : QList<QWidget*>{bar, lessonNotes, new Rule, splitter, new Rule, hints}) {
        column->addWidget(part);
    }
    column->setStretchFactor(splitter, 1);
    snap = new SnapSwitch(sheet->snap);
    hints->addSwitch(snap);
    window.setCentralWidget(all);
}

void MainWindow::Private::fillBar() {
    bar->addAction(edits->addForce, QStringLiteral("add-force"));
    bar->addSeparator();
    bar->addAction(sheet->parallelogram, QStringLiteral("parallelogram"));
    bar->addAction(sheet->triangle, QStringLiteral("triangle"));
    bar->addAction(sheet->polygon, QStringLiteral("polygon"));
    bar->addAction(sheet->otherHalf, QStringLiteral("other-half"));
    bar->addSeparator();
    bar->addAction(sheet->snap, QStringLiteral("snap"));
    bar->addAction(sheet->fit, QStringLiteral("fit"));
    bar->addActionAtEnd(practising->practiceList, QStringLiteral("practice"));
    bar->addActionAtEnd(teach->ownAnswer, QStringLiteral("own-answer"));
    bar->addActionAtEnd(teach->lecture, QStringLiteral("lecture"));
    bar->addActionAtEnd(files->handOut, QStringLiteral("hand-out"));
}

void MainWindow::Private::connectParts() {
    QObject::connect(&document, &SketchDocument::fileChanged, &window, [this] { showTitle(); });
    QObject::connect(canvas, &Canvas::selectionChanged, panel, &Panel::select);
    QObject::connect(panel, &Panel::selected, canvas, &Canvas::select);
    QObject::connect(panel, &Panel::pointedAt, canvas, &Canvas::highlight);
    QObject::connect(panel, &Panel::partsPointed, canvas, &Canvas::lightParts);
    QObject::connect(canvas, &Canvas::partPointed, panel, &Panel::lightPart);
    QObject::connect(canvas, &Canvas::divisionChanged, panel, &Panel::setDivision);
    panel->setDivision(divisionOf(canvas->view())); // what it told before anybody listened
    QObject::connect(canvas, &Canvas::pointerReadout, hints, &HintLine::setReadout);
    QObject::connect(canvas, &Canvas::hint, hints, &HintLine::setRichHint);
    QObject::connect(canvas, &Canvas::unitAsked, sheet, &SheetMenu::askUnit);
    QObject::connect(panel, &Panel::unitAsked, sheet, &SheetMenu::askUnit);
    auto* announcer = new Announcer(document, *panel, hints->status(), hints);
    QObject::connect(canvas, &Canvas::answered, announcer, &Announcer::say);
    QObject::connect(hints, &HintLine::told, announcer, &Announcer::say);
    QObject::connect(notice, &Notice::told, announcer, &Announcer::say);
    QObject::connect(panel, &Panel::givenTold, announcer, &Announcer::sayAtRest);
    new MenuKey(&window);
    new ItemFocus(&window);
    new DialogRoom(&window);
    QObject::connect(canvas, &Canvas::snappingChanged, &window,
                     [this](bool on) { settings.setSnapping(on); });
    QObject::connect(canvas, &Canvas::constructionChanged, &window, [this] {
        settings.setConstruction(nameOf(canvas->construction()));
        settings.setOtherOrder(canvas->otherOrder());
    });
    QObject::connect(panel, &Panel::foldingChanged, &window, [this] { settings.setFolded(panel->folded()); });
    orderTabs();
    QObject::connect(panel->ownAnswer(), &OwnAnswerView::tabOrderChanged, &window, [this] { orderTabs(); });
    QObject::connect(sheet, &SheetMenu::themeChosen, &window, [this](ThemeName name) {
        settings.setTheme(name);
        window.setTheme(name);
    });
}

/// From the sheet to the fields of the learner's own answer, and then on to the panel's table.
void MainWindow::Private::orderTabs() {
    QWidget* before = canvas;
    for (QWidget* next : panel->ownAnswer()->tabOrder()) {
        QWidget::setTabOrder(before, next);
        before = next;
    }
    for (QWidget* next : exerciseView->tabOrder()) {
        QWidget::setTabOrder(before, next);
        before = next;
    }
}

/// On a small screen, or one whose letters are large, the window may be smaller than it is ever to be
/// elsewhere: else its last line would lie below the screen.
void MainWindow::Private::restore() {
    constexpr QSize kFrame(16, 64); // the title bar and borders that a window manager adds
    const QSize room = window.screen()->availableSize() - kFrame;
    window.setMinimumSize(kLeastSize.boundedTo(room));
    if (!window.restoreGeometry(settings.geometry())) {
        window.resize(kFirstSize.boundedTo(room));
    }
    if (!splitter->restoreState(settings.splitter())) {
        const int panelWidth = std::clamp(window.width() * 2 / 5, panel->minimumWidth(), kPanelWidth);
        splitter->setSizes({window.width() - panelWidth, panelWidth});
    }
}

void MainWindow::Private::showTitle() {
    const QString path = document.path();
    const QString name = path.isEmpty() ? MainWindow::tr("Unsaved sketch") : QFileInfo(path).fileName();
    window.setWindowTitle(MainWindow::tr("%1[*] \u2013 Tailpoint").arg(name));
    window.setWindowModified(document.isModified());
}

MainWindow::MainWindow(const QString& path, QWidget* parent)
    : QMainWindow(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("mainWindow"));
    setAcceptDrops(true);
    d->fillBar(); // first: Tab goes from the bar to the sheet and on to the panel
    d->lay();
    d->connectParts();
    setTheme(d->settings.theme());
    d->restore();
    d->files->start(path);
    d->showTitle();
    d->canvas->setFocus();
}

/// Sheet and panel read the document: they go before it.
MainWindow::~MainWindow() {
    d->unsavedWork.reset();
    delete centralWidget(); // not taken out first: all in it would be styled anew
}

SketchDocument& MainWindow::document() {
    return d->document;
}
Canvas& MainWindow::canvas() {
    return *d->canvas;
}
Panel& MainWindow::panel() {
    return *d->panel;
}

bool MainWindow::openPath(const QString& path) {
    return d->files->open(path);
}
void MainWindow::watchUnsavedWork() {
    d->unsavedWork = std::make_unique<UnsavedWork>(d->parts(), [this] { return d->files->mayLoseChanges(); });
    connect(d->files->recover, &QAction::triggered, d->unsavedWork.get(), &UnsavedWork::choose);
}
void MainWindow::keepUnsavedWork() {
    d->panel->finishTyping();
    if (!d->unsavedWork && d->document.isModified()) // right after the start
        watchUnsavedWork();
    if (d->unsavedWork)
        d->unsavedWork->keep();
}
void MainWindow::leaveUnsavedWork() {
    if (d->unsavedWork)
        d->unsavedWork->leave();
    else if (d->document.isModified()) // right after the start
        Autosave(d->document).leave();
    d->document.file().take({}); // its lock too
}
bool MainWindow::saveTo(const QString& path) {
    return d->files->saveTo(path);
}
void MainWindow::setTheme(ThemeName name) {
    const Theme& theme = themeOf(name);
    QApplication::setPalette(paletteOf(theme)); // dialogs and menus too
    setStyleSheet(styleSheetOf(theme));
    d->bar->setTheme(theme);
    d->notice->setTheme(theme);
    d->snap->setTheme(theme);
    d->strip->setTheme(theme);
    d->caseBar->setTheme(theme);
    d->practiceHints->setTheme(theme);
    d->exerciseView->setTheme(theme);
    d->canvas->setTheme(name);
    d->panel->setTheme(name);
}

/// Sheet and panel are painted together, of one result: several moves in a frame are one refresh.
bool MainWindow::event(QEvent* event) {
    if (d && event->type() == QEvent::UpdateRequest) // the menus are made before there is one
        d->panel->catchUp();
    return QMainWindow::event(event);
}

/// The first paint comes before this timer's turn.
void MainWindow::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    if (!std::exchange(d->shown, true)) {
        QTimer::singleShot(kAfterFirstPaint, this, [this] {
            setWindowIcon(QIcon(tintedIcon(QStringLiteral("tailpoint"), Qt::black, 128, 1)));
            if (!d->unsavedWork)
                watchUnsavedWork();
        });
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!d->files->mayLoseChanges()) {
        event->ignore();
        return;
    }
    d->settings.setGeometry(saveGeometry());
    d->settings.setSplitter(d->splitter->saveState());
    event->accept();
}

/// What nothing inside has a use for.
void MainWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && d->ownAnswer.isOn()) {
        return d->ownAnswer.end();
    }
    QMainWindow::keyPressEvent(event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFile(event->mimeData()).isEmpty()) {
        event->acceptProposedAction();
    }
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString path = droppedFile(event->mimeData());
    if (!path.isEmpty()) {
        event->acceptProposedAction();
        d->files->openAsked(path);
    }
}

} // namespace tailpoint
