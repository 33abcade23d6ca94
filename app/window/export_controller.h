#pragma once

#include <QObject>
#include <QString>

#include "core/base/result.h"

class QWidget;

namespace lacewright::app {

class ActionSet;
class Document;
class UserPrompts;
class ViewState;

// The chart on paper: as a drawing in a file, or from a printer. The size that is looked at is
// marked in it.
class ExportController : public QObject {
    Q_OBJECT

 public:
    ExportController(Document& document, ViewState& view, ActionSet& actions, UserPrompts& prompts,
                     QWidget& window);

 private:
    void exportDrawing();
    void print();
    // By the ending of the path: svg, pdf or png.
    Outcome write(const QString& path) const;

    Document& document_;
    ViewState& view_;
    UserPrompts& prompts_;
    QWidget& window_;
};

}  // namespace lacewright::app
