#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/extras.h"
#include "core/file/json_value.h"

namespace lacewright {

// How a choice is spelt in a file.
template <class Choice>
struct Spelling {
    Choice choice;
    std::string_view text;
};

// An allowed stretch of whole numbers, and what to call it in a refusal: "a column".
struct Range {
    std::string_view what = "a whole number";
    int low = 0;
    int high = 0;
};

// The value as a refusal quotes it: "text", 12, a list.
std::string shown(const JsonValue& value);

// One value of a certain kind. All throw Refusal when it is another or outside its limits.
int wholeNumber(const JsonValue& value, const Range& range);
double positiveNumber(const JsonValue& value, int high);
// `high` more or fewer at most.
double signedNumber(const JsonValue& value, int high);
bool truth(const JsonValue& value);
std::string textOf(const JsonValue& value);
std::string nonEmptyText(const JsonValue& value);
const JsonList& listOf(const JsonValue& value, std::size_t most);
[[noreturn]] void refuseChoice(const JsonValue& value, std::span<const std::string> spellings);

// The members of one object, taken one by one; those never asked for are its extras.
class Fields {
 public:
    // Throws Refusal when the value is no object. Keeps a reference to it.
    explicit Fields(const JsonValue& value);

    const JsonValue& value() const { return value_; }
    // The member of that name, or null.
    const JsonValue* find(std::string_view name);
    // The member of that name. Throws Refusal without it; `expected` says what it would be.
    const JsonValue& need(std::string_view name, std::string_view expected);

    int number(std::string_view name, const Range& range);
    int number(std::string_view name, const Range& range, int otherwise);
    std::string text(std::string_view name);      // empty without the member
    std::string needText(std::string_view name);  // neither missing nor empty
    bool flag(std::string_view name);             // false without the member

    // The first choice without the member.
    template <class Choice, std::size_t N>
    Choice choice(std::string_view name, const std::array<Spelling<Choice>, N>& spellings) {
        const JsonValue* found = find(name);
        if (found == nullptr) return spellings.front().choice;
        std::vector<std::string> texts;
        for (const Spelling<Choice>& spelling : spellings) {
            if (found->text() != nullptr && *found->text() == spelling.text) return spelling.choice;
            texts.emplace_back(spelling.text);
        }
        refuseChoice(*found, texts);
    }

    // The items of a list, in order; none without the member.
    std::span<const JsonValue> list(std::string_view name, std::size_t most);
    Extras extras() const;

 private:
    const JsonValue& value_;
    const JsonObject& members_;
    std::vector<bool> taken_;
};

}  // namespace lacewright
