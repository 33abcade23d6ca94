#include "core/file/json_value.h"

#include <nlohmann/json.hpp>

namespace lacewright {
namespace {

// Appends the path from `from` down to `wanted`; false when it is not there.
bool appendPath(const JsonValue& from, const JsonValue& wanted, std::string& path) {
    if (&from == &wanted) return true;
    const std::size_t length = path.size();
    if (const JsonList* list = from.list()) {
        for (std::size_t i = 0; i < list->size(); ++i) {
            path += "/" + std::to_string(i);
            if (appendPath((*list)[i], wanted, path)) return true;
            path.resize(length);
        }
    } else if (const JsonObject* object = from.object()) {
        for (const JsonMember& member : *object) {
            path += jsonPathStep(member.name);
            if (appendPath(member.value, wanted, path)) return true;
            path.resize(length);
        }
    }
    return false;
}

void append(std::string& out, const JsonValue& value);

// The items between two brackets; `one` appends a single item.
template <class Items, class One>
void appendAll(std::string& out, char open, char close, const Items& items, One one) {
    out += open;
    bool first = true;
    for (const auto& item : items) {
        if (!first) out += ", ";
        first = false;
        one(item);
    }
    out += close;
}

void append(std::string& out, const JsonValue& value) {
    if (const JsonObject* object = value.object()) {
        appendAll(out, '{', '}', *object, [&out](const JsonMember& member) {
            out += quoteJson(member.name) + ": ";
            append(out, member.value);
        });
    } else if (const JsonList* list = value.list()) {
        appendAll(out, '[', ']', *list, [&out](const JsonValue& item) { append(out, item); });
    } else if (const std::string* text = value.text()) {
        out += quoteJson(*text);
    } else if (const std::int64_t* whole = value.whole()) {
        out += std::to_string(*whole);
    } else if (const auto* real = std::get_if<JsonReal>(&value.data)) {
        out += real->text;
    } else if (const bool* truth = std::get_if<bool>(&value.data)) {
        out += *truth ? "true" : "false";
    } else {
        out += "null";
    }
}

}  // namespace

const JsonValue* JsonValue::find(std::string_view name) const {
    const JsonObject* members = object();
    if (members == nullptr) return nullptr;
    for (const JsonMember& member : *members) {
        if (member.name == name) return &member.value;
    }
    return nullptr;
}

std::string jsonPathStep(std::string_view member) {
    std::string step = "/";
    for (const char c : member) {
        if (c == '~' || c == '/') {
            step += c == '~' ? "~0" : "~1";
        } else {
            step += static_cast<unsigned char>(c) < ' ' ? '?' : c;  // a message is one line
        }
    }
    return step;
}

std::string jsonPathOf(const JsonValue& document, const JsonValue& wanted) {
    std::string path;
    appendPath(document, wanted, path);
    return path;
}

std::string dumpJson(const JsonValue& value) {
    std::string out;
    append(out, value);
    return out;
}

std::string quoteJson(std::string_view text) {
    return nlohmann::json(text).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace lacewright
