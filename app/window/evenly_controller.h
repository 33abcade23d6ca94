#pragma once

#include <QObject>

class QWidget;

namespace lacewright::app {

class ActionSet;
class Document;
class ViewState;

// Recipes that begin with the chart's numbers and change nothing in it: changes spread evenly,
// stitches picked up along an edge.
class EvenlyController : public QObject {
    Q_OBJECT

 public:
    EvenlyController(const Document& document, const ViewState& view, ActionSet& actions,
                     QWidget& window);

 private:
    void spread();
    void pickUp();

    const Document& document_;
    const ViewState& view_;
    QWidget& window_;
};

}  // namespace lacewright::app
