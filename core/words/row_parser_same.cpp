#include <algorithm>

#include "core/words/row_heading.h"
#include "core/words/row_numbers.h"
#include "core/words/row_parser.h"

namespace lacewright {

// "Work row 1 of Chart A": what a chart works is not known here. Told once for a text.
bool RowParser::namesChart() {
    const auto& tokens = at_.tokens();
    const auto chart = std::find_if(tokens.begin(), tokens.end(), [](const Token& token) {
        return token.text == "chart" || token.text == "charts";
    });
    if (chart == tokens.end()) return false;
    const std::string what = "this row names a chart, and rows that name a chart cannot be counted";
    const auto& messages = context_.figures.messages;
    if (std::none_of(messages.begin(), messages.end(),
                     [&](const ReadMessage& message) { return message.what == what; }))
        complain(chart->place, what, "the stitches of the row in words");
    return true;
}

// "as row 3", "same as rows 1 and 2", "rep last 4 rows twice", "as inc row".
bool RowParser::parseSame(ParsedRow& row) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    SameRows same;
    at_.skipWords({"work", "worked", "knit", "the", "same", "exactly", "all"});
    const bool like = at_.acceptWord({"as", "like", "rep", "repeat"});
    at_.skipWords({"for", "the", "in", "given"});
    bool found = false;
    const bool bare =
        at_.is(TokenKind::Number) &&
        (at_.is(TokenKind::End, 1) || (at_.is(TokenKind::Stop, 1) && at_.is(TokenKind::End, 2)));
    if (at_.acceptWord({"last", "previous", "preceding"})) {
        same.last = at_.isNumber() ? std::min(at_.peek().value, kMaxRowNumber) : 1;
        if (at_.isNumber()) at_.advance();
        found = isRowWord(at_);
    } else if (bare || isRowWord(at_)) {  // "as 2"
        if (!bare) at_.advance();
        same.numbers = parseRowNumbers(at_, false);
        found = !same.numbers.empty();
    } else if (at_.ordinal(false) > 0) {
        same.numbers = parseRowNumbers(at_, true);
        found = !same.numbers.empty() && (isRowWord(at_) || at_.atEnd() || at_.is(TokenKind::Stop));
    } else if (!(same.label = acceptRowName(at_)).empty()) {
        found = isRowWord(at_);
        if (found && at_.is(TokenKind::Number, 1)) {
            same.named = at_.peek(1).value;
            at_.advance();
        }
    }
    if (!like || !found) {
        at_.moveTo(start);
        return false;
    }
    if (isRowWord(at_) || same.named > 0) at_.advance();
    Tail often;
    if (const auto count = times(often)) {
        if (!often.more) same.times = std::max(1, count->of(0));
    }
    at_.skipWords({"more", "again", "only"});
    same.place = spanning(place, at_.previous().place);
    row.same = std::move(same);
    skipSeparators();
    if (!parseStated(row) && !at_.atEnd()) {
        complain(at_.peek().place, "a row that is the same as another says nothing else",
                 "the end of the row");
        at_.moveTo(at_.tokens().size() - 1);
    }
    return true;
}

}  // namespace lacewright
