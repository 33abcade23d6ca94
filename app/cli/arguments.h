#pragma once

#include <string>
#include <vector>

#include "app/cli/verb.h"

namespace lacewright::cli {

// Sorts the words after a verb into files and options of `call`. "--name=value" is the same as
// "--name value"; after "--" everything is a file. Refuses unknown and doubled options, options
// without their argument, and nothing where files or numbers belong.
Outcome readArguments(const std::vector<std::string>& words, const Verb& verb, Call& call);

}  // namespace lacewright::cli
