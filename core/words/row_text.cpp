#include "core/words/row_text.h"

#include <algorithm>

namespace lacewright {
namespace {

bool all(const std::vector<int>& numbers, int number) {
    return std::all_of(numbers.begin(), numbers.end(), [&](int n) { return n == number; });
}

class RowTeller {
 public:
    RowTeller(const StitchWords& words, const WriterStyle& style) : words_(words), style_(style) {}

    std::vector<TextPiece> run(const RowPhrases& row) {
        const Phrase* plain = plainStretch(row);
        if (plain != nullptr && row.before.empty() && row.after.empty() && all(row.leaves, 0)) {
            say(words_[plain->word].bare, *plain);
            return std::move(pieces_);
        }
        list(row.before);
        if (!row.repeat.empty()) {
            if (!row.before.empty()) mark(", ");
            if (plain != nullptr) {
                say(words_[plain->word].verb, *plain);
                mark(" " + extent(row.leaves));
            } else {
                mark("*");
                list(row.repeat);
                mark("; rep from * " + howFar(row));
            }
            if (!row.after.empty()) mark(", ");
        }
        list(row.after);
        return std::move(pieces_);
    }

 private:
    // "k to last 2 sts" rather than "*k1; rep from * to last 2 sts".
    const Phrase* plainStretch(const RowPhrases& row) const {
        if (row.repeat.size() != 1 || row.leaves.empty() || row.repeat[0].isBracket() ||
            words_[row.repeat[0].word].verb.empty()) {
            return nullptr;
        }
        return &row.repeat[0];
    }

    void mark(std::string text) { pieces_.push_back({std::move(text)}); }
    void say(std::string text, const Phrase& phrase) {
        pieces_.push_back({std::move(text), phrase.word, phrase.first, phrase.length});
    }

    void list(const Phrases& phrases) {
        for (std::size_t i = 0; i < phrases.size(); ++i) {
            if (i > 0) mark(", ");
            const Phrase& phrase = phrases[i];
            if (!phrase.isBracket()) {
                say(words_[phrase.word].text(phrase.times, style_.numerals), phrase);
                continue;
            }
            const bool square = style_.brackets == Brackets::Square;
            mark(square ? "[" : "(");
            list(phrase.body);
            mark((square ? "] " : ") ") + (phrase.count.empty()
                                               ? timesText(phrase.times, style_.numerals)
                                               : phrase.count + " times"));
        }
    }

    static std::string extent(const std::vector<int>& leaves) {
        if (all(leaves, 0)) return "to end";
        if (all(leaves, 1)) return "to last st";
        return "to last " + figureText(leaves) + " sts";
    }

    std::string howFar(const RowPhrases& row) const {
        if (!row.leaves.empty()) return extent(row.leaves);
        std::vector<int> more = row.times;
        for (int& times : more) --times;
        if (all(more, more.front()) && more.front() < 3)
            return timesText(more, style_.numerals) + " more";
        std::string text = timesText(more, style_.numerals);
        return text.insert(text.rfind(" times"), " more");
    }

    const StitchWords& words_;
    const WriterStyle& style_;
    std::vector<TextPiece> pieces_;
};

}  // namespace

std::vector<TextPiece> rowPieces(const RowPhrases& row, const StitchWords& words,
                                 const WriterStyle& style) {
    return RowTeller(words, style).run(row);
}

std::string textOf(const std::vector<TextPiece>& pieces) {
    std::string text;
    for (const TextPiece& piece : pieces) text += piece.text;
    return text;
}

}  // namespace lacewright
