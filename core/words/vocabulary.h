#pragma once

#include <deque>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/words/token.h"

namespace lacewright {

// Which books' wording to follow where the same word means different work.
enum class Wording {
    Modern,
    Older  // books up to about 1920: "m1" is a yarn over, "n" narrows, "o" is an over
};

enum class TermRole {
    Stitch,    // takes and makes loops
    Ground,    // a fabric worked as it comes, one into one: "garter st", "in pattern"
    Modifier,  // follows a stitch and does not change its count: "tbl", "wyif"
    Aside      // counts nothing: "pm", "turn"
};

// A number in a term's counts: fixed, or the number written in the term ("k3tog" takes 3).
struct TermCount {
    int fixed = 0;
    int perNumber = 0;  // times the sum of the numbers written

    int with(int number) const { return fixed + perNumber * number; }
};

// Another meaning of the same words, settled by what the row needs.
struct SecondMeaning {
    std::string meaning;
    int takes = 0;
    int makes = 0;
};

struct Term {
    std::vector<std::string>
        spellings;        // the first is the one told to people; # stands for a number
    std::string dialect;  // "any", "us", "uk", "older"
    TermRole role = TermRole::Stitch;
    TermCount takes;
    TermCount makes;
    std::string meaning;
    std::string
        rightId;  // stitch of the catalogue worked so on a right-side row; # as in the spelling
    std::string wrongId;  // and on a wrong-side row
    std::optional<SecondMeaning> mayMean;
    std::string source;
};

// The terms of resources/vocabulary.json, built into the program.
const std::vector<Term>& builtInTerms();

struct TermMatch {
    const Term* term = nullptr;
    std::size_t tokens = 0;  // how many it covers
    int number = 0;          // the sum of the numbers in it
    std::string written;     // its spelling with the numbers filled in
};

// Finds terms in a run of tokens. The longest spelling wins; a pattern's own stitches win over the
// built-in ones.
class Vocabulary {
 public:
    explicit Vocabulary(Wording wording = Wording::Modern);
    Vocabulary(const Vocabulary&) = delete;  // spellings point at its own terms
    Vocabulary& operator=(const Vocabulary&) = delete;

    Wording wording() const { return wording_; }
    void define(const std::string& name, int takes, int makes);
    // The term that begins at `tokens[at]`. Requires: the last token is End.
    std::optional<TermMatch> match(const std::vector<Token>& tokens, std::size_t at) const;
    // The term spelled exactly so.
    const Term* find(std::string_view spelling) const;
    // A spelling within a small edit distance, for "did you mean".
    std::optional<std::string> nearest(std::string_view text) const;

 private:
    struct Atom {
        TokenKind kind = TokenKind::Word;  // Word, Number; Slash
        std::string text;                  // empty for any number
        bool glued = false;                // no blank allowed before it
    };
    struct Spelling {
        std::vector<Atom> atoms;
        const Term* term = nullptr;
        std::string text;
        std::string squeezed;  // without blanks; "#" for a number
        bool own = false;
    };
    using Index = std::map<std::string, std::vector<Spelling>, std::less<>>;  // by the first word
    static Index indexOf(Wording wording);
    static void add(Index& index, const std::string& spelling, const Term& term, bool own);
    static std::optional<TermMatch> matched(const Spelling& spelling,
                                            const std::vector<Token>& tokens, std::size_t at);

    Wording wording_;
    const Index* builtIn_;
    std::deque<Term> ownTerms_;
    Index own_;
};

}  // namespace lacewright
