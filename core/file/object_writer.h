#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/extras.h"

namespace lacewright {

// Writes the members of one JSON object in the order they are given.
class ObjectWriter {
 public:
    void raw(std::string_view name, std::string json);
    void text(std::string_view name, std::string_view value);
    void textUnlessEmpty(std::string_view name, std::string_view value);
    void number(std::string_view name, int value);
    void numberUnless(std::string_view name, int value, int usual);
    void decimal(std::string_view name,
                 double value);  // the shortest spelling that reads back alike
    void trueOrNothing(std::string_view name, bool value);
    void extras(const Extras& extras);

    std::string onOneLine() const;
    // A member on every line, two blanks before it.
    std::string onLines() const;

 private:
    std::vector<std::string> members_;  // "name": value
};

// A list as the value of a chart's member, an item on every line.
std::string listOnLines(const std::vector<std::string>& items);
// A list on one line.
std::string listOnOneLine(const std::vector<std::string>& items);

}  // namespace lacewright
