#include "core/words/prove.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr Variable kCastOnCount = 0;
constexpr Variable kVariablesPerRow = 100;       // each row worked brings up to so many of its own
constexpr std::int64_t kMostLoops = 10'000'000;  // on the needle, in any part of the form
constexpr std::size_t kMostWorked = 4000;        // rows, repeats of rows included

bool tooLarge(const AffineForm& form) {
    return std::abs(form.constant()) > kMostLoops ||
           std::any_of(form.terms().begin(), form.terms().end(), [](const AffineForm::Term& t) {
               return std::abs(t.coefficient) > kMostLoops;
           });
}

// A reading of a row held against the needle.
struct Attempt {
    CountedRow counted;
    Fit fit;
    RowVerdict verdict = RowVerdict::Fits;

    bool fits() const { return verdict == RowVerdict::Fits; }
};

Attempt attempt(const Needle& needle, CountedRow counted) {
    Attempt result;
    if (!counted.uncountable.empty()) {
        result.verdict = RowVerdict::Uncountable;
    } else {
        result.fit = needle.fit(counted.forms.takes, counted.demands);
        if (counted.wrongRest) {
            result.verdict = RowVerdict::WrongRest;
        } else if (!result.fit.fits()) {
            result.verdict = RowVerdict::Misfits;
        }
        if (!result.fits()) result.fit.solved.clear();
    }
    result.counted = std::move(counted);
    return result;
}

std::vector<Attempt> attempts(const Needle& needle, const WrittenRow& row, std::size_t size,
                              Variable first) {
    std::vector<Attempt> all;
    for (CountedRow& counted : countedReadings(row, size, first)) {
        all.push_back(attempt(needle, std::move(counted)));
    }
    return all;
}

// Puts what the row makes on the needle; a row that cannot be counted leaves nothing known.
void workOn(Needle& needle, Attempt& attempt) {
    if (attempt.verdict != RowVerdict::Uncountable) {
        needle.work(attempt.counted.forms, attempt.fit);
        if (needle.loops() && tooLarge(*needle.loops())) {
            attempt.counted.uncountable =
                "there are more than " + std::to_string(kMostLoops) + " loops on the needle";
            attempt.verdict = RowVerdict::Uncountable;
        }
    }
    if (attempt.verdict == RowVerdict::Uncountable) needle = Needle();
}

class Prover {
 public:
    Prover(const WrittenPattern& pattern, std::size_t size) : pattern_(pattern), size_(size) {}

    WrittenProof run(const std::optional<CastOn>& castOn) {
        proof_ = {};
        proof_.castOn = castOn;
        proof_.rows.resize(pattern_.rows.size());
        needle_ = castOn ? Needle(*castOn, kCastOnCount) : Needle();
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
        if (!needle_.loops() || !needle_.loops()->isConstant()) return {};
        return needle_.loops()->constant();
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

    // Chooses the reading that fits; of several the one that the stated count and then the next row
    // agree with.
    Attempt choose(std::size_t index) const {
        const WrittenRow& row = pattern_.rows[index];
        std::vector<Attempt> all = attempts(needle_, row, size_, next_);
        std::vector<std::size_t> good;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (all[i].fits()) good.push_back(i);
        }
        const auto keep = [&](auto test) {
            if (good.size() <= 1) return;
            std::vector<std::size_t> kept;
            std::copy_if(good.begin(), good.end(), std::back_inserter(kept), [&](std::size_t i) {
                Needle after = needle_;
                workOn(after, all[i]);
                return test(after);
            });
            if (!kept.empty()) good = std::move(kept);
        };
        keep([&](const Needle& after) {
            return !row.statedCount || !after.loops() || !after.loops()->isConstant() ||
                   after.loops()->constant() == row.statedCount->of(size_);
        });
        if (index + 1 < pattern_.rows.size()) {
            keep([&](const Needle& after) {
                const auto next =
                    attempts(after, pattern_.rows[index + 1], size_, next_ + kVariablesPerRow);
                return std::any_of(next.begin(), next.end(),
                                   [](const Attempt& n) { return n.fits(); });
            });
        }
        return std::move(all[good.empty() ? 0 : good.front()]);
    }

    void work(std::size_t index, bool first) {
        Attempt taken = choose(index);
        next_ += kVariablesPerRow;
        workOn(needle_, taken);
        WrittenRowProof row;
        row.number = pattern_.rows[index].number;
        row.verdict = taken.verdict;
        row.after = needle_.loops().value_or(AffineForm());
        row.before = needle_.resolved(taken.counted.forms.takes);
        row.fit = std::move(taken.fit);
        row.counted = std::move(taken.counted);
        checkStated(pattern_.rows[index], row);
        const bool faulty = row.verdict != RowVerdict::Fits;
        const bool known =
            std::find(proof_.faulty.begin(), proof_.faulty.end(), index) != proof_.faulty.end();
        if (faulty && !known) proof_.faulty.push_back(index);
        // A row worked again keeps its first account unless only a later pass fails.
        if (first || (faulty && !known)) proof_.rows[index] = std::move(row);
        last_ = needle_.loops();
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
        return *last_ == needle_.resolved(proof_.rows[index].before);
    }

    void finish() {
        proof_.knittable = proof_.faulty.empty();
        if (pattern_.rows.empty()) return;
        if (proof_.knittable) {
            proof_.closes = closesOn(0);
            proof_.growth =
                last_.value_or(AffineForm()) - needle_.resolved(proof_.rows.front().before);
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
    WrittenProof proof_;
    Needle needle_;
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

}  // namespace

std::string WrittenProof::nameOf(Variable variable) const {
    if (variable == kCastOnCount) return "n";
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
    Prover prover(pattern, size);
    if (pattern.castOn) return prover.run(pattern.castOn->of(size));
    WrittenProof proof = prover.run({});
    if (const auto castOn = demandedCastOn(proof)) return Prover(pattern, size).run(castOn);
    return proof;
}

}  // namespace lacewright
