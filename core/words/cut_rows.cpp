#include "core/words/cut_rows.h"

#include <algorithm>
#include <map>

namespace lacewright {

namespace {

constexpr Variable kBoxCount = -1;  // n of the chart, in place of all other counts

std::int64_t floorOf(std::int64_t a, std::int64_t b) {
    return a / b - (a % b != 0 && (a < 0) != (b < 0) ? 1 : 0);
}

// The counts of a proof, one after the other expressed in n alone.
class Counts {
 public:
    AffineForm inN(const AffineForm& form) {
        for (const auto& term : form.terms()) {
            if (!known_.contains(term.variable)) known_[term.variable] = AffineForm::of(kBoxCount);
        }
        return form.substituted([this](Variable v) { return &known_.at(v); });
    }

    // Gives a value to what the proof of one row left open.
    void settle(const WrittenRowProof& row) {
        if (row.verdict == RowVerdict::Fits) return;
        for (const OwnCount& own : row.counted.own) {
            if (known_.contains(own.variable) || own.takes <= 0) continue;
            AffineForm others = row.counted.forms.takes - AffineForm::of(own.variable, own.takes);
            // "to last 3 sts, k2" is worked up to the last 3, as it says.
            if (row.counted.wrongRest)
                others.add(row.counted.wrongRest->said - row.counted.wrongRest->follows);
            const AffineForm room = inN(row.fit.available) - inN(others);
            const bool grows = room.coefficient(kBoxCount) > 0;
            AffineForm times(std::max<std::int64_t>(0, floorOf(room.constant(), own.takes)));
            const std::int64_t each = floorOf(room.coefficient(kBoxCount), own.takes);
            times.add(kBoxCount, grows ? std::max<std::int64_t>(1, each) : 0);
            known_[own.variable] = times;
        }
    }

 private:
    std::map<Variable, AffineForm> known_;
};

class Cutter {
 public:
    Cutter(const WrittenPattern& pattern, const WrittenProof& proof, std::size_t size)
        : pattern_(pattern), proof_(proof), size_(size) {}

    Result<std::optional<CutRows>> run() {
        for (std::size_t i = 0; i < pattern_.rows.size(); ++i) {
            Result<WorkedRow> row = workedRow(pattern_, pattern_.rows[i], proof_.rows[i], size_);
            if (!row) return row.error();
            counts_.settle(proof_.rows[i]);
            for (RowPart& part : row->parts) {
                part.times = counts_.inN(part.times);
                if (!noteShift(part)) return std::optional<CutRows>();
            }
            worked_.push_back(std::move(*row));
        }
        for (const WorkedRow& row : worked_) {
            if (!cut(row)) return std::optional<CutRows>();
        }
        return std::optional(std::move(cut_));
    }

 private:
    // False when the part shrinks as n grows.
    bool noteShift(const RowPart& part) {
        const std::int64_t each = part.times.coefficient(kBoxCount);
        if (each < 0) return false;
        if (each > 0)
            cut_.shift = std::max(cut_.shift, floorOf(-part.times.constant() + each - 1, each));
        return true;
    }

    static void add(std::vector<RowStitch>& to, const std::vector<RowStitch>& stitches,
                    std::int64_t times) {
        for (std::int64_t i = 0; i < times && to.size() < kMostRowStitches; ++i)
            to.insert(to.end(), stitches.begin(), stitches.end());
    }

    bool cut(const WorkedRow& worked) {
        BoxRow row;
        for (const RowPart& part : worked.parts) {
            const std::int64_t each = part.times.coefficient(kBoxCount);
            const std::int64_t fixed = part.times.constant() + each * cut_.shift;
            auto& beside = row.box.empty() ? row.before : row.after;
            add(beside, part.stitches, fixed);
            if (each == 0) continue;
            if (!row.box.empty()) return false;
            add(row.box, part.stitches, each);
            row.starred = part.starred;
            cut_.box = true;
        }
        if (worked.side == Side::Wrong) {
            std::swap(row.before, row.after);
            for (auto* stitches : {&row.before, &row.box, &row.after})
                std::reverse(stitches->begin(), stitches->end());
        }
        cut_.rows.push_back(std::move(row));
        return true;
    }

    const WrittenPattern& pattern_;
    const WrittenProof& proof_;
    std::size_t size_;
    Counts counts_;
    std::vector<WorkedRow> worked_;
    CutRows cut_;
};

}  // namespace

Result<std::optional<CutRows>> cutRows(const WrittenPattern& pattern, const WrittenProof& proof,
                                       std::size_t size) {
    return Cutter(pattern, proof, size).run();
}

}  // namespace lacewright
