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

constexpr std::uint64_t inEveryByte(unsigned byte) {
    return 0x0101010101010101U * byte;
}
// Bit i: byte i of the word, counted from the lowest, is a space.
constexpr std::uint64_t spacesIn(std::uint64_t word) {
    const std::uint64_t zeros = word ^ inEveryByte(' ');
    const std::uint64_t low = inEveryByte(0x7F);
    const std::uint64_t highest = ~(((zeros & low) + low) | zeros) & inEveryByte(0x80);
    return (highest >> 7U) * 0x0102040810204080U >> 56U;  // gathers the bytes' bits at the top
}
static_assert(spacesIn(0x2021002020A02000U) == 0b10011010);

}  // namespace

void SpaceFinder::look() {
    std::uint64_t words[kBlock / sizeof(std::uint64_t)] = {};
    const std::ptrdiff_t left = end_ - block_;
    std::memcpy(words, block_, static_cast<std::size_t>(std::min(left, kBlock)));
    spaces_ = 0;
    for (unsigned i = 0; i < std::size(words); ++i) spaces_ |= spacesIn(words[i]) << (8 * i);
}

const Run* RowScanner::nextOfAnyForm() {
    at_ = std::find_if_not(at_, end_, isBlank);
    if (at_ == end_) return nullptr;
    const char* token = at_;
    const bool loose = *at_ == '*';
    const char* start = loose ? at_ + 1 : at_;
    at_ = std::find_if(start, end_, endsId);
    const std::string_view id(start, static_cast<std::size_t>(at_ - start));
    run_.stitch = id.empty() ? kCovered : findOrAddStitch(id, table_, row_);
    run_.span = loose ? std::uint16_t{1} : static_cast<std::uint16_t>(table_[run_.stitch].span);
    run_.columns = run_.span * (at_ != end_ && *at_ == '*' ? count(token) : 1);
    const auto length = static_cast<std::size_t>(at_ - token);
    if (kLowestFirst && length <= RunMemo::kMaxLength) {
        memo_.remember(RunMemo::tokenOf(wordAt(token), length), run_);
    }
    return &run_;
}

// The number after a *, which stands here.
int RowScanner::count(const char* token) {
    int count = 0;
    const char* digits = ++at_;
    for (; at_ != end_ && *at_ >= '0' && *at_ <= '9'; ++at_) {
        count = std::min(10 * count + (*at_ - '0'), kMaxWidth + 1);
    }
    if (at_ != digits && count > 0 && (at_ == end_ || isBlank(*at_))) {
        return count;
    }
    const char* end = std::find_if(at_, end_, isBlank);
    refuse(row_, "Found " + shownId({token, static_cast<std::size_t>(end - token)}) +
                     "; expected a whole number from 1 after the *.");
}

}  // namespace lacewright
