#pragma once

#include <QObject>
#include <optional>

#include "app/document/view_state.h"

class QLabel;
class QSlider;
class QStatusBar;
class QToolButton;

namespace lacewright::app {

class Document;

// The lower edge of the window: the cell, the count of its row, the zoom and the verdict.
class StatusLine : public QObject {
    Q_OBJECT

 public:
    StatusLine(Document& document, ViewState& view, QStatusBar& bar);

    // The cell under the pointer; nothing: that of the keyboard.
    void point(std::optional<Cell> cell);
    void refreshVerdict();

 Q_SIGNALS:
    void verdictClicked();

 private:
    void refreshCell();

    Document& document_;
    ViewState& view_;
    QStatusBar& bar_;
    QLabel* cell_;
    QLabel* count_;
    QSlider* zoom_;
    QToolButton* verdict_;
    std::optional<Cell> pointed_;
};

}  // namespace lacewright::app
