#pragma once

#include <QDialog>
#include <QTimer>
#include <vector>

#include "core/words/compare.h"
#include "core/words/writer.h"

class QComboBox;
class QLabel;
class QPlainTextEdit;
class QTextBrowser;
class QUrl;

namespace lacewright::app {

class Document;
class UserPrompts;
class ViewState;
class WrittenSource;

// The rows of the chart and a text side by side, and below them where the two part. A click on a
// stitch leads to its cell and to its word. Stays open beside the chart and follows both.
class CompareWindow : public QDialog {
    Q_OBJECT

 public:
    CompareWindow(Document& document, ViewState& view, UserPrompts& prompts, QWidget* parent);

    void compareNow();

 protected:
    void showEvent(QShowEvent* event) override;

 private:
    QWidget* builtChartSide();
    QWidget* builtTextSide(UserPrompts& prompts);
    QWidget* builtOutcome();
    void chartChanged();
    void offerSizes();
    void writeChart();
    void markRows();
    void tell(const QString& sentence, const QString& html);
    void follow(const QUrl& link);

    Document& document_;
    ViewState& view_;
    QComboBox* size_;
    QPlainTextEdit* chartRows_;
    WrittenSource* source_;
    QWidget* outcome_;
    QLabel* verdictIcon_;
    QLabel* verdict_;
    QTextBrowser* page_;
    QTimer soon_;
    std::vector<std::vector<int>> rowOfBlock_;  // charted row indices of each line on show
    std::vector<RowDifference> differences_;
};

}  // namespace lacewright::app
