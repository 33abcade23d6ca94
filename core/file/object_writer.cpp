#include "core/file/object_writer.h"

#include <array>
#include <charconv>

#include "core/base/text.h"
#include "core/file/json_value.h"

namespace lacewright {

void ObjectWriter::raw(std::string_view name, std::string json) {
    members_.push_back(quoteJson(name) + ": " + std::move(json));
}

void ObjectWriter::text(std::string_view name, std::string_view value) {
    raw(name, quoteJson(value));
}

void ObjectWriter::textUnlessEmpty(std::string_view name, std::string_view value) {
    if (!value.empty()) text(name, value);
}

void ObjectWriter::number(std::string_view name, int value) {
    raw(name, std::to_string(value));
}

void ObjectWriter::numberUnless(std::string_view name, int value, int usual) {
    if (value != usual) number(name, value);
}

void ObjectWriter::decimal(std::string_view name, double value) {
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
    raw(name, std::string(digits.data(), end));
}

void ObjectWriter::trueOrNothing(std::string_view name, bool value) {
    if (value) raw(name, "true");
}

void ObjectWriter::extras(const Extras& extras) {
    for (const auto& [name, json] : extras) raw(name, json);
}

std::string ObjectWriter::onOneLine() const {
    return "{" + join(members_, ", ") + "}";
}

std::string ObjectWriter::onLines() const {
    return "{\n  " + join(members_, ",\n  ") + "\n}\n";
}

std::string listOnLines(const std::vector<std::string>& items) {
    return items.empty() ? "[]" : "[\n    " + join(items, ",\n    ") + "\n  ]";
}

std::string listOnOneLine(const std::vector<std::string>& items) {
    return "[" + join(items, ", ") + "]";
}

}  // namespace lacewright
