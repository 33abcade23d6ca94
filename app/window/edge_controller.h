#pragma once

#include <QObject>

#include "core/chart/chart.h"

class QWidget;

namespace lacewright::app {

class ActionSet;
class Document;
class UserPrompts;
class ViewState;

// Which size is looked at, where it begins and ends, and the names of points, all by key.
class EdgeController : public QObject {
    Q_OBJECT

 public:
    EdgeController(Document& document, ViewState& view, ActionSet& actions, UserPrompts& prompts,
                   QWidget& window);

    void renamePoint(const QString& point);

 private:
    // To the next line where nothing is parted; direction 1 is to the left.
    void step(Edge edge, int direction);
    // Where rows are selected, on these alone.
    void moveTo(Edge edge, int line);
    void lookAtNext(int direction);
    void refresh();

    Document& document_;
    ViewState& view_;
    ActionSet& actions_;
    UserPrompts& prompts_;
    QWidget& window_;
};

}  // namespace lacewright::app
