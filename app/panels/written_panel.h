#pragma once

#include <QTimer>
#include <QWidget>

#include "core/base/result.h"
#include "core/words/writer.h"

class QTextBrowser;
class QToolButton;
class QUrl;

namespace lacewright::app {

class Document;
class ViewState;

// The chart in written rows, for the size looked at or for all of them. The row of the cursor
// stands out; a click on a word selects its cells.
class WrittenPanel : public QWidget {
    Q_OBJECT

 public:
    WrittenPanel(Document& document, ViewState& view, QWidget* parent = nullptr);

    // Writes the rows anew at once, however large the chart is.
    void writeNow();

 protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

 private:
    // Soon, while the panel can be seen and the chart is small enough to be written as it is drawn.
    void writeSoon();
    void writeOrOffer();
    void display();
    void markRow();  // the one with the cursor
    QString lineHtml(int line) const;
    void follow(const QUrl& link);
    void copy(bool asHtml);

    Document& document_;
    ViewState& view_;
    QTextBrowser* page_;
    QToolButton* copyText_;
    QToolButton* copyHtml_;
    QTimer timer_;
    bool stale_ = true;  // the chart or the size has changed since the rows were written
    Result<WrittenChart> written_;
};

}  // namespace lacewright::app
