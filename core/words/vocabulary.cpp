#include "core/words/vocabulary.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/stitch/catalogue.h"
#include "core/words/edit_distance.h"

namespace lacewright {

namespace {

// Without blanks, and with the number in place of "#".
std::string squeezed(std::string_view text, std::string_view number = {}) {
    std::string out;
    for (const char c : text) {
        if (c == '#') {
            out += number;
        } else if (c != ' ') {
            out += c;
        }
    }
    return out;
}

std::size_t marksIn(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count(text, '#'));
}

std::string firstNumber(std::string_view text) {
    const std::size_t begin = std::min(text.find_first_of("0123456789"), text.size());
    const std::size_t end = std::min(text.find_first_not_of("0123456789", begin), text.size());
    return std::string(text.substr(begin, end - begin));
}

// The first word or number of a spelling.
std::string_view firstAtom(std::string_view text) {
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    std::size_t end = 0;
    while (end < text.size() && text[end] != ' ' && text[end] != '/' &&
           digit(text[end]) == digit(text.front())) {
        ++end;
    }
    return text.substr(0, end);
}

// "st", "sts", "stitch" and "stitches" may stand for one another.
std::string_view oneNoun(std::string_view word) {
    const bool noun = word == "sts" || word == "stitch" || word == "stitches";
    return noun ? std::string_view("st") : word;
}

// In a spelling "#" stands for any number; a blank allows one in the text, no blank forbids it.
bool isNumberMark(const Token& token) {
    return token.kind == TokenKind::Star && token.text == "#";
}

}  // namespace

Vocabulary::Index Vocabulary::indexOf(Wording wording) {
    Index index;
    // Terms of the wording in force come first, so that they win over others spelled alike.
    for (const bool older : {true, false}) {
        if (older && wording != Wording::Older) continue;
        for (const Term& term : builtInTerms()) {
            if ((term.dialect == "older") != older) continue;
            for (const std::string& spelling : term.spellings) add(index, spelling, term, false);
        }
    }
    return index;
}

Vocabulary::Vocabulary(Wording wording) : wording_(wording) {
    static const Index modern = indexOf(Wording::Modern);
    static const Index older = indexOf(Wording::Older);
    builtIn_ = wording == Wording::Older ? &older : &modern;
}

void Vocabulary::add(Index& index, const std::string& text, const Term& term, bool own) {
    Spelling spelling;
    spelling.term = &term;
    spelling.text = text;
    for (const char c : text) {
        if (c != ' ') spelling.squeezed += c;
    }
    spelling.own = own;
    for (const Token& token : tokenize(text)) {
        if (token.kind == TokenKind::End) break;
        const bool any = isNumberMark(token);
        spelling.atoms.push_back({any ? TokenKind::Number : token.kind, any ? "" : token.text,
                                  token.glued && !spelling.atoms.empty()});
    }
    if (spelling.atoms.empty()) return;
    index[std::string(oneNoun(spelling.atoms.front().text))].push_back(std::move(spelling));
}

void Vocabulary::define(const std::string& name, int takes, int makes) {
    Term term;
    term.spellings = {lowerAscii(name)};
    term.dialect = "any";
    term.takes.fixed = takes;
    term.makes.fixed = makes;
    term.meaning = "the pattern's own stitch";
    const StitchCataloguePtr& stitches = builtInStitches();
    if (const auto index = stitches->find(term.spellings.front());
        index && (*stitches)[*index].takes == takes && (*stitches)[*index].makes == makes) {
        term.rightId = term.wrongId = term.spellings.front();
    }
    ownTerms_.push_back(std::move(term));
    add(own_, ownTerms_.back().spellings.front(), ownTerms_.back(), true);
}

std::optional<TermMatch> Vocabulary::matched(const Spelling& spelling,
                                             const std::vector<Token>& tokens, std::size_t at) {
    std::size_t used = 0;
    int number = 0;
    std::string written;
    for (std::size_t i = 0; i < spelling.atoms.size(); ++i) {
        const Atom& atom = spelling.atoms[i];
        // A hyphen may stand where a blank may, "k2-tog"; an old full stop after a letter, "k. 2".
        if (i > 0 && !atom.glued && at + used + 1 < tokens.size()) {
            const TokenKind kind = tokens[at + used].kind;
            if (kind == TokenKind::Dash && tokens[at + used].glued && tokens[at + used + 1].glued)
                ++used;
            if (kind == TokenKind::Stop && tokens[at + used].glued &&
                tokens[at + used - 1].kind == TokenKind::Word &&
                tokens[at + used - 1].text.size() <= 2) {
                ++used;
            }
        }
        const Token& token = tokens[at + used];
        if (atom.glued && !token.glued) return {};
        if (atom.kind == TokenKind::Number && atom.text.empty()) {
            if (token.value < 1 ||
                (token.kind != TokenKind::Number && token.kind != TokenKind::Word))
                return {};
            number = std::min(kMaxFigure, number + token.value);
            written += std::to_string(token.value);
        } else {
            const bool named = atom.kind == TokenKind::Number && token.kind == TokenKind::Word &&
                               std::to_string(token.value) == atom.text;
            if (!named && (token.kind != atom.kind || oneNoun(token.text) != oneNoun(atom.text)))
                return {};
            written += atom.text;
        }
        ++used;
        const bool blank = i + 1 < spelling.atoms.size() && !spelling.atoms[i + 1].glued &&
                           spelling.atoms[i + 1].kind == TokenKind::Word &&
                           atom.kind == TokenKind::Word;
        if (blank) written += ' ';
    }
    // "sl 1 k2": the number belongs to the next stitch.
    const bool letter = spelling.atoms.size() > 2 && spelling.atoms.back().text.size() == 1 &&
                        spelling.atoms[spelling.atoms.size() - 2].kind == TokenKind::Number;
    if (letter && tokens[std::min(at + used, tokens.size() - 1)].kind == TokenKind::Number)
        return {};
    return TermMatch{spelling.term, used, number, written};
}

std::optional<TermMatch> Vocabulary::match(const std::vector<Token>& tokens, std::size_t at) const {
    std::optional<TermMatch> best;
    bool bestOwn = false;
    const auto consider = [&](std::string_view first) {
        for (const Index* index : {&own_, builtIn_}) {
            const auto found = index->find(first);
            if (found == index->end()) continue;
            for (const Spelling& spelling : found->second) {
                const auto match = matched(spelling, tokens, at);
                if (!match) continue;
                const bool longer = !best || match->tokens > best->tokens;
                if (longer || (match->tokens == best->tokens && spelling.own && !bestOwn)) {
                    best = match;
                    bestOwn = spelling.own;
                }
            }
        }
    };
    consider(oneNoun(tokens[at].text));
    if (tokens[at].value > 0) {
        consider("");
        if (tokens[at].kind == TokenKind::Word) consider(std::to_string(tokens[at].value));
    }
    return best;
}

const Term* Vocabulary::find(std::string_view text) const {
    for (const Index* index : {&own_, builtIn_}) {
        const auto found = index->find(oneNoun(firstAtom(text)));
        if (found == index->end()) continue;
        for (const Spelling& spelling : found->second) {
            if (spelling.text == text) return spelling.term;
        }
    }
    return nullptr;
}

std::optional<std::string> Vocabulary::nearest(std::string_view text) const {
    const std::string written = squeezed(text);
    const std::string number = firstNumber(text);
    std::optional<std::string> best;
    std::size_t bestBlanks = 0;
    // One slip in a short word, two in a longer one.
    std::size_t limit = written.size() <= 4 ? 2 : 3;
    for (const Index* index : {&own_, builtIn_}) {
        for (const auto& [first, spellings] : *index) {
            for (const Spelling& spelling : spellings) {
                const bool numbered = spelling.text.find('#') != std::string::npos;
                if (spelling.text.size() < 2 || (numbered && number.empty())) continue;
                const std::size_t length =
                    spelling.squeezed.size() +
                    (numbered ? marksIn(spelling.squeezed) * (number.size() - 1) : 0);
                const std::size_t apart =
                    length > written.size() ? length - written.size() : written.size() - length;
                if (apart > limit) continue;  // every letter more or less is a slip
                const std::string known =
                    numbered ? squeezed(spelling.text, number) : spelling.squeezed;
                const std::size_t distance = editDistance(written, known, limit + 1);
                const std::size_t blanks =
                    numbered ? 0
                             : static_cast<std::size_t>(std::ranges::count_if(
                                   spelling.text, [](char c) { return c == ' ' || c == '/'; }));
                // Of two equally near, the one written as one word.
                const bool better =
                    best ? distance < limit || (distance == limit && blanks < bestBlanks)
                         : distance < limit;
                if (!better) continue;
                limit = distance;
                best = numbered ? known : spelling.text;
                bestBlanks = blanks;
            }
        }
    }
    return best;
}

}  // namespace lacewright
