#include "core/words/cast_on_line.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/words/figure.h"
#include "core/words/row_forms.h"

namespace lacewright {

namespace {

class CastOnParser {
 public:
    CastOnParser(TokenCursor& at, HeadingTarget& target) : at_(at), target_(target) {}

    bool parse() {
        passWhatComesBefore();
        const Place place = at_.peek().place;
        const std::size_t named = castOnTokens();
        if (named == 0 && !at_.isWord({"multiple", "multiples", "mult"})) return false;
        at_.advance(named);
        at_.accept(TokenKind::Colon);
        at_.skipWords({"a",        "an",    "any",     "number", "of",      "sts",       "st",
                       "stitches", "loops", "that",    "which",  "may",     "be",        "can",
                       "will",     "is",    "are",     "divide", "divided", "divisible", "in",
                       "as",       "many",  "loosely", "the"});
        WrittenCastOn castOn;
        castOn.place = place;
        if (at_.isWord({"even", "odd", "uneven"})) {
            castOn.multiple = Figure(2);
            castOn.plus = Figure(at_.isWord({"even"}) ? 0 : 1);
        } else if (!counts(castOn)) {
            target_.messages.push_back({true,
                                        at_.peek().place,
                                        "how many stitches are cast on is not said",
                                        "a number, or \"multiple of 6 plus 2\"",
                                        {}});
            return true;
        }
        target_.pattern.castOn = castOn;
        if (picksUp()) target_.pattern.castOn = sumStated(castOn);
        return true;
    }

 private:
    // "CO 3 sts, .. pick up and k 3 sts along edge": more than were cast on.
    bool picksUp() const {
        for (std::size_t i = 0; !at_.is(TokenKind::End, i); ++i) {
            if (at_.isWord({"pick", "picking"}, i) && at_.isWord({"up"}, i + 1)) return true;
        }
        return false;
    }
    // "9 sts." at the end of the line is how many there then are; nothing where it does not say so.
    std::optional<WrittenCastOn> sumStated(WrittenCastOn castOn) {
        std::vector<ReadMessage> messages;
        std::optional<Figure> sum;
        while (!at_.atEnd()) {
            const bool begins = at_.is(TokenKind::Number) || at_.is(TokenKind::Open) ||
                                at_.is(TokenKind::Dash) || at_.is(TokenKind::Equals);
            const auto stated =
                begins ? readStatedCount(at_, {messages, target_.sizes}) : std::nullopt;
            if (stated && !stated->change) sum = stated->stitches;
            if (!stated) at_.advance();
        }
        if (!sum) return {};
        castOn.multiple = Figure(0);
        castOn.plus = *sum;
        return castOn;
    }

    // "Cast on", "Cast-on" or "CO": the tokens it takes; 0 when it does not stand here.
    std::size_t castOnTokens() const {
        if (at_.isWord({"co"})) return 1;
        const std::size_t dash = at_.is(TokenKind::Dash, 1) ? 1 : 0;
        return at_.isWord({"cast"}) && at_.isWord({"on"}, 1 + dash) ? 2 + dash : 0;
    }

    // "Using size 4 needles and MC, cast on 40 sts", "Set-up: cast on 5 sts".
    void passWhatComesBefore() {
        const std::size_t start = at_.position();
        const bool toolsFirst = at_.isWord({"with", "using"});
        while (!at_.atEnd() && castOnTokens() == 0 && (toolsFirst || !at_.is(TokenKind::Number)))
            at_.advance();
        const std::size_t named = castOnTokens();
        if (named == 0 || (!toolsFirst && !at_.is(TokenKind::Number, named))) at_.moveTo(start);
    }

    // "8 for each A plus 12 for each B plus 5"
    bool forEach(WrittenCastOn& castOn) {
        if (!at_.is(TokenKind::Number) || !at_.isWord({"for"}, 1) || !at_.isWord({"each"}, 2) ||
            !isCountName(at_.peek(3), target_))
            return false;
        castOn.plus = Figure(0);
        do {
            const int each = at_.peek().value;
            at_.advance();
            if (at_.isWord({"for"}) && at_.isWord({"each"}, 1) &&
                isCountName(at_.peek(2), target_)) {
                at_.advance(2);
                const std::size_t count = countNamed(at_.peek(), target_);
                at_.advance();
                castOn.forEach.resize(std::max(castOn.forEach.size(), count + 1));
                castOn.forEach[count] = std::min(castOn.forEach[count] + each, kMaxFigure);
            } else {
                castOn.plus = Figure(std::min(castOn.plus.of(0) + each, kMaxFigure));
            }
            at_.acceptStitchNoun();
        } while ((at_.accept(TokenKind::Plus) || at_.acceptWord({"plus", "and"})) &&
                 at_.is(TokenKind::Number));
        return true;
    }

    // "for each edge": passed when it stands here.
    bool forEachOf(std::initializer_list<std::string_view> what) {
        if (!at_.isWord({"for", "at", "on"}) || !at_.isWord({"each", "every"}, 1) ||
            !at_.isWord(what, 2))
            return false;
        at_.advance(3);
        return true;
    }
    // "13 stitches for each pattern"
    bool forEachPattern() {
        return forEachOf({"pattern", "patt", "repeat", "rep", "scallop", "point", "leaf"});
    }

    // "multiple of 6 minus 1", "multiple of 6 - 1"
    bool lacks(WrittenCastOn& castOn) {
        const bool minus = at_.isWord({"minus", "less"}) || at_.is(TokenKind::Dash, 0);
        if (!minus || !at_.is(TokenKind::Number, 1)) return false;
        at_.advance(1);
        castOn.plus = figure();
        for (int& n : castOn.plus.bySize) n = -n;
        at_.acceptStitchNoun();
        return true;
    }

    bool counts(WrittenCastOn& castOn) {
        if (forEach(castOn)) return true;
        const bool by = at_.previous().text == "by";
        bool multiple =
            at_.acceptWord({"multiple", "multiples", "mult"}) || by || at_.acceptWord({"by"});
        at_.accept(TokenKind::Stop);
        at_.accept(TokenKind::Colon);
        at_.skipWords({"of", "by"});
        if (!at_.isNumber()) return false;
        const Figure first = figure();
        at_.acceptStitchNoun();
        if (!multiple) multiple = forEachPattern();
        (multiple ? castOn.multiple : castOn.plus) = first;
        at_.accept(TokenKind::Comma);
        const bool plus = at_.accept(TokenKind::Plus) || at_.acceptWord({"plus", "and", "with"});
        at_.skipWords({"add"});
        if (!plus && multiple && lacks(castOn)) return true;
        if (plus && at_.isNumber()) {
            // "multiple of 6 + 2"; "40 + 2 edge sts" is a sum.
            Figure more = figure();
            at_.skipWords({"over", "more", "extra"});
            at_.acceptStitchNoun();
            if (forEachOf({"edge", "side", "end"})) {
                for (int& n : more.bySize) n = std::min(2 * n, kMaxFigure);
            }
            if (castOn.multiple.of(0) > 0)
                castOn.plus = more;
            else
                for (int& n : castOn.plus.bySize) n += more.of(0);
        }
        return true;
    }

    Figure figure() {
        Figure one = readFigure(at_, {target_.messages, target_.sizes});
        // "18, 22, 26 sts" for three sizes
        std::size_t more = 0;
        while (at_.is(TokenKind::Comma, 2 * more) && at_.is(TokenKind::Number, 2 * more + 1))
            ++more;
        if (one.bySize.size() == 1 && more > 0 && more + 1 == target_.sizes) {
            for (std::size_t i = 0; i < more; ++i) one.bySize.push_back(at_.peek(2 * i + 1).value);
            at_.advance(2 * more);
        }
        return one;
    }

    TokenCursor& at_;
    HeadingTarget& target_;
};

}  // namespace

bool isCountName(const Token& token, const HeadingTarget& target) {
    const std::string_view written = target.text.substr(token.place.offset, token.place.length);
    return token.kind == TokenKind::Word && written.size() <= 2 &&
           std::all_of(written.begin(), written.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
}

std::size_t countNamed(const Token& name, HeadingTarget& target) {
    auto& counts = target.pattern.counts;
    const auto same = [&](const std::string& known) { return lowerAscii(known) == name.text; };
    const auto found = std::find_if(counts.begin(), counts.end(), same);
    if (found != counts.end()) return static_cast<std::size_t>(found - counts.begin());
    if (counts.size() == kMostNamedCounts) return counts.size() - 1;
    counts.emplace_back(target.text.substr(name.place.offset, name.place.length));
    return counts.size() - 1;
}

bool parseCastOn(TokenCursor& at, HeadingTarget& target) {
    const std::size_t start = at.position();
    if (CastOnParser(at, target).parse()) return true;
    at.moveTo(start);
    return false;
}

}  // namespace lacewright
