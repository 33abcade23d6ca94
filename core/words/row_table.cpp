#include "core/words/row_table.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/words/row_numbers.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostElements = 300'000;  // in all rows together
constexpr const char* kTooManyRows = "the rows of this text are too many to read";
constexpr int kMostRepeats = 1000;  // of whole rows by one sentence

std::string rowName(int number) {
    return "row " + std::to_string(number);
}

}  // namespace

void RowTable::add(const RowHeading& heading, ParsedRow parsed, const Place& place) {
    std::vector<int> numbers = heading.numbers;
    for (int i = 1; heading.next && i <= heading.nextRows; ++i) {
        if (current_ + i > kMaxRowNumber) {
            if (!tooMany_) messages_.push_back({true, place, kTooManyRows, {}, {}});
            tooMany_ = true;
            return;
        }
        numbers.push_back(current_ + i);
    }
    if (!heading.next && !numbers.empty() && numbers.front() == 1) countBeforeRowOne();
    const std::size_t weight = elementCount(parsed.elements);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const int number = numbers[i];
        if ((written_ += weight) > kMostElements) {
            messages_.push_back({true, place, kTooManyRows, {}, {}});
            return;
        }
        if (number < 1) {
            messages_.push_back({true, place, "rows are numbered from 1", {}, {}});
            continue;
        }
        Entry entry{heading, parsed, place, {}, 0, scope_};
        // "BO 4 sts at beg of next 2 rows. 32 sts": when both have been worked.
        if (heading.next && i + 1 < numbers.size()) entry.parsed.statedCount.reset();
        if (parsed.same) entry.sameAs = sameRow(*parsed.same, numbers, i);
        const auto [known, fresh] = rows_.insert({number, std::move(entry)});
        if (!fresh) {
            const bool alike = known->second.parsed.words == parsed.words;
            messages_.push_back({!alike,
                                 place,
                                 rowName(number) +
                                     " is written a second time; it stands already in line " +
                                     std::to_string(rows_.at(number).place.line),
                                 {},
                                 {}});
        }
        current_ = number;
    }
    if (heading.family == RowFamily::None) return;
    Entry family{heading, std::move(parsed), place, {}, parts_.back(), scope_};
    if (family.parsed.same && !family.parsed.same->numbers.empty())
        family.sameAs = family.parsed.same->numbers.front();
    families_.push_back(std::move(family));
}

// Set-up rows that stand before "Row 1" are row 0, row -1 ..
void RowTable::countBeforeRowOne() {
    const bool named = std::all_of(rows_.begin(), rows_.end(),
                                   [](const auto& row) { return row.second.heading.next; });
    if (rows_.empty() || !named || !pieces_.empty()) return;
    std::map<int, Entry> before;
    for (auto& [number, entry] : rows_) {
        if (entry.sameAs) *entry.sameAs -= current_;
        before.emplace(number - current_, std::move(entry));
    }
    rows_ = std::move(before);
    for (RowsAgain& again : again_) {
        for (int* number : {&again.after, &again.first, &again.last}) *number -= current_;
    }
    std::map<int, int> leftOut;
    for (const auto& [number, rows] : leftOut_) leftOut[number - current_] = rows;
    leftOut_ = std::move(leftOut);
    repeatFrom_.reset();
    repeatTo_ = 0;
    current_ = 0;
}

// The row whose text the row at `index` of those under one heading takes over.
std::optional<int> RowTable::sameRow(const SameRows& same, const std::vector<int>& numbers,
                                     std::size_t index) {
    std::vector<int> from = same.numbers;
    for (int i = same.last; i > 0; --i) from.push_back(numbers.front() - i);
    if (!same.label.empty()) from = {numberNamed(same)};
    const std::size_t times = static_cast<std::size_t>(same.times.value_or(1));
    const bool several = numbers.size() > 1;
    const bool fill = several && (same.times ? numbers.size() == from.size() * times
                                             : numbers.size() % from.size() == 0);
    if (index == 0 && several && !fill) {
        messages_.push_back(
            {true,
             same.place,
             counted(static_cast<std::int64_t>(numbers.size()), "row", "rows") +
                 " stand here for " +
                 counted(static_cast<std::int64_t>(from.size() * times), "row", "rows") +
                 " of those repeated",
             "as many rows as are repeated",
             {}});
    }
    const int target = from[index % from.size()];
    if (target > 0) return target;
    if (index == 0) {
        messages_.push_back({true,
                             same.place,
                             same.label.empty() ? "there are no such rows above"
                                                : "no row above is called \"" + same.label + "\"",
                             {},
                             {}});
    }
    return {};
}

// The last row so far that is called so; 0 when there is none.
int RowTable::numberNamed(const SameRows& same) const {
    const std::string number = same.named > 0 ? " " + std::to_string(same.named) : "";
    for (auto at = rows_.rbegin(); at != rows_.rend(); ++at) {
        const std::string own = lowerAscii(at->second.heading.label);
        if (at->second.heading.next && own.starts_with(same.label + " ") && own.ends_with(number))
            return at->first;
    }
    return 0;
}

// The row of that name in numbers, with the rows behind it where they are those between.
RowsAgainWords RowTable::named(RowsAgainWords words) const {
    SameRows same;
    same.label = std::move(words.label);
    words.label.clear();
    words.first = words.last = numberNamed(same);
    if (words.first > 0 && lastNumber() - words.first + 1 == words.every) words.last = lastNumber();
    return words;
}

void RowTable::leaveOut(int rows) {
    int& behind = leftOut_[lastNumber()];
    behind = std::min(behind + rows, kMaxRowNumber);
}

// "The last 6 rows" as they were worked: the first of them that is written out, one behind the
// last row when none is; 0 or less when there are not so many.
int RowTable::firstOfLast(int count) const {
    int row = lastNumber() + 1;
    while (count > 0 && row > parts_.back()) {
        const auto left = leftOut_.find(row - 1);
        if (left != leftOut_.end()) count -= left->second;
        if (count <= 0) break;
        --row;
        --count;
    }
    return row - std::max(0, count);
}

void RowTable::repeat(const RowsAgainWords& words) {
    const Place& place = words.place;
    if (!words.label.empty()) {
        const RowsAgainWords numbered = named(words);
        if (numbered.first != 0) return repeat(numbered);
        messages_.push_back(
            {true, place, "no row above is called \"" + words.label + "\"", {}, {}});
        return;
    }
    const int last = words.last > 0 ? words.last : lastNumber();
    const int first = words.count == 0 ? words.first
                      : words.last > 0 ? last - words.count + 1
                                       : firstOfLast(words.count);
    if (words.count > 0 && first == last + 1) return;  // none of them changes a count
    if (first < 1 || first > last) {
        messages_.push_back({true, place, "there are no such rows to repeat", {}, {}});
        return;
    }
    // "Row 2 and all WS rows: purl .. Row 9: .. Rep rows 5-10": row 10 has been worked too.
    const bool closed =
        last == lastNumber() + 1 && !families_.empty() && families_.back().part == parts_.back();
    if (closed) current_ = repeatTo_ = last;
    if (!words.times && !words.until) {
        repeatFrom_ = first;
        repeatTo_ = std::max(repeatTo_, last);
        return;
    }
    RowsAgain again;
    again.after = closed ? last : lastNumber();
    again.first = first;
    again.last = last;
    if (words.times) again.times = *words.times;
    for (int& times : again.times.bySize) times = std::min(times, kMostRepeats);
    again.until = words.until;
    again.stated = words.stated;
    again.place = place;
    again.statedPlace = words.until ? words.place : words.statedPlace;
    again_.push_back(again);
}

void RowTable::repeatAllButLast(RowsAgainWords words) {
    const int last = words.last > 0 ? words.last : lastNumber();
    if (words.count > 0) words.first = firstOfLast(words.count);
    words.last = last - 1;
    words.count = 0;
    words.times = Figure(1);
    if (words.first >= 1 && words.first <= words.last) repeat(words);
}

int RowTable::beginPart() {
    const int rows = lastNumber() - parts_.back();
    // "Row 2 and all WS rows: purl" closes the part before.
    const bool closed = rows % 2 != 0 && !families_.empty() &&
                        families_.back().part == parts_.back() &&
                        families_.back().heading.step == 2;
    parts_.push_back(lastNumber() + (closed ? 1 : 0));
    current_ = parts_.back();
    repeatFrom_.reset();
    repeatTo_ = 0;
    return parts_.back();
}

int RowTable::beginPiece(const std::optional<WrittenCastOn>& castOn) {
    if (awaitsPiece()) {
        pieces_.back().castOn = castOn;  // nothing was worked on the one before
        return parts_.back();
    }
    const int part = beginPart();
    pieces_.push_back({part + 1, castOn});
    return part;
}

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
