#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "app/cli/verb.h"

namespace lacewright::cli {

// The command line without the program's name, run without a display. Gives the exit code.
int runCli(const std::vector<std::string>& args, std::ostream& out, std::ostream& err,
           const SheetPainters& painters = {});

// The arguments are for runCli, not files for the window: an option, a verb, or a single word that
// names no file.
bool isForCli(const std::vector<std::string>& args);

}  // namespace lacewright::cli
