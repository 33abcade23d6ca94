#pragma once

#include <QDialog>

#include "core/base/result.h"

class QFormLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace lacewright::app {

// A dialog that turns a few numbers into a recipe in words: a form, and below it the recipe, which
// follows every change and can be copied. It changes nothing in the chart and stays open beside it.
class RecipeDialog : public QDialog {
    Q_OBJECT

 public:
    RecipeDialog(const QString& title, const QString& sentence, QWidget* parent);

 protected:
    QFormLayout& form() { return *form_; }
    // The end of the dialog, when its form is complete: so Tab reaches it last.
    void addRecipe();
    // A sentence of why there is none where it is refused. Requires: addRecipe.
    void showRecipe(const Result<std::string>& recipe);

 private:
    void copy();

    QFormLayout* form_;
    QVBoxLayout* layout_;
    QPlainTextEdit* recipe_ = nullptr;
    QLabel* problem_ = nullptr;
    QPushButton* copy_ = nullptr;
};

}  // namespace lacewright::app
