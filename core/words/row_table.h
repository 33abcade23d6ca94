#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/words/read_message.h"
#include "core/words/row_heading.h"
#include "core/words/row_parser.h"
#include "core/words/rows_again.h"
#include "core/words/written.h"

namespace lacewright {

// Collects rows as they are read and then writes each one out: families ("and all WS rows"), rows
// that share a text, and rows that are the same as another.
class RowTable {
 public:
    explicit RowTable(std::vector<ReadMessage>& messages) : messages_(messages) {}

    bool empty() const { return rows_.empty() && families_.empty(); }
    int lastNumber() const { return rows_.empty() ? 0 : rows_.rbegin()->first; }
    // The row read last, whatever its number; 0 before the first.
    int currentNumber() const { return current_; }

    bool holds(int number) const { return rows_.contains(number); }
    // Another part of the work whose rows are numbered from 1 again: gives what is to be added to
    // their numbers.
    int beginPart();
    // A piece of the work with loops of its own; gives the same.
    int beginPiece(const std::optional<WrittenCastOn>& castOn);
    // A piece has begun and has no rows yet.
    // Rows that follow are for these sizes only; none: for all.
    void beginScope(std::vector<std::size_t> sizes) { scope_ = std::move(sizes); }
    bool awaitsPiece() const { return !pieces_.empty() && pieces_.back().first > lastNumber(); }

    // Numbers count through all parts.
    void add(const RowHeading& heading, ParsedRow parsed, const Place& place);
    void repeat(const RowsAgainWords& words);
    // So many rows behind the last one are not written out.
    void leaveOut(int rows);
    // The same rows once more, but for the last of them.
    void repeatAllButLast(RowsAgainWords words);
    // Fills pattern.rows, pattern.again and pattern.repeatFrom.
    void finish(WrittenPattern& pattern);

 private:
    static constexpr std::size_t kMostElements = 300'000;  // in all rows together
    struct Entry {
        RowHeading heading;
        ParsedRow parsed;
        Place place;
        std::optional<int> sameAs = {};  // number of the row whose text it takes over
        int part = 0;                    // rows before the part it stands in
        std::vector<std::size_t> sizes = {};
    };
    static std::string rowName(int number);

    // row_table.cpp
    std::optional<int> sameRow(const SameRows& same, const std::vector<int>& numbers,
                               std::size_t index);
    int numberNamed(const SameRows& same) const;
    RowsAgainWords named(RowsAgainWords words) const;
    int firstOfLast(int count) const;
    void countBeforeRowOne();

    // row_table_finish.cpp
    Side firstSideOf(int part, int end) const;
    int endOf(int part) const;
    static bool inFamily(const Entry& family, int number, Side firstSide);
    void fillFamilies(const WrittenPattern& pattern);
    void fillSame();
    void settleSides(WrittenPattern& pattern);

    std::vector<ReadMessage>& messages_;
    std::map<int, Entry> rows_;
    std::vector<Entry> families_;
    std::vector<int> parts_ = {0};  // rows before each part
    std::vector<RowsAgain> again_;
    std::vector<WrittenPiece> pieces_;
    std::map<int, int> leftOut_;      // how many rows behind the row of this number
    std::vector<std::size_t> scope_;  // sizes that the rows now read are for
    std::optional<int> repeatFrom_;
    int repeatTo_ = 0;
    int current_ = 0;
    bool tooMany_ = false;     // which has been told
    std::size_t written_ = 0;  // elements, so that copies of rows stay within bounds
};

}  // namespace lacewright
