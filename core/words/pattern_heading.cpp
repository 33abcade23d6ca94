#include "core/words/pattern_heading.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/words/cast_on_line.h"
#include "core/words/edit_distance.h"
#include "core/words/own_stitch_line.h"

namespace lacewright {

namespace {

class HeadingParser {
 public:
    HeadingParser(TokenCursor& at, HeadingTarget& target) : at_(at), target_(target) {}

    bool parse() {
        if (parseCastOn(at_, target_)) return true;
        const std::size_t start = at_.position();
        for (const auto form :
             {&HeadingParser::worked, &HeadingParser::repeatFrom, &HeadingParser::ownStitches,
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

    // "Repeats: A, B (each any number of times)"
    bool namedCounts() {
        if (!at_.acceptWord({"repeats"}) || !at_.accept(TokenKind::Colon) ||
            !isCountName(at_.peek(), target_))
            return false;
        while (isCountName(at_.peek(), target_)) {
            countNamed(at_.peek(), target_);
            at_.advance();
            at_.accept(TokenKind::Comma);
            at_.skipWords({"and"});
        }
        return true;
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

    bool ownStitches() {
        return parseOwnStitches(at_, target_.pattern.ownStitches, target_.messages);
    }

    // "Sizes: ..", "Title: .." and the remarks that are passed over.
    bool named() {
        if (at_.isWord({"to"}) && at_.isWord({"fit"}, 1)) {
            at_.advance(2);
            const Place place = at_.peek().place;
            at_.accept(TokenKind::Colon);
            if (at_.is(TokenKind::Word) && listsNames()) return sizes(place);  // "To fit XS (S, M)"
        }
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
            const std::string known = lowerAscii(std::string(trim(name)));
            const bool unit = known == "in" || known == "in." || known == "cm" ||
                              known == "inches" || known == "mm" || known == "\"" ||
                              known == "months" || known == "years";
            if (!known.empty() && !(unit && !names.empty())) names.emplace_back(trim(name));
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
