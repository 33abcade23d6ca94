#pragma once

#include <QWidget>

#include "core/check/finding.h"

class QLabel;
class QVBoxLayout;

namespace lacewright::app {

class Document;

// The mends of one finding, a button each; a click does the mend as one undo step.
class MendButtons : public QWidget {
    Q_OBJECT

 public:
    explicit MendButtons(Document& document, QWidget* parent = nullptr);

    void show(const std::vector<Mend>& mends);
    void clear() { show({}); }
    void doFirst();

 private:
    void apply(std::size_t index);

    Document& document_;
    std::vector<Mend> mends_;
    QLabel* heading_;
    QVBoxLayout* layout_;
};

}  // namespace lacewright::app
