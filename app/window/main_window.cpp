#include "app/window/main_window.h"

#include <QCloseEvent>
#include <QDockWidget>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QMenu>
#include <QMimeData>
#include <QScreen>
#include <QScrollArea>
#include <QSettings>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTimer>
#include <QToolBar>
#include <QVBoxLayout>
#include <algorithm>

#include "app/canvas/chart_view.h"
#include "app/panels/checks_panel.h"
#include "app/window/compare_window.h"
#include "app/window/edge_controller.h"
#include "app/window/edit_controller.h"
#include "app/window/evenly_controller.h"
#include "app/window/export_controller.h"
#include "app/window/file_controller.h"
#include "app/window/help_controller.h"
#include "app/window/hint_strip.h"
#include "app/window/menus.h"
#include "app/window/panel_docks.h"
#include "app/window/repeat_controller.h"
#include "app/window/size_chooser.h"
#include "app/window/size_line.h"
#include "app/window/start_page.h"
#include "app/window/status_line.h"
#include "app/window/themed_icon.h"
#include "app/window/view_controller.h"
#include "core/file/chart_file.h"

namespace lacewright::app {

namespace {

constexpr QSize kFirstSize(1280, 820);  // device-independent pixels
constexpr QSize kFrame(8, 40);          // what a title bar and borders may take of the screen
// Cells of a chart that is just opened, device-independent pixels.
constexpr int kSmallestToRead = 18;
constexpr int kLargestToRead = 32;
constexpr int kLeastChart = 320;  // a narrow window takes room from the docks, not from the chart
constexpr int kChartPage = 0;     // places in the stack
constexpr int kStartPage = 1;
constexpr int kLayoutVersion = 3;  // raise when docks are added or renamed
const QString kGeometryKey = QStringLiteral("window/geometry");
const QString kLayoutKey = QStringLiteral("window/layout");

}  // namespace

MainWindow::MainWindow(UserPrompts& prompts, const QString& journalFolder, QWidget* parent)
    : QMainWindow(parent), view_(document_), journal_(document_, journalFolder) {
    initResources();
    setWindowIcon(programIcon());
    setAcceptDrops(true);
    setDockOptions(AnimatedDocks | AllowNestedDocks | AllowTabbedDocks);
    buildCentre();
    buildMenusAndBars();
    docks_ = std::make_unique<PanelDocks>(*this, *panelsMenu_, document_, view_, actions_);
    status_ = new StatusLine(document_, view_, *statusBar());
    buildControllers(prompts);
    connectStartPage();
    connect(&document_, &Document::fileStateChanged, this, &MainWindow::refreshTitle);
    connect(&document_, &Document::changed, this, &MainWindow::refreshTitle);
    refreshTitle();
    colourIcons(actions_, palette());
    restoreLayout();
    chart_->setFocus();
}

MainWindow::~MainWindow() {
    // The views read the document, which is a member and would go before them.
    qDeleteAll(findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
}

void MainWindow::buildCentre() {
    chart_ = new ChartView(document_, view_, this);
    chart_->setObjectName(QStringLiteral("chart"));
    chart_->setMinimumWidth(kLeastChart);
    auto* page = new QWidget(this);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    if (HintStrip::isWanted()) layout->addWidget(new HintStrip(page));
    layout->addWidget(chart_, 1);
    layout->addWidget(new SizeLine(document_, view_, page));
    start_ = new StartPage(this);
    stack_ = new QStackedWidget(this);
    stack_->addWidget(page);
    // The page keeps its own width; a window that is smaller scrolls it.
    auto* scroller = new QScrollArea(this);
    scroller->setWidget(start_);
    scroller->setWidgetResizable(true);
    scroller->setFrameShape(QFrame::NoFrame);
    stack_->addWidget(scroller);
    setCentralWidget(stack_);
}

void MainWindow::buildMenusAndBars() {
    const auto menus = buildMenus(*this, actions_);
    recentMenu_ = new QMenu(tr("Open r&ecent"), this);
    recentMenu_->setObjectName(QStringLiteral("recentMenu"));
    menus.at(Menu::File)->insertMenu(&actions_[CommandId::ShowStart], recentMenu_);
    connect(recentMenu_, &QMenu::aboutToShow, this, &MainWindow::fillRecentMenu);
    panelsMenu_ = new QMenu(tr("&Panels"), this);
    menus.at(Menu::View)->insertMenu(&actions_[CommandId::AppearanceSystem], panelsMenu_);
    toolBar_ = buildToolBar(*this, actions_);
    auto* spring = new QWidget(toolBar_);
    spring->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    toolBar_->addWidget(spring);
    toolBar_->addWidget(new SizeChooser(document_, view_, toolBar_));
    QMenu* chartMenu = buildChartMenu(*this, actions_);
    connect(chart_, &ChartView::menuRequested, chartMenu,
            [chartMenu](QPoint place) { chartMenu->popup(place); });
}

void MainWindow::buildControllers(UserPrompts& prompts) {
    files_ = new FileController(document_, actions_, prompts, *this);
    new EditController(document_, view_, actions_, prompts, *this);
    new ExportController(document_, view_, actions_, prompts, *this);
    new RepeatController(document_, view_, actions_, prompts, *this);
    auto* edges = new EdgeController(document_, view_, actions_, prompts, *this);
    connect(chart_, &ChartView::pointChosen, edges, &EdgeController::renamePoint);
    new EvenlyController(document_, view_, actions_, *this);
    new HelpController(actions_, *this);
    auto* views =
        new ViewController(view_, {*chart_, docks_->stitches(), docks_->checks()}, actions_, this);
    connect(files_, &FileController::elsewhere, this, &MainWindow::elsewhere);
    connect(views, &ViewController::panelWanted, this, &MainWindow::raisePanel);
    connect(chart_, &ChartView::cellHovered, status_, [this](Cell cell) { status_->point(cell); });
    connect(chart_, &ChartView::hoverLeft, status_, [this] { status_->point({}); });
    connect(status_, &StatusLine::verdictClicked, this, [this] { raisePanel(&docks_->checks()); });
    actions_.on(CommandId::ShowStart, [this] { showStartPage(!showsStartPage()); });
    auto* compare = new CompareWindow(document_, view_, prompts, this);
    actions_.on(CommandId::CompareRows, [compare] {
        compare->show();
        compare->raise();
        compare->activateWindow();
    });
    actions_.on(CommandId::WorkRowOut, [this] {
        const bool on = !docks_->showsWorkedRow();
        if (on) showStartPage(false);
        docks_->showWorkedRow(on);
    });
    actions_.on(CommandId::Quit, [this] { Q_EMIT quitWanted(); });
    connect(&document_, &Document::replaced, this, [this] {
        showStartPage(false);
        // Not before the window has its layout.
        QTimer::singleShot(0, this, &MainWindow::zoomToRead);
    });
}

void MainWindow::connectStartPage() {
    connect(start_, &StartPage::newWanted, &actions_[CommandId::NewChart], &QAction::trigger);
    connect(start_, &StartPage::openWanted, &actions_[CommandId::OpenChart], &QAction::trigger);
    connect(start_, &StartPage::fileChosen, files_, &FileController::open);
    connect(start_, &StartPage::starterChosen, files_, &FileController::begin);
}

void MainWindow::zoomToRead() {
    chart_->zoomToFit();
    view_.zoomTo(std::clamp(view_.cellSize(), kSmallestToRead, kLargestToRead));
}

void MainWindow::fillRecentMenu() {
    recentMenu_->clear();
    for (const QString& file : FileController::recentFiles()) {
        QAction* action = recentMenu_->addAction(QFileInfo(file).fileName());
        action->setToolTip(file);
        connect(action, &QAction::triggered, this, [this, file] { openFile(file); });
    }
    if (recentMenu_->isEmpty()) recentMenu_->addAction(tr("None yet"))->setEnabled(false);
}

void MainWindow::openFile(const QString& path) {
    files_->open(path);
}

void MainWindow::showChart(Chart chart, const QString& path) {
    document_.replaceWith(std::move(chart), path);
}

void MainWindow::recover(const Recovered& work) {
    const Result<Chart> saved = work.path.isEmpty() ? Result<Chart>(blankChart(work.chart.width, 1))
                                                    : loadChart(work.path.toStdString());
    document_.replaceWith(saved ? *saved : blankChart(work.chart.width, 1), work.path);
    document_.apply(tr("Recover unsaved work"), work.chart);
}

bool MainWindow::showsStartPage() const {
    return stack_->currentIndex() == kStartPage;
}

void MainWindow::showStartPage(bool on) {
    if (on == showsStartPage()) return;
    const auto docks = findChildren<QDockWidget*>();
    if (on) {
        chartLayout_ = saveState(kLayoutVersion);
        start_->showRecent(FileController::recentFiles());
        stack_->setCurrentIndex(kStartPage);
        for (QDockWidget* dock : docks) dock->hide();
    } else {
        stack_->setCurrentIndex(kChartPage);
        restoreState(chartLayout_, kLayoutVersion);
        chart_->setFocus();
    }
    toolBar_->setVisible(!on);
    statusBar()->setVisible(!on);
    refreshTitle();
}

void MainWindow::refreshTitle() {
    if (showsStartPage()) {
        setWindowTitle(tr("Lacewright"));
        setWindowModified(false);
        return;
    }
    setWindowTitle(tr("%1[*] – Lacewright").arg(document_.displayName()));
    setWindowModified(document_.isModified());
    setWindowFilePath(document_.path());
}

void MainWindow::raisePanel(QWidget* panel) {
    showStartPage(false);
    docks_->raise(*panel);
}

void MainWindow::restoreLayout() {
    const QSettings settings;
    if (!restoreGeometry(settings.value(kGeometryKey).toByteArray()))
        resize(kFirstSize.boundedTo(screen()->availableSize() - kFrame));
    if (restoreState(settings.value(kLayoutKey).toByteArray(), kLayoutVersion)) return;
    docks_->setFirstWidths();
}

void MainWindow::rememberLayout() {
    QSettings settings;
    settings.setValue(kGeometryKey, saveGeometry());
    settings.setValue(kLayoutKey, showsStartPage() ? chartLayout_ : saveState(kLayoutVersion));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->mayClose()) {
        event->ignore();
        return;
    }
    rememberLayout();
    journal_.forget();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    for (const QUrl& url : event->mimeData()->urls()) {
        if (url.isLocalFile()) openFile(url.toLocalFile());
    }
    event->acceptProposedAction();
}

void MainWindow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange && status_) {
        colourIcons(actions_, palette());
        status_->refreshVerdict();
    }
    QMainWindow::changeEvent(event);
}

}  // namespace lacewright::app
