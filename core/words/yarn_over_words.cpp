#include "core/words/yarn_over_words.h"

#include <optional>

namespace lacewright {

namespace {

constexpr std::string_view kPlainYarnOver = "yrn";

bool isPurled(const std::string& word) {
    return word.starts_with("p") || word.starts_with("ssp") || word.starts_with("sssp");
}

}  // namespace

std::vector<TextPiece> yarnOversByNeighbours(std::vector<TextPiece> pieces,
                                             const StitchWords& words) {
    // Whether the stitch at `at` or beyond is purled; yarn overs are looked through.
    const auto purled = [&](std::size_t at, int step) -> std::optional<bool> {
        for (; at < pieces.size(); at += static_cast<std::size_t>(step)) {
            if (pieces[at].word < 0) continue;
            const WorkWord& word = words[pieces[at].word];
            if (!word.timesForm) return isPurled(word.one);
        }
        return {};
    };
    std::vector<TextPiece> out = pieces;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i].word < 0 || pieces[i].text != kPlainYarnOver) continue;
        auto before = i > 0 ? purled(i - 1, -1) : std::nullopt;
        auto after = purled(i + 1, 1);
        if (!before) before = after;
        if (!after) after = before;
        if (!before) continue;
        out[i].text = *before ? (*after ? "yrn" : "yon") : (*after ? "yfrn" : "yfwd");
    }
    return out;
}

std::string glossaryWord(const TextPiece& piece, const StitchWords& words) {
    const WorkWord& word = words[piece.word];
    const bool yarnOver = piece.text == "yfwd" || piece.text == "yon" || piece.text == "yfrn";
    if (yarnOver) return piece.text;
    return word.verb.empty() ? word.one : word.verb;
}

}  // namespace lacewright
