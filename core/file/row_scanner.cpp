#include "core/file/row_scanner.h"

#include <algorithm>
#include <bit>
#include <cstring>

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

constexpr std::uint64_t inEveryByte(unsigned byte) {
    return 0x0101010101010101U * byte;
}

// The highest bit of the lowest byte of `word` that is a space, and perhaps of bytes above it.
constexpr std::uint64_t firstSpace(std::uint64_t word) {
    const std::uint64_t zeros = word ^ inEveryByte(' ');
    return (zeros - inEveryByte(1)) & ~zeros & inEveryByte(0x80);
}

// The lowest `length` bytes of a word as a token of the memo. Requires: length <= kMaxLength.
constexpr std::uint64_t tokenOf(std::uint64_t word, std::size_t length) {
    return (word & ((std::uint64_t{1} << (8 * length)) - 1)) | std::uint64_t{length} << 56U;
}

// Bytes of text are the bytes of a number from the lowest up.
constexpr bool kLowestFirst = std::endian::native == std::endian::little;

}  // namespace

bool RowScanner::next(Run& run) {
    std::uint64_t word = 0;
    if (kLowestFirst && end_ - at_ >= static_cast<std::ptrdiff_t>(sizeof word)) {
        // No branch on what the token holds: rows of lace are short runs in no order.
        std::memcpy(&word, at_, sizeof word);
        if (const std::uint64_t space = firstSpace(word); space != 0) {
            const auto length = static_cast<std::size_t>(std::countr_zero(space)) / 8;
            if (const Run* known = memo_.find(tokenOf(word, length))) {
                run = *known;
                at_ += length + 1;
                return true;
            }
        }
    }
    return nextOfAnyForm(run);
}

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
        memo_.remember(tokenOf(word, length), run);
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
