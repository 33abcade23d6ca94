#pragma once

#include <string>
#include <string_view>

#include "core/words/token.h"

namespace lacewright {

// Something to say about a place in a text.
struct ReadMessage {
    bool error = true;  // false: a note, the text was understood
    Place place;
    std::string what;      // a sentence without its full stop
    std::string expected;  // what could have stood here; may be empty
    std::string nearest;   // a known word close to the one written; may be empty

    // The sentence with what was expected and the nearest word.
    std::string sentence() const;
};

// "NAME:line:column: sentence", the line and a caret below the place, each on a line of its own.
std::string rendered(const ReadMessage& message, std::string_view text, std::string_view name);

}  // namespace lacewright
