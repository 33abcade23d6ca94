#pragma once

#include <QString>

class QCheckBox;
class QFormLayout;
class QWidget;

namespace lacewright::app {

// A line of a form whose value may be left open: a box to tick, and the field that is on while the
// box is ticked. `beside` stands at its right.
QCheckBox* optionalField(QFormLayout& form, const QString& label, const QString& tick,
                         QWidget* field, bool on, QWidget* beside = nullptr);

}  // namespace lacewright::app
