#pragma once

#include <QWidget>

class QLabel;

namespace lacewright::app {

class Document;
class ViewState;
class WorkedRowStrip;

// The row of the cursor worked out, under a line that says what it takes and makes.
class WorkedRowPanel : public QWidget {
    Q_OBJECT

 public:
    WorkedRowPanel(Document& document, ViewState& view, QWidget* parent = nullptr);

 protected:
    void showEvent(QShowEvent* event) override;

 private:
    void refresh();

    Document& document_;
    ViewState& view_;
    QLabel* about_;
    WorkedRowStrip* strip_;
    int row_ = -1;
};

}  // namespace lacewright::app
