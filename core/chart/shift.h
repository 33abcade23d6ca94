#pragma once

#include <optional>

namespace lacewright {

// How places (columns or row indices) move when some are put in or taken out. Any index base.
class Shift {
 public:
    // Requires: count >= 0.
    static Shift inserted(int before, int count) { return {before, 0, count}; }
    static Shift removed(int first, int count) { return {first, count, 0}; }

    // Where a place is afterwards; nothing when it was taken out.
    std::optional<int> place(int old) const {
        if (old < first_) return old;
        if (old < first_ + removed_) return std::nullopt;
        return old - removed_ + inserted_;
    }
    // Moves a span, both ends included. What is put in strictly inside widens it, what is put in at
    // its first place moves it, what is taken out narrows it. False when nothing of it is left.
    [[nodiscard]] bool span(int& first, int& last) const {
        const int end = first_ + removed_;
        first = first >= end ? first - removed_ + inserted_ : first < first_ ? first : first_;
        last = last >= end ? last - removed_ + inserted_ : last < first_ ? last : first_ - 1;
        return first <= last;
    }

 private:
    Shift(int first, int removed, int inserted)
        : first_(first), removed_(removed), inserted_(inserted) {}
    int first_;
    int removed_;
    int inserted_;
};

}  // namespace lacewright
