#include "core/words/row_table.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/words/row_numbers.h"

namespace lacewright {

namespace {

constexpr const char* kTooManyRows = "the rows of this text are too many to read";
constexpr int kMostRepeats = 1000;  // of whole rows by one sentence

}  // namespace

std::string RowTable::rowName(int number) {
    return "row " + std::to_string(number);
}

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
        // "BO 4 sts at beg of next 2 rows. 32 sts", "Rows 9-16: rep rows 7 and 8 four times. 54
        // sts": when all of them have been worked.
        if (i + 1 < numbers.size()) entry.parsed.statedCount.reset();
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

}  // namespace lacewright
