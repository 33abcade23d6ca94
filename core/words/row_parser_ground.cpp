#include <iterator>

#include "core/words/row_parser.h"

namespace lacewright {

// "garter st", "k1, p1 rib", "in pattern": any number of stitches, one into one.
void RowParser::ground(Elements& out, const Term& term, const Place& place) {
    Working work;
    work.term = term.spellings.front();
    // "Work even in patt" says it twice.
    const auto more = context_.vocabulary.match(at_.tokens(), at_.position());
    if (more && more->term->role == TermRole::Ground) at_.advance(more->tokens);
    at_.acceptWord({"over", "on", "for"});
    Tail tail;
    bool counted = false;
    countOf(work, {}, tail, counted);
    if (!tail.any()) parseExtent(tail);
    Elements body;
    if (term.spellings.front() == "rib" && out.size() >= 2) {
        const auto* last = std::get_if<Working>(&out.back().what);
        const auto* first = std::get_if<Working>(&out[out.size() - 2].what);
        if (last && first && last->takes == 1 && first->takes == 1 && last->makes == 1 &&
            first->makes == 1) {
            body.assign(std::make_move_iterator(out.end() - 2), std::make_move_iterator(out.end()));
            out.resize(out.size() - 2);
        }
    }
    const Place whole = spanning(body.empty() ? place : body.front().place, at_.previous().place);
    if (counted) return out.push_back({whole, std::move(work)});
    if (body.empty()) body.push_back({place, std::move(work)});
    if (!tail.any()) tail.toEnd = false;
    Element element = stretchOf(std::move(body), tail, whole, false);
    std::get<Stretch>(element.what).breaksAnywhere = true;
    out.push_back(std::move(element));
}

// "Knit the knits and purl the purls", "k all k sts and p all p sts as they appear".
bool RowParser::knitsAndPurls(Elements& out) {
    const std::size_t start = at_.position();
    const Place place = at_.peek().place;
    const auto all = [this](std::string_view letter, std::string_view verb,
                            std::string_view several) {
        if (!at_.acceptWord({letter, verb})) return false;
        at_.skipWords({"the", "all"});
        if (at_.acceptWord({several})) return true;
        return at_.acceptWord({letter, verb}) && at_.acceptStitchNoun();
    };
    if (all("k", "knit", "knits")) {
        at_.accept(TokenKind::Comma);
        at_.acceptWord({"and"});
        if (all("p", "purl", "purls")) {
            at_.skipWords({"as", "they", "appear", "present", "themselves", "come"});
            const Term* asis = context_.vocabulary.find("asis");
            ground(out, *asis, place);
            return true;
        }
    }
    at_.moveTo(start);
    return false;
}

}  // namespace lacewright
