#include "app/window/window_set.h"

#include <QSettings>

#include "app/window/main_window.h"
#include "app/window/starters.h"
#include "app/window/user_prompts.h"

namespace lacewright::app {

namespace {

const QString kStartedBefore = QStringLiteral("startedBefore");
constexpr int kCascade = 28;  // device-independent pixels between one window and the next

}  // namespace

WindowSet::WindowSet(UserPrompts& prompts, const QString& journalFolder)
    : prompts_(prompts), journalFolder_(journalFolder) {}

WindowSet::~WindowSet() {
    for (MainWindow* window : windows()) delete window;
}

std::vector<MainWindow*> WindowSet::windows() const {
    std::vector<MainWindow*> open;
    for (const QPointer<MainWindow>& window : windows_) {
        if (window) open.push_back(window);
    }
    return open;
}

MainWindow& WindowSet::newWindow() {
    auto* window = new MainWindow(prompts_, journalFolder_);
    window->setAttribute(Qt::WA_DeleteOnClose);
    connect(window, &MainWindow::elsewhere, this, &WindowSet::openElsewhere);
    connect(window, &MainWindow::quitWanted, this, &WindowSet::closeAll);
    const std::vector<MainWindow*> others = windows();
    if (!others.empty()) window->move(others.back()->pos() + QPoint(kCascade, kCascade));
    windows_.emplace_back(window);
    window->show();
    return *window;
}

void WindowSet::start(const QStringList& files) {
    const bool recovered = offerRecovery();
    if (!files.isEmpty()) {
        for (const QString& file : files) {
            MainWindow& window = newWindow();
            window.openFile(file);
            if (window.document().path().isEmpty()) window.showStartPage(true);
        }
        return;
    }
    if (recovered) return;
    MainWindow& window = newWindow();
    QSettings settings;
    const Result<Chart> sample = chartOf(firstStarter());
    if (!settings.value(kStartedBefore).toBool() && sample) {
        settings.setValue(kStartedBefore, true);
        window.showChart(*sample, {});
    } else {
        window.showStartPage(true);
    }
}

void WindowSet::openElsewhere(const Chart& chart, const QString& path) {
    newWindow().showChart(chart, path);
}

bool WindowSet::offerRecovery() {
    if (!hasLeftBehind(journalFolder_)) return false;
    const Question question{tr("Unsaved work"),
                            tr("The program stopped last time before everything was saved. The "
                               "unsaved work is still here."),
                            tr("Recover it"), tr("Not now")};
    if (!prompts_.confirm(nullptr, question)) return false;
    bool any = false;
    for (const Recovered& work : takeLeftBehind(journalFolder_)) {
        newWindow().recover(work);
        any = true;
    }
    return any;
}

void WindowSet::closeAll() {
    for (MainWindow* window : windows()) {
        if (!window->close()) return;
    }
}

}  // namespace lacewright::app
