#include "core/words/definition_line.h"

#include <algorithm>

#include "core/words/row_forms.h"
#include "core/words/row_parser.h"

namespace lacewright {

namespace {

constexpr std::size_t kLongestName = 6;  // tokens

// How many tokens "means" has here, "stands for", ". denotes"; 0 when none of them stands here.
std::size_t meansLength(const TokenCursor& at, std::size_t ahead) {
    const std::size_t stop = at.is(TokenKind::Stop, ahead) ? 1 : 0;  // of the name, "N. means"
    if (at.isWord({"means", "denotes", "signifies"}, ahead + stop)) return stop + 1;
    return at.isWord({"stands"}, ahead + stop) && at.isWord({"for"}, ahead + stop + 1) ? stop + 2
                                                                                       : 0;
}

// How many tokens the name has that is defined here; 0 when none is.
std::size_t nameLength(const TokenCursor& at, bool inList) {
    for (std::size_t i = 0; i <= kLongestName; ++i) {
        if (meansLength(at, i) > 0) return i;
        const TokenKind kind = at.peek(i).kind;
        const bool spacedDash = kind == TokenKind::Dash && !at.peek(i).glued;
        if (kind == TokenKind::Equals || (inList && (kind == TokenKind::Colon || spacedDash))) {
            return i;
        }
        if (kind != TokenKind::Word && kind != TokenKind::Number && kind != TokenKind::Slash &&
            kind != TokenKind::Open && kind != TokenKind::Close)
            return 0;
    }
    return 0;
}

void passDefinitionEnd(TokenCursor& at, bool inSentence) {
    while (at.accept(TokenKind::Semicolon) ||
           (inSentence && (at.accept(TokenKind::Stop) || at.accept(TokenKind::Comma) ||
                           at.acceptWord({"and"})))) {
    }
}

// A semicolon or, in sentences with "means", what another name follows.
bool endsDefinition(const TokenCursor& at, bool inSentence) {
    if (at.is(TokenKind::Semicolon)) return true;
    if (!inSentence || !(at.is(TokenKind::Stop) || at.is(TokenKind::Comma) || at.isWord({"and"})))
        return false;
    TokenCursor next = at;
    passDefinitionEnd(next, true);
    return next.position() > at.position() && nameLength(next, false) > 0;
}

struct Defined {
    int takes = 0;
    int makes = 0;
    bool oneWord = false;  // by a single stitch, "inc = kfb"
};

// Nothing when the definition is not understood as stitches.
std::optional<Defined> defined(std::vector<Token> tokens, const Vocabulary& vocabulary) {
    std::vector<ReadMessage> messages;
    std::size_t sizes = 1;
    WrittenRow row;
    row.elements =
        RowParser(std::move(tokens), {vocabulary, {messages, sizes}, {}}).parse().elements;
    if (!messages.empty() || row.elements.empty()) return {};
    const std::vector<CountedRow> readings = countedReadings(row, 0, 0);
    if (readings.empty()) return {};
    const CountedRow& usual = readings.front();
    const RowForms& forms = usual.forms;
    if (!usual.uncountable.empty() || !usual.own.empty() || !forms.takes.isConstant() ||
        !forms.makes.isConstant()) {
        return {};
    }
    const std::int64_t takes = forms.takes.constant();
    const std::int64_t makes = forms.makes.constant();
    if (takes < 0 || makes < 0 || takes > kMaxLoops || makes > kMaxLoops || takes + makes == 0)
        return {};
    return Defined{static_cast<int>(takes), static_cast<int>(makes), row.elements.size() == 1};
}

// What a name takes and makes that is understood already.
std::optional<Defined> knownAs(std::vector<Token> name, const Vocabulary& vocabulary) {
    const auto match = vocabulary.match(name, 0);
    if (!match || match->tokens + 1 < name.size()) return defined(std::move(name), vocabulary);
    const Term& term = *match->term;
    return Defined{term.takes.with(match->number), term.makes.with(match->number), true};
}

// "Nupp: (k1, yo, k1) in next st": a stitch that is known, explained by what it is worked into.
bool explainsStitch(const TokenCursor& at, const Vocabulary& vocabulary) {
    const auto match = vocabulary.match(at.tokens(), at.position());
    return match && match->term->role == TermRole::Stitch &&
           at.is(TokenKind::Colon, match->tokens) && at.is(TokenKind::Open, match->tokens + 1);
}

}  // namespace

bool parseDefinitionsOpening(TokenCursor& at) {
    const std::size_t start = at.position();
    at.skipWords({"special", "pattern"});
    const bool one = at.acceptWord({"abbreviations", "abbreviation", "abbr", "abbrs", "glossary",
                                    "key", "terms", "definitions"});
    const bool two = !one && at.acceptWord({"stitch", "stitches"});
    if (two) at.acceptWord({"guide", "key", "used", "glossary", "abbreviations"});
    if ((one || (two && at.position() > start + 1)) &&
        (at.accept(TokenKind::Colon) || at.accept(TokenKind::Stop) || at.atEnd())) {
        return true;
    }
    at.moveTo(start);
    return false;
}

std::optional<std::vector<OwnStitch>> parseDefinitions(const TokenCursor& line, bool inList,
                                                       Wording wording,
                                                       const std::vector<OwnStitch>& earlier) {
    TokenCursor at = line;
    Vocabulary vocabulary(wording);
    inList = inList || explainsStitch(at, vocabulary);
    if (nameLength(at, inList) == 0) return {};
    for (const OwnStitch& own : earlier) vocabulary.define(own.name, own.takes, own.makes);
    std::vector<OwnStitch> all;
    while (const std::size_t length = nameLength(at, inList)) {
        OwnStitch own;
        own.place = at.peek().place;
        std::vector<Token> name;
        for (std::size_t i = 0; i < length; ++i) {
            if (i > 0 && !at.peek().glued) own.name += ' ';
            own.name += at.peek().text;
            name.push_back(at.peek());
            at.advance();
        }
        own.place = spanning(own.place, at.previous().place);
        const std::size_t means = meansLength(at, 0);
        at.advance(std::max<std::size_t>(means, 1));
        std::vector<Token> tokens;
        while (!at.atEnd() && !endsDefinition(at, means > 0)) {
            tokens.push_back(at.peek());
            at.advance();
        }
        tokens.push_back(line.tokens().back());
        passDefinitionEnd(at, means > 0);
        name.push_back(line.tokens().back());
        // What is known keeps its counts, unless one other stitch is named for it.
        const auto known = knownAs(std::move(name), vocabulary);
        const auto counts = defined(std::move(tokens), vocabulary);
        if (!counts || (known && !counts->oneWord)) continue;
        own.takes = counts->takes;
        own.makes = counts->makes;
        const bool same = known && known->takes == own.takes && known->makes == own.makes;
        if (!same) all.push_back(std::move(own));
    }
    return all;
}

}  // namespace lacewright
