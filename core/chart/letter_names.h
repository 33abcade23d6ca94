#pragma once

#include <string>

namespace lacewright {

// The names points and repeats get: A, B ... Z, A2, B2 ... Rank is 0-based.
std::string letterName(int rank);
// A name as letterName chooses them.
bool isLetterName(const std::string& name);

}  // namespace lacewright
