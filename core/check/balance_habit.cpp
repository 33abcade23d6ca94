#include "core/check/balance_habit.h"

#include <cmath>

#include "core/count/tally.h"

namespace lacewright {
BalanceHabit::BalanceHabit(const Chart& chart, const Links& links) {
    double seen = kRowsSeenBefore;
    double balanced = kBalancedBefore;
    for (const PathBand& band : pathBands(chart, nullptr)) {
        for (int row = band.firstRow; row <= band.lastRow; ++row) {
            const AffineForm net = formsOf(chart.row(row), band.path).net();
            std::vector<int>& nets = nets_.emplace_back();
            nets.push_back(static_cast<int>(net.constant()));
            for (Variable repeat = 0; repeat < static_cast<Variable>(chart.repeats.size());
                 ++repeat)
                nets.push_back(static_cast<int>(net.coefficient(repeat)));
            const auto r = static_cast<std::size_t>(row);
            const bool fits =
                links.rows[r].fits() && (r + 1 == links.rows.size() || links.rows[r + 1].fits());
            if (!fits || !chart.row(row).traits().hasShaping) continue;
            ++seen;
            balanced += net == AffineForm() ? 1 : 0;
        }
    }
    balanced_ = std::log(balanced / (seen - balanced));
}

double BalanceHabit::odds(int row, int group, const GroupMove& move) const {
    const int net = nets_[static_cast<std::size_t>(row)][static_cast<std::size_t>(group + 1)];
    const int after = net + move.makes - move.takes;
    return balanced_ * ((after == 0 ? 1 : 0) - (net == 0 ? 1 : 0));
}

double BalanceHabit::odds(int row, const GroupMoves& moves) const {
    double sum = 0;
    for (const auto& [group, move] : moves) sum += odds(row, group, move);
    return sum;
}

}  // namespace lacewright
