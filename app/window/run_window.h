#pragma once

#include <QStringList>

namespace lacewright::app {

// Runs the program with its window until the last window is closed. Gives the exit code.
int runWindow(int argc, char** argv, const QStringList& files);

}  // namespace lacewright::app
