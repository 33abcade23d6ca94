#pragma once

#include <QDialog>
#include <optional>

#include "core/chart/chart.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace lacewright::app {

class UserPrompts;
class WrittenSource;

// Turns written rows into a chart: reads them as they are typed and says what comes of them.
class RowsDialog : public QDialog {
    Q_OBJECT

 public:
    RowsDialog(UserPrompts& prompts, const QString& text, QWidget* parent);
    // Requires: the dialog was accepted.
    Chart chart() const { return *chart_; }

    void accept() override;

 private:
    void drawNow();
    void offerSizes(const std::vector<std::string>& sizes);
    void tell(const QString& sentence, bool usable);

    WrittenSource* source_;
    QLabel* sizeLabel_;
    QComboBox* size_;
    QLabel* outcome_;
    QPushButton* open_;
    std::optional<Chart> chart_;
};

}  // namespace lacewright::app
