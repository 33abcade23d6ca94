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
    std::uint16_t span = 1;   // columns of one stitch
    std::uint16_t count = 1;  // stitches, at most kMaxWidth + 1
    int columns() const { return span * count; }
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

// Takes the tokens of a row text (core/file/row_text.h) one by one. Throws Refusal on behalf of
// `row`.
class RowScanner {
 public:
    // Keeps all four.
    RowScanner(std::string_view text, StitchTable& table, RunMemo& memo, const JsonValue& row)
        : at_(text.data()),
          end_(text.data() + text.size()),
          table_(table),
          memo_(memo),
          row_(row) {}

    // The next run; false at the end of the row. In here, and without a branch on what the token
    // holds: rows of lace are short runs in no order, hundreds of thousands of them.
    bool next(Run& run) {
        if (!kLowestFirst) return nextOfAnyForm(run);
        const auto left = static_cast<std::size_t>(end_ - at_);
        std::uint64_t word = inEveryByte(' ');
        if (left >= sizeof word) {
            std::memcpy(&word, at_, sizeof word);
        } else {
            std::memcpy(&word, at_, left);
        }
        if (const std::uint64_t space = firstSpace(word); space != 0) {
            const auto length = static_cast<std::size_t>(std::countr_zero(space)) / 8;
            if (const Run* known = memo_.find(RunMemo::tokenOf(word, length))) {
                run = *known;
                at_ += std::min(length + 1, left);
                return true;
            }
        }
        return nextOfAnyForm(run);
    }

 private:
    // Bytes of text are the bytes of a number from the lowest up.
    static constexpr bool kLowestFirst = std::endian::native == std::endian::little;

    static constexpr std::uint64_t inEveryByte(unsigned byte) { return 0x0101010101010101U * byte; }
    // The highest bit of the lowest byte of `word` that is a space, and perhaps of bytes above it.
    static constexpr std::uint64_t firstSpace(std::uint64_t word) {
        const std::uint64_t zeros = word ^ inEveryByte(' ');
        return (zeros - inEveryByte(1)) & ~zeros & inEveryByte(0x80);
    }
    bool nextOfAnyForm(Run& run);
    std::uint16_t count(const char* token);

    const char* at_;
    const char* end_;
    StitchTable& table_;
    RunMemo& memo_;
    const JsonValue& row_;
};

}  // namespace lacewright
