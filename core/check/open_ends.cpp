#include "core/check/open_ends.h"

#include <algorithm>

#include "core/count/path.h"

namespace lacewright {
namespace {

constexpr int kMostMore = 6;  // loops that one cell may take more

AffineForm formOf(int group, int loops) {
    return group == kOutsideRepeats ? AffineForm(loops)
                                    : AffineForm::of(static_cast<Variable>(group), loops);
}

}  // namespace

OpenEnds::OpenEnds(const Chart& chart, const Links& links)
    : lastRow_(chart.height() - 1), untold_(!chart.rowRepeat) {
    if (chart.castOn) start_ = Needle(*chart.castOn, static_cast<Variable>(chart.repeats.size()));
    takes_ = formsOf(chart.row(0), pathOn(chart, 0, nullptr)).takes;
    closing_ = takes_ - formsOf(chart.row(lastRow_), pathOn(chart, lastRow_, nullptr)).makes;
    below_ = !links.closing || links.closingRow != 0;
    above_ = !links.closing || links.closing->below != lastRow_;
    for (int group = kOutsideRepeats; below_ && group < static_cast<int>(chart.repeats.size());
         ++group) {
        for (int more = -kMostMore; more <= kMostMore; ++more)
            known_[{group, more}] = mayTake({{group, {more, 0}}});
    }
}

bool OpenEnds::mayTake(const GroupMoves& moves) const {
    AffineForm takes = takes_;
    for (const auto& [group, move] : moves) takes = takes + formOf(group, move.takes);
    return takes == takes_ || start_.fit(takes).fits();
}

bool OpenEnds::reach(int row) const {
    return (row == 0 && below_) || (row == lastRow_ && above_);
}

bool OpenEnds::allow(int row, int group, const GroupMove& move) const {
    if (move.makes != 0 && !leaveMakes(row)) return false;
    if (move.takes == 0) return true;
    const auto known = known_.find({group, move.takes});
    return row == 0 && known != known_.end() && known->second;
}

bool OpenEnds::allow(int row, const GroupMoves& moves, const GroupMoves& wanted) const {
    if (moves == wanted) return true;
    if (!reach(row)) return false;
    if (wanted.empty() && moves.size() == 1)
        return allow(row, moves.begin()->first, moves.begin()->second);
    const auto differIn = [&](int GroupMove::*count) {
        const auto differs = [&](const GroupMoves& some, const GroupMoves& others) {
            return std::any_of(some.begin(), some.end(), [&](const auto& move) {
                const auto other = others.find(move.first);
                return move.second.*count != (other == others.end() ? 0 : other->second.*count);
            });
        };
        return differs(moves, wanted) || differs(wanted, moves);
    };
    return (leaveMakes(row) || !differIn(&GroupMove::makes)) &&
           ((row == 0 && below_ && mayTake(moves)) || !differIn(&GroupMove::takes));
}

double OpenEnds::closingOdds(int row, const GroupMoves& moves) const {
    if (!untold_ || !reach(row)) return 0;
    AffineForm after = closing_;
    for (const auto& [group, move] : moves) {
        if (row == 0) after = after + formOf(group, move.takes);
        if (row == lastRow_) after = after - formOf(group, move.makes);
    }
    const auto closes = [](const AffineForm& form) { return form == AffineForm(0) ? 1 : 0; };
    return kCloses * (closes(after) - closes(closing_));
}

}  // namespace lacewright
