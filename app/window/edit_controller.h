#pragma once

#include <QObject>
#include <QString>
#include <functional>

#include "core/chart/edits.h"

class QWidget;

namespace lacewright::app {

class ActionSet;
class Document;
class UserPrompts;
class ViewState;

// Undo, the clipboard, the selection, rows and columns, and the chart's properties.
class EditController : public QObject {
    Q_OBJECT

 public:
    EditController(Document& document, ViewState& view, ActionSet& actions, UserPrompts& prompts,
                   QWidget& window);

 private:
    void connectUndo();
    void connectClipboard();
    void connectSelection();
    void connectRowsAndColumns();
    void connectChart();
    void copy();
    void paste();
    void insertRows(int beforeRow);
    void insertColumns(int beforeColumn);
    void refreshPaste();

    Document& document_;
    ViewState& view_;
    ActionSet& actions_;
    UserPrompts& prompts_;
    QWidget& window_;
};

}  // namespace lacewright::app
