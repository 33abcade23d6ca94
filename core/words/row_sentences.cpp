#include <algorithm>

#include "core/words/remark_line.h"
#include "core/words/rows_reader.h"
#include "core/words/shaping_line.h"

namespace lacewright {

std::optional<PieceStart> RowsReader::startsPiece(std::size_t index) const {
    const bool begun = !table_.empty() || pattern().castOn;
    if (!begun || !lines_.rowsBegin(index)) return {};
    return pieceStart(TokenCursor(lines_[index]), text_, sizes_);
}

void RowsReader::beginPiece(const PieceStart& piece, const Place& place) {
    if (table_.empty()) {  // "CO 3 sts, knit 6 rows", then stitches picked up along these
        pattern().castOn = piece.castOn;
        return;
    }
    part_ = table_.beginPiece(piece.castOn);
    scope_.clear();
    table_.beginScope({});
    read_.messages.push_back(
        {false,
         place,
         "another piece begins here; its rows are counted on from row " + std::to_string(part_ + 1),
         {},
         {}});
}

// "Size L only:", perhaps with a row behind it.
void RowsReader::beginScope(const SizeScope& scope, std::size_t index, const TokenCursor& at) {
    Line& line = lines_[index];
    if (scope.unknown)
        return error(line.front().place, "this line names a size that the pattern does not have",
                     "one of its sizes");
    scope_ = scope.sizes;
    table_.beginScope(scope_);
    if (at.atEnd()) return;
    line.erase(line.begin(), line.begin() + static_cast<std::ptrdiff_t>(at.position()));
    readRow(index);
}

// A line that does not begin with the name of a row.
void RowsReader::readSentence(std::size_t index) {
    Line& line = lines_[index];
    const Place place = line.front().place;
    TokenCursor at(line);
    if (const auto scope = parseSizeScope(at, pattern().sizes)) {
        beginScope(*scope, index, at);
    } else if (const auto again = parseRowsAgain(at, {read_.messages, sizes_, false, &scope_});
               !again.empty()) {
        repeatRows(again, index, at);
    } else if (Line first = line; parseAtBeginnings(first) > 0) {
        for (Line& clause : beginningsApart(line)) {
            if (const int rows = parseAtBeginnings(clause)) addNext(rows, std::move(clause), place);
        }
    } else if (const int plain = parseShapedAfter(line)) {
        addPlain(plain - 1, place);
        addNext(1, std::move(line), place);
    } else if (const auto piece = startsPiece(index)) {
        beginPiece(*piece, place);
    } else if (!table_.empty() && isCastOnLine(at) && !lines_.rowsFollow(index)) {
        passOver(line, "a cast-on that stands behind the rows is not counted with them");
    } else if (!table_.empty() && readShaping(at)) {
        return;
    } else if (!table_.empty() && tellsShaping(at)) {
        error(place, "the shaping in this sentence is not understood",
              "the rows that shape, written out");
    } else if (!table_.empty() && lines_.rowsFollow(index) && worksToCount(at)) {
        error(place, "which rows lead to this count is not understood",
              "a sentence such as \"Rep rows 3 and 4 until there are 60 sts\"");
    } else if (saysHowOften(at) && !isGlossaryLine(at, *vocabulary_)) {
        error(place, "which rows are worked again here is not understood",
              "a sentence such as \"Rep rows 3 and 4 5 more times\"");
    } else if (isProse(index) || (table_.empty() && isProseLine(at, *vocabulary_)) ||
               (nearestHeading(at).empty() && !holdsStitches(at, *vocabulary_))) {
        passOver(line);
    } else {
        strangeLine(line);
    }
}

// "Inc 1 st at each end of next and every foll 4th row until there are 60 sts."
bool RowsReader::readShaping(TokenCursor& at) {
    const std::vector<ShapedRows> shaped =
        parseShapingSentence(at, {read_.messages, sizes_, false, &scope_});
    for (const ShapedRows& rows : shaped) {
        const Place place = rows.often.place;
        addPlain(rows.every - 1, place);
        addNext(1, rows.row, place);
        const bool once = rows.often.times && rows.often.times == Figure(0);
        if (!once || rows.often.stated) table_.repeat(rows.often);
    }
    return !shaped.empty();
}

// Sizes beyond the scope work the rows no more. False where the words do not say how often.
bool RowsReader::onlyForScope(std::vector<RowsAgainWords>& again) const {
    for (RowsAgainWords& words : again) {
        if (!words.times) return false;
        Figure times;
        times.bySize.assign(pattern().sizes.size(), 0);
        for (const std::size_t size : scope_) times.bySize[size] = words.times->of(size);
        words.times = std::move(times);
        words.stated.reset();
    }
    return true;
}

// "Rep these 2 rows 3 times more, dec 1 st at end of last row": the last row is then written
// out, and what stands before it worked as often as is left.
void RowsReader::repeatRows(std::vector<RowsAgainWords> again, std::size_t index, TokenCursor& at) {
    for (RowsAgainWords& words : again) {
        if (words.first > 0) words.first += part_;
        if (words.last > 0) words.last += part_;
    }
    if (!scope_.empty() && !onlyForScope(again))
        return error(at.peek().place, "how often these sizes work the rows again is not understood",
                     "a sentence such as \"Rep rows 3 and 4 5 more times\"");
    const auto shaped = shapingBehind(at);
    if (shaped &&
        (again.back().until || lines_.nextNumber(index) + part_ == table_.currentNumber() + 1))
        return error(at.peek().place,
                     "shaping behind a sentence that repeats rows is not read here",
                     "the row that shapes, written out");
    if (shaped && again.back().times) {
        for (int& times : again.back().times->bySize) times = std::max(0, times - 1);
        again.back().stated.reset();
    }
    for (const RowsAgainWords& words : again) table_.repeat(words);
    if (!shaped) return;
    if (again.back().times) table_.repeatAllButLast(again.back());
    addNext(1, *shaped, at.peek().place);
}

}  // namespace lacewright
