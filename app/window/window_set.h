#pragma once

#include <QObject>
#include <QPointer>
#include <QStringList>
#include <vector>

namespace lacewright {
struct Chart;
}

namespace lacewright::app {

class MainWindow;
class UserPrompts;

// The open windows, one chart each. A window deletes itself when it is closed.
class WindowSet : public QObject {
    Q_OBJECT

 public:
    WindowSet(UserPrompts& prompts, const QString& journalFolder);
    ~WindowSet() override;

    // What the program shows when it starts: the files, or unsaved work, or the first chart of all,
    // or the start page.
    void start(const QStringList& files);
    std::vector<MainWindow*> windows() const;

 private:
    MainWindow& newWindow();
    void openElsewhere(const Chart& chart, const QString& path);
    bool offerRecovery();
    void closeAll();

    UserPrompts& prompts_;
    QString journalFolder_;
    std::vector<QPointer<MainWindow>> windows_;
};

}  // namespace lacewright::app
