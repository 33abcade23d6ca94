#include "core/words/how_often.h"

#include <algorithm>

namespace lacewright {

void readOften(TokenCursor& at, RowsAgainWords& words, FigureContext context) {
    const auto total = [&at] {  // "a total of 4 times", "4 times in all"
        at.skipWords({"in", "a"});
        return at.acceptWord({"total", "all", "altogether"});
    };
    at.skipWords({"for"});
    bool inAll = total();
    at.skipWords({"of"});
    if (at.is(TokenKind::Cross) || at.isWord({"x"})) at.advance();
    if (at.acceptWord({"once"})) {
        words.times = Figure(1);
    } else if (at.acceptWord({"twice"})) {
        words.times = Figure(2);
    } else if (at.isNumber()) {
        const std::size_t start = at.position();
        const std::size_t messages = context.messages.size();
        Figure times = readFigure(at, context);
        if (at.isStitchNoun() || at.isWord({"cm", "in", "inches", "mm"})) {  // a count or a length
            at.moveTo(start);
            context.messages.resize(messages);
        } else {
            words.times = std::move(times);
        }
    }
    if (!words.times) return;
    const auto passMore = [&at] {
        at.skipWords({"more", "times", "time", "x", "again", "additional", "further"});
    };
    passMore();
    if (at.is(TokenKind::Open) && at.isWord({"more"}, 1) && at.is(TokenKind::Close, 2)) {
        at.advance(3);  // "3 (more) times"
        passMore();
    }
    inAll = total() || inAll;
    if (!inAll) return;
    for (int& times : words.times->bySize) times = std::max(0, times - 1);
}

// "until 10 sts remain"; other ends, such as a length, say nothing about the count.
void readUntil(TokenCursor& at, RowsAgainWords& words, FigureContext context) {
    const std::size_t start = at.position();
    at.accept(TokenKind::Comma);
    if (at.acceptWord({"until", "till"})) {
        at.skipWords({"there", "are", "only", "you", "have"});
        if (at.isNumber()) {
            Figure stitches = readFigure(at, context);
            if (at.acceptStitchNoun()) {
                words.until = std::move(stitches);
                at.skipWords({"rem", "remain", "remaining", "left", "are", "on", "the", "needle",
                              "needles", "in", "total"});
                return;
            }
        }
    }
    at.moveTo(start);
}

}  // namespace lacewright
