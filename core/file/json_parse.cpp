#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <utility>

#include "core/base/text.h"
#include "core/file/file_limits.h"
#include "core/file/json_value.h"
#include "core/file/refusal.h"

namespace lacewright {
namespace {

// Walks over the text and shows the builder how far the parser has come, so that values know their
// place.
class Cursor {
 public:
    using iterator_category = std::forward_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    Cursor(const char* at, const char** reached) : at_(at), reached_(reached) {}
    reference operator*() const { return *at_; }
    Cursor& operator++() {
        *reached_ = ++at_;
        return *this;
    }
    bool operator==(const Cursor& other) const { return at_ == other.at_; }
    bool operator!=(const Cursor& other) const { return at_ != other.at_; }

 private:
    const char* at_;
    const char** reached_;
};

// What the JSON library says of a syntax error, without its prefix and the text it read last.
std::string syntaxMessage(std::string_view what) {
    constexpr std::string_view kBefore = ": syntax error while parsing ";
    const auto start = what.find(kBefore);
    if (start != std::string_view::npos) what.remove_prefix(start + kBefore.size());
    what = what.substr(0, what.find("; last read: '"));
    const auto dash =
        std::min(what.find(" - "), what.size());  // between what was read and what is wrong
    return "This is not well-formed JSON (" + std::string(what.substr(0, dash)) +
           "): " + std::string(what.substr(std::min(dash + 3, what.size()))) + ".";
}

// Receives the parser's events and builds the document. Open containers stand on a stack and move
// into their parent when they end.
class Builder {
 public:
    Builder(std::string_view text, const char* const* reached) : text_(text), reached_(reached) {}

    bool null() { return add(std::monostate{}); }
    bool boolean(bool value) { return add(value); }
    bool number_integer(std::int64_t value) { return add(value); }
    bool number_unsigned(std::uint64_t value) {
        if (std::in_range<std::int64_t>(value)) return add(static_cast<std::int64_t>(value));
        return add(JsonReal{std::to_string(value)});
    }
    bool number_float(double, const std::string& spelling) { return add(JsonReal{spelling}); }
    bool string(const std::string& value) {
        checkLength(value);
        return add(value);
    }
    template <class Bytes>
    bool binary(Bytes&) {
        return false;  // has no spelling in JSON text
    }
    bool start_object(std::size_t) { return open(JsonObject{}); }
    bool start_array(std::size_t) { return open(JsonList{}); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }

    bool key(const std::string& name) {
        checkLength(name);
        JsonObject& members = std::get<JsonObject>(stack_.back().data);
        for (const JsonMember& member : members) {
            if (member.name != name) continue;
            stop(ErrorCode::Malformed,
                 "The member " + quoteJson(name) + " stands twice; expected it once.",
                 pathToOpen());
        }
        if (members.size() >= kMaxMembers) {
            stop(ErrorCode::OutOfRange,
                 "Found more than " + std::to_string(kMaxMembers) + " members in one object.",
                 pathToOpen());
        }
        members.push_back({name, {}});
        return true;
    }

    template <class Exception>
    bool parse_error(std::size_t position, const std::string& token, const Exception& error) {
        const std::size_t offset = std::min(position > 0 ? position - 1 : 0, text_.size());
        // A number beyond the range of double.
        if (error.id == 406) {
            throw Refusal{ErrorCode::OutOfRange, "The number " + token + " is too large.", nullptr,
                          offset};
        }
        const std::string_view upTo = text_.substr(0, offset + 1);
        if (offset < text_.size() && !isUtf8(upTo) && isUtf8(upTo.substr(0, offset))) {
            refuseByte(offset);
        }
        throw Refusal{ErrorCode::Malformed, syntaxMessage(error.what()), nullptr, offset};
    }

    JsonValue take() { return std::move(document_); }

 private:
    template <class Data>
    bool add(Data&& data) {
        attach(make(std::forward<Data>(data)));
        return true;
    }
    template <class Data>
    bool open(Data&& data) {
        if (stack_.size() >= kMaxNesting) {
            stop(ErrorCode::OutOfRange,
                 "Objects and lists stand more than " + std::to_string(kMaxNesting) +
                     " deep within one another.",
                 {});
        }
        stack_.push_back(make(std::forward<Data>(data)));
        return true;
    }
    bool close() {
        JsonValue done = std::move(stack_.back());
        stack_.pop_back();
        attach(std::move(done));
        return true;
    }
    template <class Data>
    JsonValue make(Data&& data) {
        if (++count_ > kMaxValues) {
            stop(ErrorCode::OutOfRange,
                 "The file has more than " + std::to_string(kMaxValues) + " values.", {});
        }
        return {std::forward<Data>(data), reachedOffset()};
    }
    void attach(JsonValue value) {
        if (stack_.empty()) {
            document_ = std::move(value);
        } else if (auto* list = std::get_if<JsonList>(&stack_.back().data)) {
            list->push_back(std::move(value));
        } else {
            std::get<JsonObject>(stack_.back().data).back().value = std::move(value);
        }
    }
    void checkLength(const std::string& text) {
        if (text.size() <= kMaxRowText) return;
        stop(ErrorCode::OutOfRange,
             "Found a text of more than " + std::to_string(kMaxRowText) + " bytes.", pathToOpen());
    }

    // The byte read last. The parser looks at most one byte beyond the end of a value.
    std::size_t reachedOffset() const {
        const auto read = static_cast<std::size_t>(*reached_ - text_.data());
        return read > 0 ? read - 1 : 0;
    }
    std::string pathToOpen() const {
        std::string path;
        for (std::size_t i = 0; i + 1 < stack_.size(); ++i) {
            const JsonObject* object = stack_[i].object();
            path += object != nullptr ? jsonPathStep(object->back().name)
                                      : "/" + std::to_string(stack_[i].list()->size());
        }
        return path;
    }
    [[noreturn]] void stop(ErrorCode code, std::string message, std::string path) const {
        throw Refusal{code, std::move(message), nullptr, reachedOffset(), std::move(path)};
    }
    [[noreturn]] void refuseByte(std::size_t offset) const {
        constexpr std::string_view kDigits = "0123456789abcdef";
        const auto byte = static_cast<unsigned char>(text_[offset]);
        throw Refusal{ErrorCode::Malformed,
                      std::string("Found the byte 0x") + kDigits[byte >> 4U] + kDigits[byte & 15U] +
                          "; expected text in UTF-8.",
                      nullptr, offset};
    }

    std::string_view text_;
    const char* const* reached_;
    std::vector<JsonValue> stack_;
    JsonValue document_;
    std::size_t count_ = 0;
};

}  // namespace

JsonValue parseJson(std::string_view text) {
    const char* reached = text.data();
    Builder builder(text, &reached);
    nlohmann::json::sax_parse(Cursor(text.data(), &reached),
                              Cursor(text.data() + text.size(), &reached), &builder);
    return builder.take();
}

}  // namespace lacewright
