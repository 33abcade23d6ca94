#pragma once

#include <QCoreApplication>

class QDockWidget;
class QMainWindow;
class QMenu;
class QWidget;

namespace lacewright::app {

class ActionSet;
class ChecksPanel;
class Document;
class StitchesPanel;
class ViewState;
class WorkedRowPanel;

// The panels around the chart: which there are, where they stand at first and under what name, and
// the menu that shows and hides them. The window owns them.
class PanelDocks {
    Q_DECLARE_TR_FUNCTIONS(lacewright::app::PanelDocks)

 public:
    // All must live as long as the docks are used.
    PanelDocks(QMainWindow& window, QMenu& menu, Document& document, ViewState& view,
               const ActionSet& actions);

    StitchesPanel& stitches() const { return *stitches_; }
    ChecksPanel& checks() const { return *checks_; }
    // Shows the dock of a panel before the others that share its place.
    void raise(const QWidget& panel) const;
    bool showsWorkedRow() const;
    void showWorkedRow(bool on) const;
    // For a window without a remembered layout.
    void setFirstWidths() const;

 private:
    QDockWidget* add(Qt::DockWidgetArea area, QWidget* panel, const char* name,
                     const QString& title);

    QMainWindow& window_;
    QMenu& menu_;
    StitchesPanel* stitches_;
    ChecksPanel* checks_;
    WorkedRowPanel* workedRow_ = nullptr;
};

}  // namespace lacewright::app
