#include "core/words/rows_reader.h"

#include <algorithm>

#include "core/words/remark_line.h"
#include "core/words/shaping_ends.h"
#include "core/words/shaping_line.h"

namespace lacewright {

RowsReader::RowsReader(TextLines& lines, ReadRows& read, const RowsContext& context)
    : lines_(lines),
      read_(read),
      text_(context.text),
      wording_(context.wording),
      sizes_(context.sizes),
      table_(read.messages) {}

void RowsReader::read() {
    readRows();
    if (table_.empty() && !read_.hasErrors()) {
        error(Place(), "there are no rows here", "\"Row 1: k1, yo, ..\"");
    }
    table_.finish(pattern());
}

void RowsReader::error(const Place& place, std::string what, std::string expected) {
    read_.messages.push_back({true, place, std::move(what), std::move(expected), {}});
}

// Rows of another part of the work that are numbered from 1 again are counted on. Lines that
// stand between tell it from a row written twice; one that names a size begins no part.
void RowsReader::countOn(RowHeading& heading, const Place& place) {
    const bool first = !heading.next && !heading.numbers.empty() && heading.numbers.front() == 1;
    if (first && parted_ && table_.holds(part_ + 1)) {
        part_ = table_.beginPart();
        read_.messages.push_back({false,
                                  place,
                                  "rows are numbered from 1 again; they are counted on, so that "
                                  "this is row " +
                                      std::to_string(part_ + 1),
                                  {},
                                  {}});
    }
    for (int& number : heading.numbers) number += part_;
    parted_ = false;
}

void RowsReader::passOver(const Line& line, const char* why) {
    parted_ = !TokenCursor(line).isWord({"size", "sizes"});
    read_.messages.push_back({false, line.front().place, why, {}, {}});
}

void RowsReader::strangeLine(const Line& line) {
    read_.messages.push_back({true, line.front().place, "this line does not say which row it is",
                              "\"Row 1:\" or a heading such as \"Cast on:\"",
                              nearestHeading(TokenCursor(line))});
}

ParsedRow RowsReader::parsed(Line line) {
    const FigureContext figures{read_.messages, sizes_, true, &scope_};
    return RowParser(std::move(line), {*vocabulary_, figures, pattern().counts, lettingFall_})
        .parse();
}

bool RowsReader::isProse(std::size_t index) const {
    const TokenCursor line(lines_[index]);
    if (isPlainRowsLine(line)) return false;
    if (lines_.followsSentence(index) && isProseLine(line, *vocabulary_)) return true;
    return lines_.standsAlone(index) &&
           (isGlossaryLine(line, *vocabulary_) ||
            (nearestHeading(line).empty() && !holdsStitches(line, *vocabulary_) &&
             !continuesRow(line)));
}

void RowsReader::readRows() {
    vocabulary_.emplace(wording_);
    for (const OwnStitch& own : pattern().ownStitches)
        vocabulary_->define(own.name, own.takes, own.makes);
    lettingFall_ = std::any_of(lines_.begin(), lines_.end(), [](const Line& line) {
        return std::any_of(line.begin(), line.end(), [](const Token& token) {
            return token.text.starts_with("drop") || token.text == "letting" ||
                   token.text == "fall" || token.text.starts_with("unw") ||
                   token.text == "elongated";
        });
    });
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (lines_[i].empty() || lines_.isRemark(i)) {
            parted_ = true;
        } else if (isPlainRowsLine(TokenCursor(lines_[i]))) {
            table_.leaveOut(plainRowsIn(TokenCursor(lines_[i])));
            passOver(lines_[i], "these rows change no count; without numbers they are left out");
        } else {
            i = readRow(i);
        }
    }
}

// Gives the last line that was read.
std::size_t RowsReader::readRow(std::size_t index) {
    TokenCursor at(lines_[index]);
    const auto heading = namesRows(lines_[index]) ? std::nullopt : parseRowHeading(at);
    if (!heading) {
        readSentence(index);
        return index;
    }
    const Place place = lines_[index].front().place;
    Line body(lines_[index].begin() + static_cast<std::ptrdiff_t>(at.position()),
              lines_[index].end());
    std::size_t last = index;
    while (last + 1 < lines_.size() && goesOn(last + 1)) {
        body.pop_back();
        ++last;
        body.insert(body.end(), lines_[last].begin(), lines_[last].end());
    }
    if (body.size() == 1) {
        error(place, "this row says nothing", "its stitches");
        return last;
    }
    spellOutEachEnd(body);
    RowHeading counted = *heading;
    countOn(counted, place);
    ParsedRow row = parsed(std::move(body));
    if (row.same) {
        for (int& number : row.same->numbers) number += part_;
    }
    table_.add(counted, std::move(row), place);
    return last;
}

// The line goes on with the row above it.
bool RowsReader::goesOn(std::size_t index) const {
    const Line& line = lines_[index];
    TokenCursor at(line);
    if (!line.empty() && parseSizeScope(at, pattern().sizes)) return false;
    return !line.empty() && !beginsRow(line) && !lines_.isRemark(index) && !isProse(index) &&
           !lines_.isMisspelt(index) && !startsPiece(index) && !isPlainRowsLine(TokenCursor(line));
}

void RowsReader::addNext(int rows, Line text, const Place& place) {
    RowHeading heading;
    heading.next = true;
    heading.nextRows = rows;
    heading.label = "Next row";
    table_.add(heading, parsed(std::move(text)), place);
}

// Rows worked as they come.
void RowsReader::addPlain(int rows, const Place& place) {
    if (rows > 0) addNext(rows, asTheyCome(place), place);
}

}  // namespace lacewright
