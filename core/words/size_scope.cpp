#include "core/words/size_scope.h"

#include <algorithm>

namespace lacewright {

namespace {

// How many tokens of the name stand here; 0 when it does not.
std::size_t nameTokens(const TokenCursor& at, const std::string& name) {
    const std::vector<Token> words = tokenize(name);
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (at.peek(i).kind != words[i].kind || at.peek(i).text != words[i].text) return 0;
    }
    return words.size() - 1;  // without the End
}

// The name that is longest here: its index and its tokens.
std::pair<std::size_t, std::size_t> longestName(const TokenCursor& at,
                                                const std::vector<std::string>& names) {
    std::pair<std::size_t, std::size_t> best{0, 0};
    for (std::size_t i = 0; i < names.size(); ++i) {
        const std::size_t tokens = nameTokens(at, names[i]);
        if (tokens > best.second) best = {i, tokens};
    }
    return best;
}

}  // namespace

std::optional<SizeScope> parseSizeScope(TokenCursor& at, const std::vector<std::string>& names) {
    constexpr std::size_t kMostNames = 24;
    constexpr std::size_t kLongest = 60;  // tokens up to "only"
    const std::size_t start = at.position();
    bool says = false;
    for (std::size_t i = 0; i < kLongest && !says && !at.is(TokenKind::End, i); ++i)
        says = at.isWord({"only"}, i) ||
               (at.isWord({"all", "both"}, i) && at.isWord({"size", "sizes"}, i + 1));
    if (!says) return {};
    const auto ends = [&at] { return at.accept(TokenKind::Colon) || at.atEnd(); };
    at.skipWords({"for"});
    SizeScope scope;
    const bool all = at.acceptWord({"all", "both"});
    const bool named = at.acceptWord({"size", "sizes"});
    if (all && named && ends()) return scope;
    if (all || names.size() < 2) return at.moveTo(start), std::nullopt;
    for (std::size_t i = 0; i < kMostNames && !at.isWord({"only"}); ++i) {
        const auto [index, tokens] = longestName(at, names);
        if (tokens == 0) {
            if (!named || at.atEnd() || at.is(TokenKind::Colon)) break;
            scope.unknown = true;
        } else {
            scope.sizes.push_back(index);
        }
        at.advance(std::max<std::size_t>(tokens, 1));
        while (at.accept(TokenKind::Comma) || at.accept(TokenKind::Slash) ||
               at.accept(TokenKind::Open) || at.accept(TokenKind::Close) ||
               at.acceptWord({"and", "or", "size", "sizes"})) {
        }
    }
    const bool only = at.acceptWord({"only"});
    if (!only || !ends() || (scope.sizes.empty() && !scope.unknown))
        return at.moveTo(start), std::nullopt;
    return scope;
}

bool differsInRows(const WrittenPattern& pattern) {
    return std::any_of(pattern.rows.begin(), pattern.rows.end(),
                       [](const WrittenRow& row) { return !row.sizes.empty(); });
}

WrittenPattern rowsOfSize(const WrittenPattern& pattern, std::size_t size) {
    WrittenPattern own = pattern;
    std::erase_if(own.rows, [size](const WrittenRow& row) { return !row.isFor(size); });
    for (WrittenRow& row : own.rows) row.sizes.clear();
    return own;
}

}  // namespace lacewright
