#include <algorithm>
#include <set>

#include "core/words/row_numbers.h"
#include "core/words/row_table.h"

// How the rows that were read are written out one by one.
namespace lacewright {

bool RowTable::inFamily(const Entry& family, int number, Side firstSide) {
    const int base = family.heading.numbers.empty() ? 0 : family.heading.numbers.back();
    if (number < base) return false;
    if (family.heading.end > 0 && number > family.heading.end + family.part) return false;
    const bool odd = (number - family.part) % 2 != 0;
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

// The side that the first row of the part faces, as the first marked one of its rows says.
Side RowTable::firstSideOf(int part, int end) const {
    for (const auto& [number, entry] : rows_) {
        if (number <= part || number > end) continue;
        if (!entry.heading.side || entry.heading.numbers.size() > 1) continue;
        const bool odd = (number - part) % 2 != 0;
        return odd == (*entry.heading.side == Side::Right) ? Side::Right : Side::Wrong;
    }
    return Side::Right;
}

// The last row of the part, as far as it is written.
int RowTable::endOf(int part) const {
    const auto next = std::upper_bound(parts_.begin(), parts_.end(), part);
    return next == parts_.end() ? lastNumber() : *next;
}

// Rows of a family reach one row beyond the last one written, so that a wrong-side row closes the
// pattern, unless the text says where it ends or an even number of rows is written.
void RowTable::fillFamilies(const WrittenPattern& pattern) {
    const bool round = pattern.worked == Worked::InTheRound;
    const int written = lastNumber();
    const auto isLast = [this](const Entry& family) { return family.part == parts_.back(); };
    for (const Entry& family : families_) {
        const std::size_t weight = elementCount(family.parsed.elements);
        const bool even = (written - family.part) % 2 == 0 && family.heading.step == 2;
        int end = endOf(family.part);
        const Side firstSide = round ? Side::Right : firstSideOf(family.part, end);
        if (isLast(family))
            end = repeatTo_ > 0 ? std::max(written, repeatTo_) : written + (even ? 0 : 1);
        for (int number = family.part + 1; number <= std::min(end, kMaxRowNumber); ++number) {
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
        std::optional<int> target = entry.sameAs;
        while (target) {
            const auto at = rows_.find(*target);
            if (at == rows_.end() || !seen.insert(*target).second) {
                messages_.push_back({true,
                                     entry.parsed.same->place,
                                     at == rows_.end() ? rowName(*target) + " is not written"
                                                       : rowName(number) + " goes back to itself",
                                     {},
                                     {}});
                break;
            }
            if (!at->second.sameAs) {
                if ((written_ += elementCount(at->second.parsed.elements)) > kMostElements) break;
                entry.parsed.elements = at->second.parsed.elements;
                break;
            }
            target = at->second.sameAs;
        }
    }
    for (auto& [number, entry] : rows_) entry.sameAs.reset();
}

void RowTable::settleSides(WrittenPattern& pattern) {
    if (pattern.worked == Worked::InTheRound) return;
    std::optional<Side> known;
    int knownAt = 0;
    int first = 1;  // row of the piece
    auto piece = pieces_.begin();
    for (WrittenRow& row : pattern.rows) {
        if (piece != pieces_.end() && row.number >= piece->first) {
            first = piece++->first;
            known.reset();
        }
        const Entry& entry = rows_.at(row.number);
        const auto expected = [&](Side side, int at) {
            const bool same = (row.number - at) % 2 == 0;
            return same ? side : side == Side::Right ? Side::Wrong : Side::Right;
        };
        row.side = known ? expected(*known, knownAt) : expected(Side::Right, first);
        // "Row 1 (WS) and all other WS rows" says which side row 1 faces.
        const auto& numbers = entry.heading.numbers;
        const bool own = entry.heading.side && numbers.size() <= 1 &&
                         (entry.heading.family == RowFamily::None ||
                          (!numbers.empty() && numbers.front() == row.number));
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
            if (before.number < first && piece != pieces_.begin()) continue;
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
        row.sizes = entry.sizes;
        pattern.rows.push_back(std::move(row));
    }
    settleSides(pattern);
    if (!pattern.repeatFrom) pattern.repeatFrom = repeatFrom_;
    pattern.again = again_;
    if (awaitsPiece()) pieces_.pop_back();
    pattern.pieces = pieces_;
}

}  // namespace lacewright
