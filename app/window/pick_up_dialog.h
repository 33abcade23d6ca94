#pragma once

#include "app/window/recipe_dialog.h"
#include "core/chart/chart.h"

class QSpinBox;

namespace lacewright::app {

class GaugeFields;
class LengthField;
class LengthUnitField;

// Stitches picked up along the side of a piece, from the gauge. The edge is given in rows or as a
// length; the one follows the other.
class PickUpDialog : public RecipeDialog {
    Q_OBJECT

 public:
    PickUpDialog(const Gauge& gauge, int rows, QWidget* parent);

 private:
    void refresh();
    void lengthGiven();
    void rowsGiven();

    GaugeFields* gauge_;
    QSpinBox* rows_;
    LengthField* length_;
    LengthUnitField* unit_;
};

}  // namespace lacewright::app
