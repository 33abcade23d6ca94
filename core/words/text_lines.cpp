#include "core/words/text_lines.h"

#include <algorithm>

#include "core/words/figure.h"
#include "core/words/remark_line.h"
#include "core/words/row_heading.h"
#include "core/words/rows_again.h"
#include "core/words/shaping_line.h"

namespace lacewright {

namespace {

constexpr std::size_t kMostTitleWords = 6;

// "Shape armholes: BO 5 sts at beg of next 2 rows", "Lace panel: Row 1: ..": the words before the
// row name a part of the work.
void passTitle(Line& line) {
    std::size_t words = 0;
    while (line[words].kind == TokenKind::Word && words < kMostTitleWords) ++words;
    const bool part = TokenCursor(line).isWord(
        {"shape", "shaping", "divide", "left", "right", "back", "front", "sleeve", "sleeves",
         "neck", "body", "yoke", "hem", "cuff", "border", "edging", "lace", "panel"});
    if (!part || line[words].kind != TokenKind::Colon) return;
    const Line rest(line.begin() + static_cast<std::ptrdiff_t>(words) + 1, line.end());
    if (rest.size() > 1 && beginsRow(rest)) line = rest;
}

// Of the row that the line begins; 0 when it is not numbered, -1 when it is no heading.
int firstNumber(const Line& line) {
    TokenCursor at(line);
    const auto heading = namesRows(line) ? std::nullopt : parseRowHeading(at);
    if (!heading) return -1;
    return heading->numbers.empty() ? 0 : heading->numbers.front();
}

}  // namespace

bool beginsRow(const Line& line) {
    TokenCursor at(line);
    if (parseRowHeading(at)) return true;
    std::vector<ReadMessage> messages;
    std::size_t sizes = 0;
    if (!parseRowsAgain(at, {messages, sizes}).empty()) return true;
    if (!parseShapingSentence(at, {messages, sizes}).empty()) return true;
    Line copy = line;
    return parseAtBeginnings(copy) > 0 || parseShapedAfter(copy) > 0;
}

bool namesRows(const Line& line) {
    TokenCursor at(line);
    std::vector<ReadMessage> messages;
    std::size_t sizes = 0;
    const auto again = parseRowsAgain(at, {messages, sizes});
    return !again.empty() && again.front().named;
}

TextLines::TextLines(std::string_view text) {
    Line line;
    for (Token& token : tokenize(text)) {
        if (token.kind != TokenKind::NewLine && token.kind != TokenKind::End) {
            line.push_back(std::move(token));
            continue;
        }
        Token end = std::move(token);
        end.kind = TokenKind::End;
        end.text.clear();
        end.place.length = 0;
        if (!line.empty()) {
            line.push_back(std::move(end));
            fillNones(line);
            passTitle(line);
        }
        lines_.push_back(std::move(line));
        line.clear();
    }
    nextRow_.resize(lines_.size());
    number_.resize(lines_.size(), -1);
    std::size_t next = lines_.size();
    for (std::size_t i = lines_.size(); i-- > 0;) {
        nextRow_[i] = next;
        if (lines_[i].empty() || !beginsRow(lines_[i])) continue;
        next = i;
        number_[i] = firstNumber(lines_[i]);
    }
}

bool TextLines::standsAlone(std::size_t index) const {
    if (index == 0 || lines_[index - 1].empty()) return true;
    const Line& above = lines_[index - 1];
    const TokenKind last = above[above.size() - 2].kind;
    const TokenCursor end({above[above.size() - 2], above.back()});
    return last != TokenKind::Comma && last != TokenKind::Semicolon && last != TokenKind::Colon &&
           last != TokenKind::Star && last != TokenKind::Open &&
           !end.isWord({"rep", "repeat", "from", "to", "and", "then", "last", "until", "in"});
}

bool TextLines::followsSentence(std::size_t index) const {
    if (index == 0 || lines_[index - 1].empty()) return true;
    const Line& above = lines_[index - 1];
    const TokenKind last = above[above.size() - 2].kind;
    return last == TokenKind::Stop || last == TokenKind::Close;
}

bool TextLines::isRemark(std::size_t index) const {
    return isRemarkLine(TokenCursor(lines_[index]), standsAlone(index));
}

bool TextLines::isMisspelt(std::size_t index) const {
    return standsAlone(index) && !nearestHeading(TokenCursor(lines_[index])).empty();
}

}  // namespace lacewright
