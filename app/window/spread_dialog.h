#pragma once

#include "app/window/recipe_dialog.h"

class QComboBox;
class QSpinBox;

namespace lacewright::app {

// Increases or decreases spread evenly over a row.
class SpreadDialog : public RecipeDialog {
    Q_OBJECT

 public:
    // Begins with so many stitches on the needle; 0 where that is not known.
    SpreadDialog(int stitches, bool inTheRound, QWidget* parent);

 private:
    void refresh();

    QSpinBox* before_;
    QSpinBox* after_;
    QComboBox* increase_;
    QComboBox* ends_;
};

}  // namespace lacewright::app
