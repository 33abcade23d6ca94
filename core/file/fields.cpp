#include "core/file/fields.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "core/base/text.h"
#include "core/file/file_limits.h"
#include "core/file/refusal.h"

namespace lacewright {
namespace {

// The value as a number, when it is one.
std::optional<double> numberIn(const JsonValue& value) {
    if (const std::int64_t* whole = value.whole()) return static_cast<double>(*whole);
    const auto* real = std::get_if<JsonReal>(&value.data);
    if (real == nullptr) return std::nullopt;
    double number = 0;
    std::from_chars(real->text.data(), real->text.data() + real->text.size(), number);
    return std::isfinite(number) ? std::optional(number) : std::nullopt;
}

std::string clipped(std::string text) {
    constexpr std::size_t kMost = 60;
    if (text.size() <= kMost) return text;
    std::size_t end = kMost;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80) --end;
    return text.substr(0, end) + "...";
}

const JsonObject& membersOf(const JsonValue& value) {
    if (const JsonObject* object = value.object()) return *object;
    refuse(value, "Found " + shown(value) + "; expected an object.");
}

}  // namespace

std::string shown(const JsonValue& value) {
    if (value.object() != nullptr) return "an object";
    if (value.list() != nullptr) return "a list";
    return clipped(dumpJson(value));
}

int wholeNumber(const JsonValue& value, const Range& range) {
    const std::int64_t* number = value.whole();
    if (number != nullptr && *number >= range.low && *number <= range.high) {
        return static_cast<int>(*number);
    }
    const bool isNumber = number != nullptr || std::holds_alternative<JsonReal>(value.data);
    refuse(value,
           "Found " + shown(value) + "; expected " + std::string(range.what) + " from " +
               std::to_string(range.low) + " to " + std::to_string(range.high) + ".",
           isNumber ? ErrorCode::OutOfRange : ErrorCode::Malformed);
}

double positiveNumber(const JsonValue& value, int high) {
    const auto number = numberIn(value);
    if (number && *number > 0 && *number <= high) return *number;
    refuse(value, "Found " + shown(value) + "; expected a number above 0 and at most " +
                      std::to_string(high) + ".");
}

double signedNumber(const JsonValue& value, int high) {
    const auto number = numberIn(value);
    if (number && std::abs(*number) <= high) return *number;
    refuse(value, "Found " + shown(value) + "; expected a number from " + std::to_string(-high) +
                      " to " + std::to_string(high) + ".");
}

bool truth(const JsonValue& value) {
    if (const bool* found = std::get_if<bool>(&value.data)) return *found;
    refuse(value, "Found " + shown(value) + "; expected true or false.");
}

std::string textOf(const JsonValue& value) {
    const std::string* text = value.text();
    if (text == nullptr) refuse(value, "Found " + shown(value) + "; expected a text.");
    constexpr auto kMost = static_cast<std::size_t>(kMaxTextLength);
    if (text->size() > kMost && characterCount(*text) > kMost) {
        refuse(value,
               "Found a text of " + std::to_string(characterCount(*text)) +
                   " characters; expected at most " + std::to_string(kMost) + ".",
               ErrorCode::OutOfRange);
    }
    return *text;
}

std::string nonEmptyText(const JsonValue& value) {
    std::string text = textOf(value);
    if (text.empty()) refuse(value, "Found an empty text; expected at least one character.");
    return text;
}

const JsonList& listOf(const JsonValue& value, std::size_t most) {
    const JsonList* list = value.list();
    if (list == nullptr) refuse(value, "Found " + shown(value) + "; expected a list.");
    if (list->size() > most) {
        refuse(value,
               "Found " + std::to_string(list->size()) + " items; expected at most " +
                   std::to_string(most) + ".",
               ErrorCode::OutOfRange);
    }
    return *list;
}

void refuseChoice(const JsonValue& value, std::span<const std::string> spellings) {
    std::vector<std::string> quoted;
    for (const std::string& spelling : spellings) quoted.push_back(quoteJson(spelling));
    refuse(value, "Found " + shown(value) + "; expected one of " + join(quoted, ", ") + ".");
}

Fields::Fields(const JsonValue& value)
    : value_(value), members_(membersOf(value)), taken_(members_.size(), false) {}

const JsonValue* Fields::find(std::string_view name) {
    for (std::size_t i = 0; i < members_.size(); ++i) {
        if (members_[i].name != name) continue;
        taken_[i] = true;
        return &members_[i].value;
    }
    return nullptr;
}

const JsonValue& Fields::need(std::string_view name, std::string_view expected) {
    if (const JsonValue* found = find(name)) return *found;
    refuse(value_, "The member " + quoteJson(name) + " is missing; expected " +
                       std::string(expected) + ".");
}

int Fields::number(std::string_view name, const Range& range) {
    return wholeNumber(need(name, range.what), range);
}

int Fields::number(std::string_view name, const Range& range, int otherwise) {
    const JsonValue* found = find(name);
    return found == nullptr ? otherwise : wholeNumber(*found, range);
}

std::string Fields::text(std::string_view name) {
    const JsonValue* found = find(name);
    return found == nullptr ? std::string() : textOf(*found);
}

std::string Fields::needText(std::string_view name) {
    return nonEmptyText(need(name, "a text"));
}

bool Fields::flag(std::string_view name) {
    const JsonValue* found = find(name);
    return found != nullptr && truth(*found);
}

std::span<const JsonValue> Fields::list(std::string_view name, std::size_t most) {
    const JsonValue* found = find(name);
    if (found == nullptr) return {};
    return listOf(*found, most);
}

Extras Fields::extras() const {
    Extras left;
    for (std::size_t i = 0; i < members_.size(); ++i) {
        if (!taken_[i]) left.emplace_back(members_[i].name, dumpJson(members_[i].value));
    }
    return left;
}

}  // namespace lacewright
