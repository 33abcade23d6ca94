#include "core/file/row_scanner.h"

#include <algorithm>

#include "core/chart/chart.h"
#include "core/file/refusal.h"
#include "core/file/stitch_id.h"

namespace lacewright {
namespace {

constexpr bool isBlank(char c) {
    return c == ' ' || c == '\t';
}
constexpr bool endsId(char c) {
    return isBlank(c) || c == '*';
}

}  // namespace

bool RowScanner::nextOfAnyForm(Run& run) {
    at_ = std::find_if_not(at_, end_, isBlank);
    if (at_ == end_) return false;
    const char* token = at_;
    const bool loose = *at_ == '*';
    const char* start = loose ? at_ + 1 : at_;
    at_ = std::find_if(start, end_, endsId);
    const std::string_view id(start, static_cast<std::size_t>(at_ - start));
    run.stitch = id.empty() ? kCovered : findOrAddStitch(id, table_, row_);
    run.span = loose ? std::uint16_t{1} : static_cast<std::uint16_t>(table_[run.stitch].span);
    run.count = at_ != end_ && *at_ == '*' ? count(token) : std::uint16_t{1};
    const auto length = static_cast<std::size_t>(at_ - token);
    if (kLowestFirst && length <= RunMemo::kMaxLength) {
        std::uint64_t word = 0;
        std::memcpy(&word, token, length);
        memo_.remember(RunMemo::tokenOf(word, length), run);
    }
    return true;
}

// The number after a *, which stands here.
std::uint16_t RowScanner::count(const char* token) {
    int count = 0;
    const char* digits = ++at_;
    for (; at_ != end_ && *at_ >= '0' && *at_ <= '9'; ++at_) {
        count = std::min(10 * count + (*at_ - '0'), kMaxWidth + 1);
    }
    if (at_ != digits && count > 0 && (at_ == end_ || isBlank(*at_))) {
        return static_cast<std::uint16_t>(count);
    }
    const char* end = std::find_if(at_, end_, isBlank);
    refuse(row_, "Found " + shownId({token, static_cast<std::size_t>(end - token)}) +
                     "; expected a whole number from 1 after the *.");
}

}  // namespace lacewright
