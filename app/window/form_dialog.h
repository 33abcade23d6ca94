#pragma once

#include <QDialog>

class QDialogButtonBox;
class QFormLayout;
class QLabel;
class QPushButton;

namespace lacewright::app {

// A dialog that asks for a few values: a sentence on top, a form, and a button that says what it
// does. The button is off while there is a problem, and the problem is told above it.
class FormDialog : public QDialog {
 public:
    FormDialog(const QString& title, const QString& sentence, const QString& accept,
               QWidget* parent);

 protected:
    QFormLayout& form() { return *form_; }
    void setProblem(const QString& sentence);  // empty: none
    void setSentence(const QString& sentence);
    bool event(QEvent* event) override;

 private:
    void orderFocus();

    QLabel* sentence_;
    QFormLayout* form_;
    QLabel* problem_;
    QPushButton* accept_;
    QDialogButtonBox* buttons_;
};

}  // namespace lacewright::app
