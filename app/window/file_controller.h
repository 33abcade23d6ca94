#pragma once

#include <QObject>
#include <QStringList>
#include <functional>

#include "core/base/result.h"

class QWidget;

namespace lacewright {
struct Chart;
}

namespace lacewright::app {

class ActionSet;
class Document;
class UserPrompts;
struct Starter;

// New, open, save, revert, and the question before unsaved work is lost. One chart per window: a
// chart that is opened beside another goes to a window of its own.
class FileController : public QObject {
    Q_OBJECT

 public:
    // `window` is the parent of questions.
    FileController(Document& document, ActionSet& actions, UserPrompts& prompts, QWidget& window);

    // Opens the file here when this window holds nothing of worth, or else in another window.
    void open(const QString& path);
    // Begins with a chart that is built in; it has no file yet.
    void begin(const Starter& starter);
    // False when the person would rather stay.
    bool mayClose();

    static QStringList recentFiles();

 Q_SIGNALS:
    void elsewhere(const lacewright::Chart& chart, const QString& path);  // open in another window
    void recentFilesChanged();

 private:
    void newChart();
    bool save();
    bool saveAs();
    void revert();
    bool writeTo(const QString& path);
    void place(Chart chart, const QString& path);
    void remember(const QString& path);
    void refresh();

    Document& document_;
    ActionSet& actions_;
    UserPrompts& prompts_;
    QWidget& window_;
};

}  // namespace lacewright::app
