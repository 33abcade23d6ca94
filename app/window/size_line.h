#pragma once

#include <QLabel>

namespace lacewright::app {

class Document;
class ViewState;

// How the size that is looked at works the row of the cursor, in a sentence under the chart. Away
// while the chart has no sizes.
class SizeLine : public QLabel {
    Q_OBJECT

 public:
    SizeLine(const Document& document, const ViewState& view, QWidget* parent);

 private:
    void refresh();

    const Document& document_;
    const ViewState& view_;
};

}  // namespace lacewright::app
