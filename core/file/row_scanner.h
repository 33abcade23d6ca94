#pragma once

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>
#include <string_view>
#include <vector>

#include "core/file/json_value.h"
#include "core/file/stitch_table.h"

namespace lacewright {

// One token of a row text.
struct Run {
    StitchIndex stitch = kCovered;
    std::uint16_t span = 1;  // columns of one stitch
    int columns = 1;         // of all its stitches, of which there are at most kMaxWidth + 1
};

// Short tokens met before and what they mean: a chart has hundreds of thousands of tokens, but few
// that differ. A token is its bytes as one number, the first lowest, its length in the highest
// byte.
class RunMemo {
 public:
    static constexpr std::size_t kMaxLength = 7;  // bytes of a short token

    // The lowest `length` bytes of a word as a token. Requires: length <= kMaxLength.
    static constexpr std::uint64_t tokenOf(std::uint64_t word, std::size_t length) {
        return (word & ((std::uint64_t{1} << (8 * length)) - 1)) | std::uint64_t{length} << 56U;
    }

    // The run, or null when it was not met, or was forgotten for another one.
    const Run* find(std::uint64_t token) const {
        const Slot& slot = slots_[slotOf(token)];
        return slot.token == token ? &slot.run : nullptr;
    }
    void remember(std::uint64_t token, const Run& run) { slots_[slotOf(token)] = {token, run}; }

 private:
    static constexpr unsigned kBits = 11;
    struct Slot {
        std::uint64_t token = ~std::uint64_t{0};  // is no token: too long
        Run run;
    };
    static std::size_t slotOf(std::uint64_t token) {
        return static_cast<std::size_t>((token * 0x9E3779B97F4A7C15U) >> (64U - kBits));
    }
    std::vector<Slot> slots_ = std::vector<Slot>(std::size_t{1} << kBits);
};

// Where the spaces of a text stand, found 64 bytes a time: looking for the end of each token as one
// comes to it would make every token wait for the one before.
class SpaceFinder {
 public:
    // Keeps the text.
    explicit SpaceFinder(std::string_view text)
        : block_(text.data()), end_(text.data() + text.size()) {
        look();
    }
    // The first space not given yet, or the end of the text.
    const char* next() {
        while (spaces_ == 0) {
            if (end_ - block_ <= kBlock) return end_;
            block_ += kBlock;
            look();
        }
        const char* space = block_ + std::countr_zero(spaces_);
        spaces_ &= spaces_ - 1;
        return space;
    }
    // Passes over the spaces before `at`. Requires: at is no further than the end of the text.
    void skipTo(const char* at) {
        for (; at - block_ >= kBlock && end_ - block_ > kBlock; look()) block_ += kBlock;
        spaces_ = at - block_ < kBlock ? spaces_ & (~std::uint64_t{0} << (at - block_)) : 0;
    }

 private:
    static constexpr std::ptrdiff_t kBlock = 64;
    void look();

    const char* block_;
    const char* end_;
    std::uint64_t spaces_ = 0;  // bit i: there is one at block_ + i
};

// Takes the tokens of a row text (core/file/row_text.h) one by one. Throws Refusal on behalf of
// `row`.
class RowScanner {
 public:
    // Keeps all four.
    RowScanner(std::string_view text, StitchTable& table, RunMemo& memo, const JsonValue& row)
        : at_(text.data()),
          end_(text.data() + text.size()),
          spaces_(text),
          table_(table),
          memo_(memo),
          row_(row) {}

    // The next run, good until the one after; null at the end of the row. In here, and without a
    // branch on what the token holds: rows of lace are short runs in no order, hundreds of
    // thousands of them.
    const Run* next() {
        if (!kLowestFirst) return nextOfAnyForm();
        const char* space = spaces_.next();
        const auto length = static_cast<std::size_t>(space - at_);
        if (length <= RunMemo::kMaxLength) {
            if (const Run* known = memo_.find(RunMemo::tokenOf(wordAt(at_), length))) {
                at_ = space == end_ ? end_ : space + 1;
                return known;
            }
        }
        const Run* run = nextOfAnyForm();
        if (at_ != end_) ++at_;
        spaces_.skipTo(at_);
        return run;
    }

 private:
    // Bytes of text are the bytes of a number from the lowest up.
    static constexpr bool kLowestFirst = std::endian::native == std::endian::little;

    // The eight bytes from there as a number, as many as the text still has.
    std::uint64_t wordAt(const char* at) const {
        std::uint64_t word = 0;
        const auto left = static_cast<std::size_t>(end_ - at);
        if (left >= sizeof word) {
            std::memcpy(&word, at, sizeof word);
        } else {
            std::memcpy(&word, at, left);
        }
        return word;
    }
    const Run* nextOfAnyForm();
    int count(const char* token);

    const char* at_;
    const char* end_;
    SpaceFinder spaces_;
    StitchTable& table_;
    RunMemo& memo_;
    const JsonValue& row_;
    Run run_;  // the one read last, where it was not met before
};

}  // namespace lacewright
