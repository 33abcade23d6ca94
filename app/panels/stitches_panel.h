#pragma once

#include <QStringList>
#include <QTimer>
#include <QWidget>

class QLineEdit;
class QListView;

namespace lacewright::app {

class Document;
class StitchDelegate;
class StitchListModel;
class ViewState;

// The stitches to draw with: search, number keys for the most used, all by kind.
class StitchesPanel : public QWidget {
    Q_OBJECT

 public:
    StitchesPanel(Document& document, ViewState& view, QWidget* parent = nullptr);

    void focusSearch();
    // Chooses the stitch with that number key, 1..StitchListModel::kKeys; none may be there.
    void chooseByKey(int key);

    QSize sizeHint() const override { return {300, 600}; }

 Q_SIGNALS:
    void done();  // the person chose a stitch with Enter and goes back to the chart

 protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

 private:
    void fill();
    void markChosen();

    Document& document_;
    ViewState& view_;
    QLineEdit* search_;
    QListView* list_;
    StitchListModel* model_;
    StitchDelegate* delegate_;
    QStringList lately_;  // most recent first
    QTimer refill_;
    bool filling_ = false;  // the list is being rebuilt: its moves are not the person's
};

}  // namespace lacewright::app
