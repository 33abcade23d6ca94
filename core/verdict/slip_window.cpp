#include "core/verdict/slip_window.h"

#include <algorithm>

namespace lacewright {
namespace {

// A cast-on that puts these loops on the needle; its count is the variable 0.
std::optional<WrittenCastOn> castOnOf(const AffineForm& loops) {
    const auto fits = [](std::int64_t count) { return count >= 0 && count < kMostRowLoops; };
    if (!fits(loops.constant())) return std::nullopt;
    WrittenCastOn castOn{Figure(0), Figure(static_cast<int>(loops.constant()))};
    for (const AffineForm::Term& term : loops.terms()) {
        if (!fits(term.coefficient)) return std::nullopt;
        const int each = static_cast<int>(term.coefficient);
        if (isNamedCount(term.variable)) {
            castOn.forEach.resize(std::max(castOn.forEach.size(), countIndex(term.variable) + 1));
            castOn.forEach[countIndex(term.variable)] = each;
        } else if (loops.terms().size() == 1) {
            castOn.multiple = Figure(each);
        } else {
            return std::nullopt;
        }
    }
    return castOn;
}

std::size_t indexOf(const WrittenPattern& pattern, int number, std::size_t size) {
    const auto at = std::find_if(pattern.rows.begin(), pattern.rows.end(), [&](const auto& row) {
        return row.number == number && row.isFor(size);
    });
    return static_cast<std::size_t>(at - pattern.rows.begin());
}

}  // namespace

std::optional<SlipWindow> SlipWindow::make(const SlipTrial& trial, const WrittenProof& proof,
                                           std::size_t row, const Finding& finding,
                                           std::size_t size) {
    const WrittenPattern& pattern = trial.said();
    const std::size_t last = indexOf(pattern, finding.row, size);
    if (last < row || last >= pattern.rows.size() || trial.goesToLandmarks()) return std::nullopt;
    const int from = pattern.rows[row].number;
    const auto isInside = [&](int number) { return number >= from && number <= finding.row; };
    for (const RowsAgain& again : pattern.again) {
        if (isInside(again.after) || isInside(again.first)) return std::nullopt;
    }
    for (const WrittenPiece& piece : pattern.pieces) {
        if (isInside(piece.first)) return std::nullopt;
    }
    SlipWindow window;
    window.size_ = size;
    window.rows_ = pattern;
    window.rows_.again.clear();
    window.rows_.pieces.clear();
    window.rows_.repeatFrom.reset();
    if (row > 0) {
        if (proof.rows[row - 1].counted.left != AffineForm()) return std::nullopt;
        window.rows_.castOn = castOnOf(proof.rows[row - 1].after);
        if (!window.rows_.castOn) return std::nullopt;
    }
    auto& rows = window.rows_.rows;
    rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(last) + 1, rows.end());
    rows.erase(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(row));
    for (std::size_t i = row; i <= last; ++i) {
        if (trial.textOf(i) == trial.textOf(row)) window.worded_.push_back(i - row);
        const bool fails =
            std::find(proof.faulty.begin(), proof.faulty.end(), i) != proof.faulty.end();
        window.fails_.push_back(fails && pattern.rows[i].number != finding.row);
    }
    if (finding.rule == "closing") {
        const std::size_t first =
            indexOf(pattern, pattern.repeatFrom.value_or(pattern.rows.front().number), size);
        const bool sameCount = row == 0 || proof.rows[row - 1].after.isConstant() ||
                               proof.rows[row - 1].after.coefficient(0) != 0;
        if (first < row && sameCount && first < proof.rows.size())
            window.leaves_ = proof.rows[first].before;
        else
            return std::nullopt;
    }
    return window;
}

bool SlipWindow::mayExplain(const Elements& elements) {
    for (const std::size_t row : worded_) rows_.rows[row].elements = elements;
    const WrittenProof proof = proveWritten(rows_, size_);
    for (const std::size_t row : proof.faulty) {
        if (!fails_[row]) return false;
    }
    return !leaves_ || proof.rows.back().after == *leaves_;
}

}  // namespace lacewright
