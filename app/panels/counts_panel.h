#pragma once

#include <QWidget>

class QLabel;
class QTableView;

namespace lacewright::app {

class CountsModel;
class Document;
class ViewState;

// The stitch count of every row, top row first; a click goes to the row in the chart.
class CountsPanel : public QWidget {
    Q_OBJECT

 public:
    CountsPanel(Document& document, ViewState& view, QWidget* parent = nullptr);

 protected:
    void changeEvent(QEvent* event) override;

 private:
    void follow();
    void explain();

    Document& document_;
    ViewState& view_;
    QLabel* about_;
    CountsModel* model_;
    QTableView* table_;
    bool following_ = false;  // the table is moved to the cursor: not the person's move
};

}  // namespace lacewright::app
