#include "core/words/prove.h"

#include <algorithm>

#include "core/words/marker_places.h"
#include "core/words/pieces.h"
#include "core/words/reading_chooser.h"
#include "core/words/size_scope.h"

namespace lacewright {

namespace {

constexpr Variable kCastOnCount = 0;
constexpr std::size_t kMostWorked = 4000;  // rows, repeats of rows included

class Prover {
 public:
    Prover(const WrittenPattern& pattern, std::size_t size)
        : pattern_(pattern), size_(size), chooser_(pattern, size) {}

    WrittenProof run(const std::optional<CastOn>& castOn) {
        proof_ = {};
        proof_.castOn = castOn;
        proof_.rows.resize(pattern_.rows.size());
        proof_.countNames = pattern_.counts;
        reach_ = {firstNeedle(castOn)};
        const bool fixed = pattern_.castOn && castOn && castOn->multiple == 0;
        if (fixed && (goesToLandmark(pattern_) || placesItsMarkers(pattern_)))
            landmarks_.emplace(pattern_, size_);
        std::size_t again = 0;
        for (std::size_t i = 0; i < pattern_.rows.size(); ++i) {
            work(i, true);
            for (; again < pattern_.again.size() &&
                   pattern_.again[again].after <= pattern_.rows[i].number;
                 ++again) {
                proof_.again.emplace_back();
                workAgain(pattern_.again[again], proof_.again.back());
            }
        }
        proof_.again.resize(pattern_.again.size());
        finish();
        return std::move(proof_);
    }

 private:
    Needle firstNeedle(const std::optional<CastOn>& castOn) const {
        if (!castOn) return {};
        if (!pattern_.castOn || pattern_.castOn->forEach.empty()) return {*castOn, kCastOnCount};
        AffineForm loops(castOn->plus);
        for (std::size_t i = 0; i < pattern_.castOn->forEach.size(); ++i)
            loops.add(namedCount(i), pattern_.castOn->forEach[i]);
        Needle needle;
        needle.hold(loops);
        return needle;
    }

    void workRows(const RowsAgain& again) {
        for (std::size_t i = 0; i < pattern_.rows.size(); ++i) {
            const int number = pattern_.rows[i].number;
            if (number < again.first || number > again.last) continue;
            if (++worked_ > kMostWorked) return;
            work(i, false);
        }
    }

    // Loops on the needle where they are a plain number.
    std::optional<std::int64_t> plainCount() const {
        if (!reach_.needle.loops() || !reach_.needle.loops()->isConstant()) return {};
        return reach_.needle.loops()->constant();
    }

    void workAgain(const RowsAgain& again, RowsAgainProof& proof) {
        if (!again.until) {
            for (; proof.times < again.times.of(size_) && worked_ <= kMostWorked; ++proof.times)
                workRows(again);
            if (again.stated) stateAgain(again, again.stated->of(size_), proof);
            return;
        }
        const std::int64_t goal = again.until->of(size_);
        auto before = plainCount();
        while (before && *before != goal && worked_ <= kMostWorked) {
            workRows(again);
            const auto after = plainCount();
            ++proof.times;
            const bool nearer = after && std::abs(*after - goal) < std::abs(*before - goal) &&
                                (*after - goal) * (*before - goal) >= 0;
            before = after;
            if (!nearer) break;
        }
        stateAgain(again, goal, proof);
    }

    void stateAgain(const RowsAgain& again, std::int64_t stated, RowsAgainProof& proof) const {
        const auto count = plainCount();
        if (count && *count != stated)
            proof.stated = StatedMismatch{again.statedPlace, stated, AffineForm(*count)};
    }

    // The row with its landmarks settled as they lie now.
    WrittenRow rowNow(std::size_t index, bool first) {
        const WrittenRow& row = pattern_.rows[index];
        if (!landmarks_) return row;
        const bool turned = pattern_.worked == Worked::Flat && side_ == Side::Right;
        side_ = first ? row.side : turned ? Side::Wrong : Side::Right;
        return settledRow(row, side_, *landmarks_);
    }

    void work(std::size_t index, bool first) {
        const WrittenRow now = rowNow(index, first);
        RowAttempt taken = chooser_.choose(index, now, reach_, next_);
        if (landmarks_ && !pattern_.marksElsewhere && taken.verdict == RowVerdict::Fits &&
            !landmarks_->trouble().empty()) {
            taken.verdict = RowVerdict::Uncountable;
            taken.counted.uncountable = landmarks_->trouble();
        }
        next_ += kVariablesPerRow;
        reach_ = after(reach_, taken);
        WrittenRowProof row;
        row.number = pattern_.rows[index].number;
        row.verdict = taken.verdict;
        row.after = reach_.needle.loops().value_or(AffineForm());
        row.before = reach_.needle.resolved(taken.counted.forms.takes);
        row.fit = std::move(taken.fit);
        row.counted = std::move(taken.counted);
        checkStated(pattern_.rows[index], row);
        const bool faulty = row.verdict != RowVerdict::Fits;
        const bool known =
            std::find(proof_.faulty.begin(), proof_.faulty.end(), index) != proof_.faulty.end();
        if (faulty && !known) proof_.faulty.push_back(index);
        // A row worked again keeps its first account unless only a later pass fails.
        if (first || (faulty && !known)) proof_.rows[index] = std::move(row);
        last_ = reach_.needle.loops();
    }

    void checkStated(const WrittenRow& written, WrittenRowProof& row) const {
        if (!written.statedCount || row.verdict != RowVerdict::Fits) return;
        const std::int64_t stated = written.statedCount->of(size_);
        if (row.after.isConstant() && row.after.constant() != stated) {
            row.stated = StatedMismatch{written.statedPlace, stated, row.after};
        }
    }

    bool closesOn(std::size_t index) const {
        if (!last_ || index >= proof_.rows.size()) return false;
        return *last_ == reach_.needle.resolved(proof_.rows[index].before);
    }

    void finish() {
        proof_.knittable = proof_.faulty.empty();
        if (pattern_.rows.empty()) return;
        if (proof_.knittable) {
            proof_.closes = closesOn(0);
            proof_.growth =
                last_.value_or(AffineForm()) - reach_.needle.resolved(proof_.rows.front().before);
        }
        if (!pattern_.repeatFrom) return;
        std::size_t from = 0;
        while (from + 1 < pattern_.rows.size() && pattern_.rows[from].number < *pattern_.repeatFrom)
            ++from;
        const bool chain = std::none_of(proof_.faulty.begin(), proof_.faulty.end(),
                                        [&](std::size_t i) { return i > from; });
        proof_.closesFrom = chain && closesOn(from);
    }

    const WrittenPattern& pattern_;
    std::size_t size_;
    ReadingChooser chooser_;
    WrittenProof proof_;
    NeedleReach reach_;
    std::optional<LandmarkFollower> landmarks_;  // where a stretch goes differently far each time
    Side side_ = Side::Right;
    std::optional<AffineForm> last_;
    std::size_t worked_ = 0;
    Variable next_ = kVariablesPerRow;
};

// Without a cast-on the first starred repeat says what the count must be: when it divides the
// loops only for some counts, those are the ones meant.
std::optional<CastOn> demandedCastOn(const WrittenProof& proof) {
    const WrittenRowProof* fault = proof.firstFault();
    if (!fault || !fault->fit.onlyWhen) return {};
    for (const WrittenRowProof& row : proof.rows) {
        const bool starred = std::any_of(row.counted.own.begin(), row.counted.own.end(),
                                         [](const OwnCount& own) { return own.starred; });
        if (&row == fault) break;
        if (starred) return {};
    }
    const AffineForm& first = proof.rows.front().counted.forms.takes;
    if (first.terms().size() != 1) return {};
    const auto [residue, modulus] = *fault->fit.onlyWhen;
    const std::int64_t coefficient = first.terms().front().coefficient;
    const std::int64_t multiple = coefficient * modulus;
    const std::int64_t plus = first.constant() + coefficient * residue;
    if (multiple > kMostRowLoops || plus > kMostRowLoops || plus < 0) return {};
    return CastOn{static_cast<int>(multiple), static_cast<int>(plus)};
}

// Each piece by itself: their accounts behind one another.
WrittenProof provePieces(const WrittenPattern& pattern, std::size_t size) {
    WrittenProof all;
    for (const WrittenPattern& piece : piecesOf(pattern)) {
        WrittenProof proof = proveWritten(piece, size);
        if (all.rows.empty()) {
            all.castOn = proof.castOn;
            all.countNames = std::move(proof.countNames);
        }
        all.knittable = all.knittable && proof.knittable;
        for (const std::size_t index : proof.faulty) all.faulty.push_back(all.rows.size() + index);
        std::move(proof.rows.begin(), proof.rows.end(), std::back_inserter(all.rows));
        std::move(proof.again.begin(), proof.again.end(), std::back_inserter(all.again));
    }
    return all;
}

// The rows that this size works, and nothing changed by the others.
WrittenProof proveOfSize(const WrittenPattern& pattern, std::size_t size) {
    WrittenProof proof = proveWritten(rowsOfSize(pattern, size), size);
    std::vector<WrittenRowProof> rows;
    std::vector<std::size_t> faulty;
    std::size_t own = 0;
    for (const WrittenRow& row : pattern.rows) {
        if (row.isFor(size)) {
            if (std::find(proof.faulty.begin(), proof.faulty.end(), own) != proof.faulty.end())
                faulty.push_back(rows.size());
            rows.push_back(std::move(proof.rows[own++]));
            continue;
        }
        WrittenRowProof left;
        left.number = row.number;
        if (!rows.empty()) left.before = left.after = rows.back().after;
        rows.push_back(std::move(left));
    }
    proof.rows = std::move(rows);
    proof.faulty = std::move(faulty);
    return proof;
}

}  // namespace

std::string WrittenProof::nameOf(Variable variable) const {
    if (variable == kCastOnCount) return "n";
    if (isNamedCount(variable)) return countNames[countIndex(variable)];
    for (const WrittenRowProof& row : rows) {
        const auto& own = row.counted.own;
        for (std::size_t i = 0; i < own.size(); ++i) {
            if (own[i].variable != variable) continue;
            return own.size() == 1 ? (castOn ? "m" : "n") : "m" + std::to_string(i + 1);
        }
    }
    return "m";
}

WrittenProof proveWritten(const WrittenPattern& pattern, std::size_t size) {
    if (!pattern.pieces.empty()) return provePieces(pattern, size);
    if (differsInRows(pattern)) return proveOfSize(pattern, size);
    Prover prover(pattern, size);
    if (pattern.castOn) return prover.run(pattern.castOn->of(size));
    WrittenProof proof = prover.run({});
    if (const auto castOn = demandedCastOn(proof)) return Prover(pattern, size).run(castOn);
    return proof;
}

}  // namespace lacewright
