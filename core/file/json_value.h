#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

// A JSON document as the chart reader needs it: members keep their order, numbers that are not
// whole keep their spelling, and every value knows where it stands in the text.
namespace lacewright {

struct JsonValue;
struct JsonMember;
using JsonList = std::vector<JsonValue>;
using JsonObject = std::vector<JsonMember>;

// A number that is no 64-bit whole number, as it was spelt.
struct JsonReal {
    std::string text;
};

struct JsonValue {
    std::variant<std::monostate, bool, std::int64_t, JsonReal, std::string, JsonList, JsonObject>
        data;
    std::size_t offset =
        0;  // of a byte on the line where the value stands (where it begins, for a list)

    const std::int64_t* whole() const { return std::get_if<std::int64_t>(&data); }
    const std::string* text() const { return std::get_if<std::string>(&data); }
    const JsonList* list() const { return std::get_if<JsonList>(&data); }
    const JsonObject* object() const { return std::get_if<JsonObject>(&data); }
    // The member of that name, or null; null also when this is no object.
    const JsonValue* find(std::string_view name) const;
};

struct JsonMember {
    std::string name;
    JsonValue value;
};

// The document. Throws Refusal (core/file/refusal.h) when the text is no JSON, names a member twice
// in one object or breaks the limits of core/file/file_limits.h.
JsonValue parseJson(std::string_view text);

// The value on one line, with a blank after every comma and colon.
std::string dumpJson(const JsonValue& value);
// A JSON string with its quotes. Bytes that are not UTF-8 become U+FFFD.
std::string quoteJson(std::string_view text);

// A step of a JSON path down to that member: "/name", with / and ~ written as ~1 and ~0.
std::string jsonPathStep(std::string_view member);
// A JSON path such as /sizes/0/start of the value at that address; empty for the document itself.
// Requires: `wanted` is `document` or stands in it.
std::string jsonPathOf(const JsonValue& document, const JsonValue& wanted);

}  // namespace lacewright
