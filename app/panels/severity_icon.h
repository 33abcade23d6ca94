#pragma once

#include <QIcon>

#include "core/check/finding.h"

class QPalette;

namespace lacewright::app {

// Told apart by shape as well as by colour: a fault is a filled octagon, a warning a triangle, a
// note an outlined disc.
QIcon severityIcon(Severity severity, const QPalette& palette);
// A check mark: all is proven.
QIcon provenIcon(const QPalette& palette);

}  // namespace lacewright::app
