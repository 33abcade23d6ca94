#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/words/written.h"

// How the ambiguous words of a row are understood.
namespace lacewright {

// Which reading each kind of ambiguous words takes, by kind; a kind that is absent takes the usual.
using ReadingsChosen = std::map<std::string, std::size_t>;
// The reading that is chosen for these words.
const Reading& chosenReading(const Choice& choice, const ReadingsChosen& chosen);
// How often a group is worked by the readings chosen.
std::int64_t chosenTimes(const Group& group, std::size_t size, const ReadingsChosen& chosen);

// Every way to understand the words, the usual one first; as many as may be tried.
std::vector<ReadingsChosen> waysToChoose(const Elements& elements);

}  // namespace lacewright
