#pragma once

#include <QIcon>

#include "app/window/starters.h"

class QPalette;

namespace lacewright::app {

// A small picture of a starter chart: its cells from the lower right corner on, as many as fit.
QIcon starterPicture(const Starter& starter, const QPalette& palette, QSize size);

}  // namespace lacewright::app
