#pragma once

#include <QWidget>

class QAction;
class QTableView;
class QToolButton;

namespace lacewright::app {

class Document;
class SizesModel;
class ViewState;

// The sizes: looked at by choosing a line, changed in place.
class SizesPanel : public QWidget {
    Q_OBJECT

 public:
    // The commands of the program that stand below the table.
    struct Commands {
        QAction& add;
        QAction& change;
        QAction& remove;
        QAction& plan;
        QAction& rules;
    };
    SizesPanel(Document& document, ViewState& view, const Commands& commands,
               QWidget* parent = nullptr);

 protected:
    void changeEvent(QEvent* event) override;

 private:
    void buildButtons(const Commands& commands);
    void nameTakesTheRest();
    void move(int places);
    void follow();

    Document& document_;
    ViewState& view_;
    SizesModel* model_;
    QTableView* table_;
    QToolButton* up_;
    QToolButton* down_;
    bool following_ = false;  // the table is moved to the chosen size: not the person's move
};

}  // namespace lacewright::app
