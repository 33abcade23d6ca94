#include "core/verdict/figure_slips.h"
#include "core/verdict/slip_odds.h"
#include "core/verdict/slip_search.h"

// Slips that are in no row: in the cast-on, in how often rows are worked again, and in the counts
// that rows are said to leave.
namespace lacewright {

// The piece that the row stands in, counted from 0 behind the first one.
std::optional<std::size_t> SlipSearch::pieceOf(int row) const {
    std::optional<std::size_t> piece;
    for (std::size_t i = 0; i < pattern_.pieces.size() && pattern_.pieces[i].first <= row; ++i)
        piece = i;
    return piece;
}

const std::optional<WrittenCastOn>& SlipSearch::castOnOf(std::optional<std::size_t> piece) const {
    return piece ? pattern_.pieces[*piece].castOn : pattern_.castOn;
}

void SlipSearch::tryCastOn(const Finding& finding, std::vector<Explanation>& found) {
    Explanation one;
    one.in = Explanation::In::CastOn;
    one.piece = pieceOf(finding.row);
    if (!castOnOf(one.piece) || !castOnOf(one.piece)->forEach.empty()) return;
    const WrittenCastOn& written = *castOnOf(one.piece);
    for (const WrittenCastOn& castOn : castOnsNear(written, size_)) {
        one.castOn = castOn;
        trial_.castOn(castOn, one.piece);
        addIfExplains(one, castOnOdds(castOn, written), finding, found);
    }
}

void SlipSearch::addIfExplains(Explanation one, double odds, const Finding& finding,
                               std::vector<Explanation>& found) {
    const WrittenProof proof = proveWritten(trial_.worded(), size_);
    if (explains(proof, proof_, finding)) {
        one.whole = isWhole(proof);
        one.logOdds = odds + textOdds(pattern_, proof, 0);
        found.push_back(std::move(one));
    }
    trial_.reset(0);
}

// The rows are right, and what they say of themselves is not.
void SlipSearch::tryStated(const Finding& finding, std::vector<Explanation>& found) {
    if (const auto row = rowOf(finding); row && proof_.rows[*row].stated) {
        Explanation one;
        one.in = Explanation::In::Stated;
        one.row = *row;
        one.figure = one.written = *pattern_.rows[*row].statedCount;
        for (std::size_t size = 0; size < one.figure.bySize.size(); ++size) {
            const AffineForm counted = proveWritten(pattern_, size).rows[*row].after;
            if (!counted.isConstant()) return;
            one.figure.bySize[size] = static_cast<int>(counted.constant());
        }
        trial_.state(*row, one.figure);
        addIfExplains(one, statedOdds(one.figure, one.written), finding, found);
        trial_.reset(*row);
    }
    for (std::size_t again = 0; again < pattern_.again.size(); ++again) {
        const RowsAgain& rows = pattern_.again[again];
        if (rows.last == finding.row && proof_.again[again].stated) tryAgain(again, finding, found);
    }
}

// Rows are worked again another number of times than is said, or leave another count.
void SlipSearch::tryAgain(std::size_t again, const Finding& finding,
                          std::vector<Explanation>& found) {
    const RowsAgain& rows = pattern_.again[again];
    Explanation one;
    one.row = again;
    if (!rows.until) {
        one.in = Explanation::In::Again;
        one.written = rows.times;
        for (Figure& times : figuresNear(rows.times, size_)) {
            one.figure = std::move(times);
            trial_.workAgain(again, one.figure);
            addIfExplains(one, figureOdds(one.figure, one.written), finding, found);
        }
    }
    if (!rows.stated) return;
    one.in = Explanation::In::StatedAgain;
    one.figure = one.written = *rows.stated;
    for (std::size_t size = 0; size < one.figure.bySize.size(); ++size) {
        const auto stated = proveWritten(pattern_, size).again[again].stated;
        if (stated && stated->counted.isConstant())
            one.figure.bySize[size] = static_cast<int>(stated->counted.constant());
    }
    trial_.stateAgain(again, one.figure);
    addIfExplains(one, statedOdds(one.figure, one.written), finding, found);
}

}  // namespace lacewright
