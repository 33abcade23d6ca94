#pragma once

#include <string_view>
#include <vector>

#include "core/words/token.h"

namespace lacewright {

// Without its NewLine, with an End of its own; empty: blank.
using Line = std::vector<Token>;

// The line says which row it is, or which rows are worked again.
bool beginsRow(const Line& line);
// "Rows 1-8 form the pattern": which rows, not what they are.
bool namesRows(const Line& line);

// A text cut into lines, and what a line is by those around it. Indices count from 0.
class TextLines {
 public:
    explicit TextLines(std::string_view text);

    std::size_t size() const { return lines_.size(); }
    Line& operator[](std::size_t index) { return lines_[index]; }
    const Line& operator[](std::size_t index) const { return lines_[index]; }
    auto begin() { return lines_.begin(); }
    auto end() { return lines_.end(); }
    auto begin() const { return lines_.begin(); }
    auto end() const { return lines_.end(); }

    // Behind this line some row is told.
    bool rowsFollow(std::size_t index) const { return nextRow_[index] < lines_.size(); }
    // The next row behind this line is numbered 1 or is not numbered.
    bool rowsBegin(std::size_t index) const {
        return rowsFollow(index) && (nextNumber(index) == 0 || nextNumber(index) == 1);
    }
    // The number of the next row behind this line; 0 when it has none, -1 when no row follows or
    // the next line of rows only names rows worked again.
    int nextNumber(std::size_t index) const {
        return rowsFollow(index) ? number_[nextRow_[index]] : -1;
    }
    // The line above is a sentence of its own, or there is none.
    bool standsAlone(std::size_t index) const;
    // The line above is blank or ends as a sentence does.
    bool followsSentence(std::size_t index) const;
    bool isRemark(std::size_t index) const;
    // A heading of a row with a slip in it, "Rwo 3: k2".
    bool isMisspelt(std::size_t index) const;

 private:
    std::vector<Line> lines_;
    std::vector<int> number_;           // for each line: of its first row, as for nextNumber
    std::vector<std::size_t> nextRow_;  // for each line: the next one below it that begins a row
};

}  // namespace lacewright
