#include "core/sheet/path_data.h"

#include <charconv>
#include <cmath>
#include <string>

namespace lacewright {
namespace {

constexpr double kLargest = 1e6;

int argumentsOf(char letter) {
    switch (letter) {
        case 'm':
        case 'l':
        case 't':
            return 2;
        case 'h':
        case 'v':
            return 1;
        case 'c':
            return 6;
        case 's':
        case 'q':
            return 4;
        case 'a':
            return 7;
        case 'z':
            return 0;
        default:
            return -1;
    }
}

class TailReader {
 public:
    explicit TailReader(std::string_view text) : text_(text) { skipBlanks(); }

    bool atEnd() const { return text_.empty(); }
    bool atNumber() const {
        const char c = text_.front();
        return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.';
    }
    char letter() {
        const char c = text_.front();
        text_.remove_prefix(1);
        skipBlanks();
        return c;
    }
    // A flag of an arc is one digit, with or without a blank after it.
    bool flag(double& value) {
        if (atEnd() || (text_.front() != '0' && text_.front() != '1')) return false;
        value = text_.front() - '0';
        text_.remove_prefix(1);
        skipBlanks();
        return true;
    }
    bool number(double& value) {
        if (!atEnd() && text_.front() == '+') text_.remove_prefix(1);
        const auto [end, error] = std::from_chars(text_.data(), text_.data() + text_.size(), value);
        if (error != std::errc() || !std::isfinite(value) || std::abs(value) > kLargest)
            return false;
        text_.remove_prefix(static_cast<std::size_t>(end - text_.data()));
        skipBlanks();
        return true;
    }

 private:
    void skipBlanks() {
        const std::size_t start = text_.find_first_not_of(" ,\t\n\r");
        text_.remove_prefix(start == std::string_view::npos ? text_.size() : start);
    }
    std::string_view text_;
};

bool readArguments(TailReader& reader, PathStep& step) {
    for (int i = 0; i < argumentsOf(step.letter); ++i) {
        double& value = step.numbers[static_cast<std::size_t>(i)];
        const bool isFlag = step.letter == 'a' && (i == 3 || i == 4);
        if (isFlag ? !reader.flag(value) : !reader.number(value)) return false;
    }
    return true;
}

}  // namespace

std::optional<std::vector<PathStep>> parsePathTail(std::string_view tail) {
    std::vector<PathStep> steps;
    TailReader reader(tail);
    char letter = 0;
    while (!reader.atEnd()) {
        if (!reader.atNumber()) {
            letter = reader.letter();
        } else if (letter == 'm') {
            letter = 'l';  // further pairs after a move are lines
        } else if (letter == 'z' || letter == 0) {
            return std::nullopt;
        }
        PathStep step{letter, {}};
        if (argumentsOf(letter) < 0 || !readArguments(reader, step)) return std::nullopt;
        steps.push_back(step);
    }
    return steps;
}

int pathElements(const std::vector<PathStep>& steps) {
    int count = 1;
    for (const PathStep& step : steps) {
        switch (step.letter) {
            case 'a':
                count += 12;
                break;
            case 'c':
            case 's':
            case 'q':
            case 't':
                count += 3;
                break;
            default:
                count += 1;
        }
    }
    return count;
}

}  // namespace lacewright
