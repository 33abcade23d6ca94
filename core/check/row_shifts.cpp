#include "core/check/row_shifts.h"

#include <algorithm>
#include <cmath>

#include "core/check/row_mirror.h"
#include "core/check/slips.h"

namespace lacewright {
namespace {

using Cells = std::vector<StitchIndex>;

constexpr double kShapingLost = 6.0;  // log odds against pushing shaping out of the chart
constexpr double kTextureLost = 2.0;  // the same of any other stitch that no cell has unasked
constexpr std::size_t kShiftsKept = 40;
constexpr std::size_t kMapsAtFirst = 6;

class ShiftSearch {
 public:
    ShiftSearch(const Chart& chart, int rowIndex, const Beliefs& beliefs, const RowBeliefs& row,
                const std::vector<int>& groups, const GroupMoves& wanted, const OpenEnds& ends)
        : chart_(chart),
          rowIndex_(rowIndex),
          beliefs_(beliefs),
          alphabet_(beliefs.alphabet()),
          row_(row),
          groups_(groups),
          wanted_(wanted),
          ends_(ends),
          mirror_(*chart.stitches, alphabet_, groups),
          drawn_(chart.row(rowIndex).cells()),
          asDrawn_(beliefs.weightOf(row, lettersOf(drawn_))),
          atFirst_(beliefs.weightOf(row, lettersOf(drawn_), kMapsAtFirst)) {
        for (const auto& [group, move] : wanted) {
            inAll_.takes += move.takes;
            inAll_.makes += move.makes;
        }
    }

    std::vector<RowShift> search() {
        for (std::size_t x = 0; x < drawn_.size(); ++x) {
            for (const std::size_t end : endsOfShift(x)) {
                putInAt(x, end);
                takeOutAt(x, end);
            }
        }
        return likeliest();
    }

 private:
    Alphabet::Letter letterOf(StitchIndex stitch) const {
        return alphabet_.letterIn(rowIndex_, stitch);
    }
    std::vector<Alphabet::Letter> lettersOf(const Cells& cells) const {
        std::vector<Alphabet::Letter> letters;
        letters.reserve(cells.size());
        for (const StitchIndex index : cells) letters.push_back(letterOf(index));
        return letters;
    }
    bool isShaping(StitchIndex stitch) const {
        const auto letter = letterOf(stitch);
        return letter >= 0 && alphabet_.kinds[Alphabet::placeOf(letter)] == LetterKind::Shaping;
    }
    // What an empty cell of a new row holds.
    bool isBlank(StitchIndex stitch) const {
        return isGap(stitch) || (*chart_.stitches)[stitch].id == "k";
    }
    // A matter of drawing: gaps are neither left out nor drawn twice.
    bool isGap(StitchIndex stitch) const {
        return alphabet_.noStitch != Alphabet::kNone && letterOf(stitch) == alphabet_.noStitch;
    }
    // Put in or taken out one column before, it would give the same row.
    bool likeTheOneBefore(std::size_t x, StitchIndex stitch) const {
        return x > 0 && drawn_[x - 1] == stitch;
    }

    // Where cells that move from column index `x` on may come to rest: in a gap, at the end of the
    // repeat, at the end of the row.
    std::vector<std::size_t> endsOfShift(std::size_t x) const {
        std::size_t ofGroup = x;
        while (ofGroup + 1 < drawn_.size() && groups_[ofGroup + 1] == groups_[x]) ++ofGroup;
        std::vector<std::size_t> ends{drawn_.size() - 1};
        if (ofGroup != ends[0]) ends.push_back(ofGroup);
        for (std::size_t gap = x + 1; gap <= ofGroup; ++gap) {
            if (!isGap(drawn_[gap])) continue;
            if (std::find(ends.begin(), ends.end(), gap) == ends.end()) ends.push_back(gap);
            break;
        }
        return ends;
    }

    void putInAt(std::size_t x, std::size_t end) {
        const double pushedOut = isShaping(drawn_[end]) ? -kShapingLost
                                 : isBlank(drawn_[end]) ? 0
                                                        : -kTextureLost;
        for (const StitchIndex stitch : alphabet_.stitches) {
            if (isGap(stitch) || likeTheOneBefore(x, stitch) || !mayFit(stitch, drawn_[end]))
                continue;
            Cells after = drawn_;
            std::rotate(cell(after, x), cell(after, end), cell(after, end + 1));
            after[x] = stitch;
            consider(std::move(after), true, x, stitch,
                     pushedOut + logOfAnyShift(alphabet_.size()) +
                         std::log(slipsIn(alphabet_, letterOf(stitch))));
        }
    }

    void takeOutAt(std::size_t x, std::size_t end) {
        if (isGap(drawn_[x]) || likeTheOneBefore(x, drawn_[x])) return;
        const bool twice = x + 1 < drawn_.size() && drawn_[x + 1] == drawn_[x];
        const double log = std::log(kDrawnTwice * slipsIn(alphabet_, letterOf(drawn_[x])) *
                                    (twice ? 1 : kUnlikeNeighbour));
        for (const StitchIndex filler : alphabet_.stitches) {
            if (!mayFit(filler, drawn_[x])) continue;
            Cells after = drawn_;
            std::rotate(cell(after, x), cell(after, x + 1), cell(after, end + 1));
            after[end] = filler;
            consider(std::move(after), false, x, drawn_[x], log);
        }
    }

    static Cells::iterator cell(Cells& cells, std::size_t x) {
        return cells.begin() + static_cast<std::ptrdiff_t>(x);
    }

    GroupMove differenceOf(StitchIndex coming, StitchIndex going) const {
        const Stitch& after = (*chart_.stitches)[coming];
        const Stitch& before = (*chart_.stitches)[going];
        return {after.takes - before.takes, after.makes - before.makes};
    }
    // Without looking at groups.
    bool mayFit(StitchIndex coming, StitchIndex going) const {
        return ends_.reach(rowIndex_) || differenceOf(coming, going) == inAll_;
    }

    void consider(Cells after, bool putIn, std::size_t x, StitchIndex stitch, double log) {
        const bool known = std::any_of(shifts_.begin(), shifts_.end(),
                                       [&](const RowShift& s) { return s.after == after; });
        if (after == drawn_ || known) return;
        GroupMoves moves;
        std::size_t changed = 0;
        std::size_t last = 0;
        for (std::size_t i = 0; i < after.size(); ++i) {
            if (after[i] == drawn_[i]) continue;
            ++changed;
            last = i;
            const GroupMove difference = differenceOf(after[i], drawn_[i]);
            GroupMove& move = moves[groups_[i]];
            move.takes += difference.takes;
            move.makes += difference.makes;
        }
        std::erase_if(moves, [](const auto& move) { return move.second == GroupMove{}; });
        if (!ends_.allow(rowIndex_, moves, wanted_)) return;
        log += beliefs_.weightOf(row_, lettersOf(after), kMapsAtFirst) - atFirst_;
        const std::size_t place = changed == 1 ? last : x;
        shifts_.push_back({putIn, static_cast<int>(place) + 1, stitch, std::move(after),
                           std::move(moves), changed > 1, log});
    }

    // The likeliest by a few symmetries are judged by all of them.
    std::vector<RowShift> likeliest() {
        const double mirrored = mirror_.odds(drawn_);
        for (RowShift& shift : shifts_) shift.logOdds += mirror_.odds(shift.after) - mirrored;
        const auto likelier = [](const auto& a, const auto& b) { return a.logOdds > b.logOdds; };
        std::stable_sort(shifts_.begin(), shifts_.end(), likelier);
        if (shifts_.size() > kShiftsKept) shifts_.resize(kShiftsKept);
        for (RowShift& shift : shifts_) {
            const auto after = lettersOf(shift.after);
            shift.logOdds += (beliefs_.weightOf(row_, after) - asDrawn_) -
                             (beliefs_.weightOf(row_, after, kMapsAtFirst) - atFirst_);
        }
        std::stable_sort(shifts_.begin(), shifts_.end(), likelier);
        return std::move(shifts_);
    }

    const Chart& chart_;
    int rowIndex_;
    const Beliefs& beliefs_;
    const Alphabet& alphabet_;
    const RowBeliefs& row_;
    const std::vector<int>& groups_;
    const GroupMoves& wanted_;
    const OpenEnds& ends_;
    RowMirror mirror_;
    const Cells& drawn_;
    double asDrawn_;
    double atFirst_;
    GroupMove inAll_;
    std::vector<RowShift> shifts_;
};

}  // namespace

std::vector<RowShift> shiftsOf(const Chart& chart, int rowIndex, const Beliefs& beliefs,
                               const RowBeliefs& row, const std::vector<int>& groups,
                               const GroupMoves& wanted, const OpenEnds& ends) {
    return ShiftSearch(chart, rowIndex, beliefs, row, groups, wanted, ends).search();
}

double logOfAnyShift(int letters) {
    return std::log(kLeftOut / letters);
}

}  // namespace lacewright
