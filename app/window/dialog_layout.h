#pragma once

#include <QString>

class QFormLayout;
class QLabel;
class QVBoxLayout;
class QWidget;

// The measures that dialogs share, in device-independent pixels.
namespace lacewright::app {

// A form whose fields take the width there is; it belongs to nobody yet.
QFormLayout* newForm();
// The layout of a whole dialog, with the margins around it.
QVBoxLayout* newDialogLayout(QWidget* dialog);
// Plain text that breaks into lines of at least `width`.
QLabel* wrappedLabel(const QString& text, int width, QWidget* parent);

}  // namespace lacewright::app
