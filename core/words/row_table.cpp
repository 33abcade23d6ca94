#include "core/words/row_table.h"

#include <algorithm>
#include <set>

namespace lacewright {

namespace {

constexpr std::size_t kMostElements = 300'000;  // in all rows together
constexpr int kMostRepeats = 1000;              // of whole rows by one sentence

std::string rowName(int number) {
    return "row " + std::to_string(number);
}

}  // namespace

void RowTable::add(const RowHeading& heading, ParsedRow parsed, const Place& place) {
    std::vector<int> numbers = heading.numbers;
    for (int i = 1; heading.next && i <= heading.nextRows; ++i)
        numbers.push_back(std::min(current_ + i, kMaxRowNumber));
    const std::size_t weight = elementCount(parsed.elements);
    for (const int number : numbers) {
        if ((written_ += weight) > kMostElements) {
            messages_.push_back(
                {true, place, "the rows of this text are too many to read", {}, {}});
            return;
        }
        if (number < 1) {
            messages_.push_back({true, place, "rows are numbered from 1", {}, {}});
            continue;
        }
        const bool fresh = rows_.insert({number, {heading, parsed, place}}).second;
        if (!fresh) {
            messages_.push_back({true,
                                 place,
                                 rowName(number) +
                                     " is written a second time; it stands already in line " +
                                     std::to_string(rows_.at(number).place.line),
                                 {},
                                 {}});
        }
        current_ = number;
    }
    if (heading.family != RowFamily::None) families_.push_back({heading, std::move(parsed), place});
}

void RowTable::repeat(const RowsAgainWords& words, const Place& place) {
    const int last = words.last > 0 ? words.last : lastNumber();
    const int first = words.count > 0 ? last - words.count + 1 : words.first;
    if (first < 1 || first > last) {
        messages_.push_back({true, place, "there are no such rows to repeat", {}, {}});
        return;
    }
    if (!words.times) {
        repeatFrom_ = first;
        repeatTo_ = std::max(repeatTo_, last);
        return;
    }
    RowsAgain again;
    again.after = lastNumber();
    again.first = first;
    again.last = last;
    again.times = Figure(std::min(*words.times, kMostRepeats));
    again.place = place;
    again_.push_back(again);
}

bool RowTable::inFamily(const Entry& family, int number, Side firstSide) const {
    const int base = family.heading.numbers.empty() ? 0 : family.heading.numbers.back();
    if (number < base) return false;
    const bool odd = number % 2 == 1;
    switch (family.heading.family) {
        case RowFamily::Even:
            return !odd;
        case RowFamily::Odd:
            return odd;
        case RowFamily::RightSide:
            return odd == (firstSide == Side::Right);
        case RowFamily::WrongSide:
            return odd == (firstSide == Side::Wrong);
        case RowFamily::Every:
            return (number - base) % family.heading.step == 0;
        case RowFamily::None:
            break;
    }
    return false;
}

// Rows of a family reach one row beyond the last one written, so that a wrong-side row closes the
// pattern, unless the text says where it ends.
void RowTable::fillFamilies(const WrittenPattern& pattern) {
    Side firstSide = Side::Right;
    for (const auto& [number, entry] : rows_) {
        if (!entry.heading.side || entry.heading.numbers.size() > 1) continue;
        const bool odd = number % 2 == 1;
        firstSide = odd == (*entry.heading.side == Side::Right) ? Side::Right : Side::Wrong;
        break;
    }
    if (pattern.worked == Worked::InTheRound) firstSide = Side::Right;
    const int written = lastNumber();
    for (const Entry& family : families_) {
        const std::size_t weight = elementCount(family.parsed.elements);
        const int end = repeatTo_ > 0 ? std::max(written, repeatTo_) : written + 1;
        for (int number = 1; number <= std::min(end, kMaxRowNumber); ++number) {
            if (number == written + 1 && rows_.contains(number)) continue;
            if (!inFamily(family, number, firstSide) || rows_.contains(number)) continue;
            if ((written_ += weight) > kMostElements) return;
            rows_.insert({number, family});
        }
    }
}

// Follows "as row 3" to the row that has a text of its own.
void RowTable::fillSame() {
    for (auto& [number, entry] : rows_) {
        std::set<int> seen = {number};
        std::optional<int> target = entry.parsed.sameAs;
        while (target) {
            const auto at = rows_.find(*target);
            if (at == rows_.end() || !seen.insert(*target).second) {
                messages_.push_back({true,
                                     entry.parsed.sameAsPlace,
                                     at == rows_.end() ? rowName(*target) + " is not written"
                                                       : rowName(number) + " goes back to itself",
                                     {},
                                     {}});
                break;
            }
            if (!at->second.parsed.sameAs) {
                if ((written_ += elementCount(at->second.parsed.elements)) > kMostElements) break;
                entry.parsed.elements = at->second.parsed.elements;
                if (!entry.parsed.statedCount) {
                    entry.parsed.statedCount = at->second.parsed.statedCount;
                    entry.parsed.statedPlace = at->second.parsed.statedPlace;
                }
                break;
            }
            target = at->second.parsed.sameAs;
        }
    }
    for (auto& [number, entry] : rows_) entry.parsed.sameAs.reset();
}

void RowTable::settleSides(WrittenPattern& pattern) {
    if (pattern.worked == Worked::InTheRound) return;
    std::optional<Side> known;
    int knownAt = 0;
    for (WrittenRow& row : pattern.rows) {
        const Entry& entry = rows_.at(row.number);
        const auto expected = [&](Side side, int at) {
            const bool same = (row.number - at) % 2 == 0;
            return same ? side : side == Side::Right ? Side::Wrong : Side::Right;
        };
        row.side = known ? expected(*known, knownAt) : expected(Side::Right, 1);
        const bool own = entry.heading.side && entry.heading.numbers.size() <= 1 &&
                         entry.heading.family == RowFamily::None;
        if (!own) continue;
        if (known && row.side != *entry.heading.side) {
            messages_.push_back({false,
                                 row.place,
                                 rowName(row.number) + " faces the same way as the row before it",
                                 {},
                                 {}});
        }
        row.side = *entry.heading.side;
        known = row.side;
        knownAt = row.number;
        // Rows before the first one marked take their side from it.
        for (WrittenRow& before : pattern.rows) {
            if (before.number >= row.number) break;
            if (knownAt == row.number && !rows_.at(before.number).heading.side) {
                before.side = (row.number - before.number) % 2 == 0 ? row.side
                              : row.side == Side::Right             ? Side::Wrong
                                                                    : Side::Right;
            }
        }
    }
}

void RowTable::finish(WrittenPattern& pattern) {
    fillFamilies(pattern);
    fillSame();
    int before = 0;
    for (auto& [number, entry] : rows_) {
        if (number != before + 1 && before > 0) {
            messages_.push_back(
                {false,
                 entry.place,
                 (number == before + 2 ? rowName(before + 1) + " is"
                                       : "rows " + std::to_string(before + 1) + " to " +
                                             std::to_string(number - 1) + " are") +
                     " not written; " + rowName(number) + " is taken to follow " + rowName(before),
                 {},
                 {}});
        }
        before = number;
        WrittenRow row;
        row.number = number;
        row.label = entry.heading.next ? entry.heading.label
                                       : entry.heading.label + " " + std::to_string(number);
        row.elements = std::move(entry.parsed.elements);
        row.statedCount = entry.parsed.statedCount;
        row.statedPlace = entry.parsed.statedPlace;
        row.place = entry.place;
        pattern.rows.push_back(std::move(row));
    }
    settleSides(pattern);
    if (!pattern.repeatFrom) pattern.repeatFrom = repeatFrom_;
    pattern.again = again_;
}

}  // namespace lacewright
