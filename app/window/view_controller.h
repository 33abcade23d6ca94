#pragma once

#include <QObject>

class QWidget;

namespace lacewright::app {

class ActionSet;
class ChartView;
class ChecksPanel;
class StitchesPanel;
class ViewState;

// Zoom, tools, companions, the findings' keys, the stitches' keys, and the colours of the program.
class ViewController : public QObject {
    Q_OBJECT

 public:
    struct Parts {
        ChartView& chart;
        StitchesPanel& stitches;
        ChecksPanel& checks;
    };
    ViewController(ViewState& view, const Parts& parts, ActionSet& actions, QObject* parent);

 Q_SIGNALS:
    void panelWanted(QWidget* panel);  // it must be seen before it can have the keyboard

 private:
    void connectZoom();
    void connectTools();
    void connectPanels();
    void connectAppearance();

    ViewState& view_;
    Parts parts_;
    ActionSet& actions_;
};

}  // namespace lacewright::app
