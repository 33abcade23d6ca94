#pragma once

#include <QIcon>

class QPalette;

namespace lacewright::app {

// An icon of the program in the text colour of the palette, quieter when disabled. `name` is a file
// of resources/icons without its ending.
QIcon themedIcon(const QString& name, const QPalette& palette);
// The icon of the program itself.
QIcon programIcon();
// Makes the files of resources/lacewright.qrc known; harmless when repeated.
void initResources();

}  // namespace lacewright::app
