#pragma once

#include <QWidget>

class QComboBox;

namespace lacewright::app {

class Document;
class ViewState;

// Which size is looked at, for the toolbar.
class SizeChooser : public QWidget {
    Q_OBJECT

 public:
    SizeChooser(Document& document, ViewState& view, QWidget* parent = nullptr);

 private:
    void fill();

    Document& document_;
    ViewState& view_;
    QComboBox* sizes_;
};

}  // namespace lacewright::app
