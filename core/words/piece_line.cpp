#include "core/words/piece_line.h"

#include "core/words/cast_on_line.h"
#include "core/words/figure.h"

namespace lacewright {

namespace {

constexpr std::size_t kLongest = 60;  // tokens that are looked at

bool says(const TokenCursor& line, std::initializer_list<std::string_view> words) {
    for (std::size_t i = 0; i < kLongest && !line.is(TokenKind::End, i); ++i) {
        if (line.isWord(words, i)) return true;
    }
    return false;
}

// Behind the stitches, or between two rows.
bool besideOthers(const TokenCursor& line) {
    return says(line,
                {"turn", "turning", "row",       "rnd",    "round", "over",  "bound",
                 "gap",  "next",    "then",      "each",   "more",  "extra", "underarm",
                 "end",  "beg",     "beginning", "before", "after", "thumb", "provisionally"});
}

std::optional<WrittenCastOn> castOnOf(const TokenCursor& line, std::string_view text,
                                      std::size_t sizes) {
    WrittenPattern pattern;
    std::vector<ReadMessage> messages;
    Wording wording = Wording::Modern;
    HeadingTarget target{pattern, messages, wording, sizes, text};
    TokenCursor at = line;
    if (!parseCastOn(at, target) || !messages.empty()) return {};
    return pattern.castOn;
}

// "Pick up and k 80 sts". Gives the tokens up to the number; 0 when it does not stand here.
std::size_t pickUpTokens(const TokenCursor& line, std::size_t at) {
    if (!line.isWord({"pick", "picking"}, at) || !line.isWord({"up"}, at + 1)) return 0;
    std::size_t tokens = 2;
    while (line.isWord({"and", "k", "knit", "p", "purl"}, at + tokens)) ++tokens;
    return line.isNumber(at + tokens) ? tokens : 0;
}

// How many are picked up: the sum stated at the end, or the only number there is.
std::optional<WrittenCastOn> pickedUp(TokenCursor at, std::size_t sizes) {
    std::vector<ReadMessage> messages;
    const FigureContext context{messages, sizes};
    std::vector<Figure> counts;
    std::optional<Figure> sum;
    while (!at.atEnd()) {
        if (auto stated = at.is(TokenKind::Number) ? std::nullopt : readStatedCount(at, context)) {
            if (!stated->change) sum = stated->stitches;
        } else if (at.isNumber()) {
            const Figure count = readFigure(at, context);
            if (at.acceptStitchNoun()) counts.push_back(count);
        } else {
            at.advance();
        }
    }
    if (!messages.empty()) return {};
    if (!sum && counts.size() == 1) sum = counts.front();
    if (!sum) return {};
    WrittenCastOn castOn;
    castOn.plus = *sum;
    return castOn;
}

}  // namespace

std::optional<PieceStart> pieceStart(const TokenCursor& line, std::string_view text,
                                     std::size_t sizes) {
    for (std::size_t i = 0; i < kLongest && !line.is(TokenKind::End, i); ++i) {
        if (pickUpTokens(line, i) > 0) {
            TokenCursor at = line;
            at.advance(i);
            return PieceStart{pickedUp(at, sizes)};
        }
    }
    const bool castsOn = line.isWord({"co"}) || says(line, {"cast"}) || says(line, {"co"});
    if (!castsOn || besideOthers(line)) return {};
    if (const auto castOn = castOnOf(line, text, sizes)) return PieceStart{castOn};
    return {};
}

}  // namespace lacewright
