#pragma once

#include <QDialog>

#include "core/base/result.h"

class QFormLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace lacewright::app {

// A dialog that turns a few numbers into a recipe in words: a form, and below it the recipe, which
// follows every change and can be copied. It changes nothing in the chart and stays open beside it.
class RecipeDialog : public QDialog {
    Q_OBJECT

 public:
    RecipeDialog(const QString& title, const QString& sentence, QWidget* parent);

 protected:
    QFormLayout& form() { return *form_; }
    // A sentence of why there is none where the recipe is refused.
    void showRecipe(const Result<std::string>& recipe);
    void showEvent(QShowEvent* event) override;

 private:
    void copy();

    QFormLayout* form_;
    QPlainTextEdit* recipe_;
    QLabel* problem_;
    QPushButton* copy_;
    QPushButton* close_;
};

}  // namespace lacewright::app
