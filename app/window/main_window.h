#pragma once

#include <QMainWindow>
#include <memory>

#include "app/document/document.h"
#include "app/document/journal.h"
#include "app/document/view_state.h"
#include "app/window/action_set.h"

class QMenu;
class QStackedWidget;
class QToolBar;

namespace lacewright::app {

class ChartView;
class FileController;
class PanelDocks;
class StartPage;
class StatusLine;
class UserPrompts;

// One chart and everything around it. Builds the parts and joins them; what a command does is known
// by the controllers.
class MainWindow : public QMainWindow {
    Q_OBJECT

 public:
    // `journalFolder`: where unsaved work is kept. The prompts must live longer.
    MainWindow(UserPrompts& prompts, const QString& journalFolder, QWidget* parent = nullptr);
    ~MainWindow() override;

    Document& document() { return document_; }
    ViewState& view() { return view_; }
    ActionSet& actions() { return actions_; }

    void openFile(const QString& path);
    void showChart(Chart chart, const QString& path);
    // Shows work that was left behind: unsaved, and one step away from the saved file if there is
    // one.
    void recover(const Recovered& work);
    void showStartPage(bool on);
    bool showsStartPage() const;

 Q_SIGNALS:
    void elsewhere(const lacewright::Chart& chart, const QString& path);
    void quitWanted();

 protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void changeEvent(QEvent* event) override;

 private:
    void buildCentre();
    void buildMenusAndBars();
    void buildControllers(UserPrompts& prompts);
    // A whole chart where that is large enough to read.
    void zoomToRead();
    void fillRecentMenu();
    void connectStartPage();
    void refreshTitle();
    void restoreLayout();
    void rememberLayout();
    void raisePanel(QWidget* panel);

    Document document_;
    ViewState view_;
    ActionSet actions_;
    Journal journal_;
    QStackedWidget* stack_ = nullptr;
    StartPage* start_ = nullptr;
    ChartView* chart_ = nullptr;
    QToolBar* toolBar_ = nullptr;
    QMenu* recentMenu_ = nullptr;
    QMenu* panelsMenu_ = nullptr;
    std::unique_ptr<PanelDocks> docks_;
    StatusLine* status_ = nullptr;
    FileController* files_ = nullptr;
    QByteArray chartLayout_;  // docks as they were before the start page hid them
};

}  // namespace lacewright::app
