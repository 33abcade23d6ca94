#include "core/words/pattern_heading.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/words/edit_distance.h"
#include "core/words/figure.h"
#include "core/words/row_forms.h"

namespace lacewright {

namespace {

constexpr std::size_t kMaxOwnStitches = 200;

class HeadingParser {
 public:
    HeadingParser(TokenCursor& at, HeadingTarget& target) : at_(at), target_(target) {}

    bool parse() {
        const std::size_t start = at_.position();
        for (const auto form :
             {&HeadingParser::castOn, &HeadingParser::worked, &HeadingParser::repeatFrom,
              &HeadingParser::ownStitch, &HeadingParser::stitchesCounted,
              &HeadingParser::namedCounts, &HeadingParser::named}) {
            at_.moveTo(start);
            if ((this->*form)()) return true;
        }
        at_.moveTo(start);
        return false;
    }

 private:
    void complain(const Place& place, std::string what, std::string expected,
                  std::string nearest = {}) {
        target_.messages.push_back(
            {true, place, std::move(what), std::move(expected), std::move(nearest)});
    }

    // What is left of the line, as written.
    std::string rest() const {
        const Place from = at_.peek().place;
        const Place to = at_.tokens().back().place;
        return std::string(trim(target_.text.substr(from.offset, to.offset - from.offset)));
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

    bool castOn() {
        passWhatComesBefore();
        const Place place = at_.peek().place;
        const std::size_t named = castOnTokens();
        if (named == 0 && !at_.isWord({"multiple", "multiples", "mult"})) return false;
        at_.advance(named);
        at_.accept(TokenKind::Colon);
        at_.skipWords({"a", "an", "any", "number", "of", "sts", "stitches", "that", "may", "be",
                       "can", "is", "divided", "divisible"});
        WrittenCastOn castOn;
        castOn.place = place;
        if (at_.isWord({"even", "odd", "uneven"})) {
            castOn.multiple = Figure(2);
            castOn.plus = Figure(at_.isWord({"even"}) ? 0 : 1);
        } else if (!counts(castOn)) {
            complain(at_.peek().place, "how many stitches are cast on is not said",
                     "a number, or \"multiple of 6 plus 2\"");
            return true;
        }
        target_.pattern.castOn = castOn;
        return true;
    }

    // "8 for each A plus 12 for each B plus 5"
    bool forEach(WrittenCastOn& castOn) {
        if (!at_.is(TokenKind::Number) || !at_.isWord({"for"}, 1) || !at_.isWord({"each"}, 2) ||
            !isCountName(at_.peek(3)))
            return false;
        castOn.plus = Figure(0);
        do {
            const int each = at_.peek().value;
            at_.advance();
            if (at_.isWord({"for"}) && at_.isWord({"each"}, 1) && isCountName(at_.peek(2))) {
                at_.advance(2);
                const std::size_t count = countNamed(at_.peek());
                at_.advance();
                castOn.forEach.resize(std::max(castOn.forEach.size(), count + 1));
                castOn.forEach[count] += each;
            } else {
                castOn.plus = Figure(castOn.plus.of(0) + each);
            }
            at_.acceptStitchNoun();
        } while ((at_.accept(TokenKind::Plus) || at_.acceptWord({"plus", "and"})) &&
                 at_.is(TokenKind::Number));
        return true;
    }

    // One or two letters.
    static bool isCountName(const Token& token) {
        return token.kind == TokenKind::Word && token.text.size() <= 2;
    }

    // The index of the count with this name, a new one if need be.
    std::size_t countNamed(const Token& name) {
        auto& counts = target_.pattern.counts;
        const auto same = [&](const std::string& known) { return lowerAscii(known) == name.text; };
        const auto found = std::find_if(counts.begin(), counts.end(), same);
        if (found != counts.end()) return static_cast<std::size_t>(found - counts.begin());
        if (counts.size() == kMostNamedCounts) return counts.size() - 1;
        counts.emplace_back(target_.text.substr(name.place.offset, name.place.length));
        return counts.size() - 1;
    }

    // "Repeats: A, B (each any number of times)"
    bool namedCounts() {
        if (!at_.acceptWord({"repeats"}) || !at_.accept(TokenKind::Colon) ||
            !isCountName(at_.peek()))
            return false;
        while (isCountName(at_.peek())) {
            countNamed(at_.peek());
            at_.advance();
            at_.accept(TokenKind::Comma);
            at_.skipWords({"and"});
        }
        return true;
    }

    bool counts(WrittenCastOn& castOn) {
        if (forEach(castOn)) return true;
        const bool by = at_.previous().text == "by";
        const bool multiple =
            at_.acceptWord({"multiple", "multiples", "mult"}) || by || at_.acceptWord({"by"});
        at_.accept(TokenKind::Stop);
        at_.accept(TokenKind::Colon);
        at_.skipWords({"of", "by"});
        if (!at_.isNumber()) return false;
        (multiple ? castOn.multiple : castOn.plus) = figure();
        at_.acceptStitchNoun();
        at_.accept(TokenKind::Comma);
        const bool plus = at_.accept(TokenKind::Plus) || at_.acceptWord({"plus", "and", "with"});
        if (plus && at_.isNumber()) {
            // "multiple of 6 + 2"; "40 + 2 edge sts" is a sum.
            const Figure more = figure();
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

    bool worked() {
        if (!at_.acceptWord({"worked", "work"})) return false;
        const bool colon = at_.accept(TokenKind::Colon);
        at_.skipWords({"in", "the"});
        if (at_.acceptWord({"flat", "back", "rows"})) {
            target_.pattern.worked = Worked::Flat;
        } else if (at_.acceptWord({"round", "rounds", "circular"})) {
            target_.pattern.worked = Worked::InTheRound;
        } else if (colon) {
            complain(at_.peek().place, "how the rows are worked is not understood",
                     "flat or round");
        } else {
            return false;
        }
        return true;
    }

    bool repeatFrom() {
        if (!at_.acceptWord({"repeat", "rep"}) || !at_.acceptWord({"from"}) ||
            !at_.acceptWord({"row", "rnd", "round"})) {
            return false;
        }
        at_.accept(TokenKind::Colon);
        if (!at_.is(TokenKind::Number)) {
            complain(at_.peek().place, "the row to repeat from is not said", "a row number");
        } else {
            target_.pattern.repeatFrom = at_.peek().value;
        }
        return true;
    }

    bool ownStitch() {
        const Place place = at_.peek().place;
        if (!at_.acceptWord({"stitch"}) || at_.is(TokenKind::Colon)) return false;
        if (at_.isWord({"pattern", "count", "multiple", "key", "guide"})) return false;
        std::string name;
        while (!at_.atEnd() && !at_.is(TokenKind::Colon)) {
            if (!name.empty() && !at_.peek().glued) name += ' ';
            name += at_.peek().text;
            at_.advance();
        }
        const bool colon = at_.accept(TokenKind::Colon);
        int takes = -1;
        int makes = -1;
        while (!at_.atEnd()) {
            const bool take = at_.isWord({"takes", "take"});
            const bool make = at_.isWord({"makes", "make"});
            at_.advance();
            if ((take || make) && at_.is(TokenKind::Number))
                (take ? takes : makes) = at_.peek().value;
        }
        if (name.empty() || !colon || takes < 0 || makes < 0 || takes > kMaxLoops ||
            makes > kMaxLoops) {
            complain(place, "this does not define a stitch", "\"Stitch NAME: takes 3 makes 2\"");
        } else if (target_.pattern.ownStitches.size() < kMaxOwnStitches) {
            target_.pattern.ownStitches.push_back({name, takes, makes, place});
        }
        return true;
    }

    // "inc1: takes 0, makes 1; knot3 (takes 3 sts, makes 1)", with or without a heading before it.
    bool stitchesCounted() {
        for (std::size_t i = 0; !at_.is(TokenKind::End, i); ++i) {
            const bool heads = at_.is(TokenKind::Colon, i) && !at_.isWord({"takes"}, i + 1);
            if (i <= 3 && heads && at_.isWord({"words", "stitches", "stitch", "special"})) {
                at_.advance(i + 1);
                break;
            }
        }
        bool any = false;
        while (!at_.atEnd()) {
            const Place place = at_.peek().place;
            std::string name;
            while (at_.is(TokenKind::Word) || at_.is(TokenKind::Number) ||
                   at_.is(TokenKind::Slash)) {
                if (at_.isWord({"takes"}) && at_.is(TokenKind::Number, 1)) break;
                if (!name.empty() && !at_.peek().glued) name += ' ';
                name += at_.peek().text;
                at_.advance();
            }
            int takes = -1;
            int makes = -1;
            for (; !at_.atEnd() && !at_.is(TokenKind::Semicolon); at_.advance()) {
                if (!at_.is(TokenKind::Number, 1)) continue;
                if (at_.isWord({"takes"})) takes = at_.peek(1).value;
                if (at_.isWord({"makes"})) makes = at_.peek(1).value;
            }
            at_.accept(TokenKind::Semicolon);
            const bool counted = !name.empty() && takes >= 0 && makes >= 0 && takes <= kMaxLoops &&
                                 makes <= kMaxLoops;
            if (!counted || target_.pattern.ownStitches.size() >= kMaxOwnStitches) continue;
            target_.pattern.ownStitches.push_back({name, takes, makes, place});
            any = true;
        }
        return any;
    }

    // "Sizes: ..", "Title: .." and the remarks that are passed over.
    bool named() {
        if (at_.isWord({"to"}) && at_.isWord({"fit"}, 1)) at_.advance(2);
        const Token word = at_.peek();
        if (!at_.accept(TokenKind::Word)) return false;
        if (word.text == "sizes" && listsNames()) return sizes(word.place);
        if (!at_.accept(TokenKind::Colon)) return false;
        static constexpr std::array<std::string_view, 13> kRemarks = {
            "note", "notes",     "gauge", "tension",      "needles", "needle",  "yarn",
            "wool", "materials", "name",  "measurements", "pattern", "multiple"};
        if (word.text == "sizes" || word.text == "size") return sizes(word.place);
        if (word.text == "title") return target_.pattern.title = rest(), true;
        if (word.text == "wording") return wording();
        if (word.text == "source" || word.text == "author" || word.text == "year" ||
            word.text == "place") {
            std::string& source = target_.pattern.source;
            source += (source.empty() ? "" : ", ") + rest();
            return true;
        }
        if (std::find(kRemarks.begin(), kRemarks.end(), word.text) != kRemarks.end()) return true;
        std::string nearest;
        for (const std::string_view known :
             {"sizes", "title", "wording", "worked", "row", "rows", "rnd", "cast on"}) {
            if (editDistance(word.text, known, 2) < 2) nearest = known;
        }
        if (nearest.empty()) return false;
        complain(word.place, "\"" + word.text + ":\" is not a heading that is known here",
                 "\"Row 1:\" or a heading such as \"Cast on:\"", nearest);
        return true;
    }

    // "S (M, L)" right behind "Sizes".
    bool listsNames() const {
        if (!at_.is(TokenKind::Word) && !at_.is(TokenKind::Number)) return false;
        return at_.is(TokenKind::Open, 1) || at_.is(TokenKind::Slash, 1) ||
               at_.is(TokenKind::Comma, 1);
    }

    bool sizes(const Place& place) {
        std::string name;
        std::vector<std::string> names;
        const std::string list = rest();
        std::string_view marks = ",;:()[]";
        if (list.find_first_of(marks) == std::string::npos) marks = "/|";  // "S/M/L"
        for (const char c : list + marks.front()) {
            if (marks.find(c) == std::string_view::npos) {
                name += c;
                continue;
            }
            if (!trim(name).empty()) names.emplace_back(trim(name));
            name.clear();
        }
        if (names.empty() || names.size() > kMaxSizes) {
            complain(place, "no sizes are listed here", "names such as \"S (M, L)\"");
        } else {
            target_.sizes = names.size();
            target_.pattern.sizes = std::move(names);
        }
        return true;
    }

    bool wording() {
        if (at_.acceptWord({"older", "old"})) {
            target_.wording = Wording::Older;
        } else if (at_.acceptWord({"modern", "us", "uk"})) {
            target_.wording = Wording::Modern;
        } else {
            complain(at_.peek().place, "this wording is not known", "modern or older");
        }
        return true;
    }

    TokenCursor& at_;
    HeadingTarget& target_;
};

}  // namespace

bool parsePatternHeading(TokenCursor& at, HeadingTarget& target) {
    return HeadingParser(at, target).parse();
}

}  // namespace lacewright
