#include "core/check/assembly.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/check/fold.h"

namespace lacewright {

Assembly::Assembly(int height, std::vector<Finding>& together)
    : places_(static_cast<std::size_t>(height) + 1), together_(together) {}

void Assembly::setRow(int row, std::vector<Finding> findings) {
    if (place(row).ofRow == findings) return;
    place(row).ofRow = std::move(findings);
    due_.insert(row);
}

void Assembly::setChart(const Chart& chart, std::vector<Finding> findings) {
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.row < b.row; });
    if (findings == ofChart_) return;
    ofChart_ = std::move(findings);
    auto next = ofChart_.begin();
    for (int row = 0; row <= chart.height(); ++row) {
        const auto end = std::find_if(next, ofChart_.end(), [&](const Finding& f) {
            return row < chart.height() && f.row > chart.rowNumber(row);
        });
        if (next != end || !place(row).ofChart.empty()) due_.insert(row);
        place(row).ofChart.assign(next, end);
        next = end;
    }
}

Assembly::Link Assembly::linkOf(const Survey& survey, int row) const {
    if (row < 1 || place(row).ofRow.empty()) return Link::None;
    const std::vector<Finding>& below = place(row - 1).ofRow;
    if (below.empty()) return Link::None;
    if (sameCauseAsBelow(survey, row)) return Link::Follows;
    const auto cut = std::find_if(below.begin(), below.end(), isCut);
    if (cut == below.end()) return Link::None;
    const bool forEveryone =
        std::any_of(cut, below.end(), [](const Finding& f) { return isCut(f) && f.sizes.empty(); });
    return forEveryone ? Link::Follows : Link::Cuts;
}

bool Assembly::isLinked(int row) const {
    return place(row).link != Link::None;
}

void Assembly::relink(const Survey& survey, const std::vector<int>& rows) {
    // Whether a row hangs on the one below depends on the counts of three rows.
    for (const int changed : rows) {
        for (int row = changed; row < std::min(changed + 3, survey.height()); ++row) {
            const Link link = linkOf(survey, row);
            if (place(row).link == link) continue;
            place(row).link = link;
            due_.insert({row - 1, row});  // what is folded into the row below changes it too
        }
    }
}

void Assembly::update() {
    const int end = static_cast<int>(places_.size());
    std::size_t at = 0;
    int row = 0;
    while (!due_.empty()) {
        int first = *due_.begin();
        int last = first;
        while (isLinked(first)) --first;
        while (last + 1 < end && isLinked(last + 1)) ++last;
        due_.erase(due_.begin(), due_.upper_bound(last));
        for (; row < first; ++row) at += place(row).size;
        for (std::vector<Finding>& findings : folded(first, last)) {
            putAt(at, row, std::move(findings));
            at += place(row++).size;
        }
    }
}

// The findings of rows `first` to `last`, which hang together and on no other row.
std::vector<std::vector<Finding>> Assembly::folded(int first, int last) const {
    std::vector<std::vector<Finding>> all;
    for (int row = first; row <= last; ++row) {
        std::vector<Finding> own = place(row).ofRow;
        foldWithinRow(own);
        if (row > first) {
            foldUnderCutsBelow(all.back(), own);
            if (place(row).link == Link::Follows) foldUnderRowBelow(all.back(), own);
        }
        all.push_back(std::move(own));
    }
    for (int row = first; row <= last; ++row) {
        const std::vector<Finding>& ofChart = place(row).ofChart;
        auto& findings = all[static_cast<std::size_t>(row - first)];
        findings.insert(findings.begin(), ofChart.begin(), ofChart.end());
    }
    return all;
}

// Puts a row's findings in the place of those it had, which begin at `at`.
void Assembly::putAt(std::size_t at, int row, std::vector<Finding> findings) {
    const std::size_t had = std::exchange(place(row).size, findings.size());
    const std::size_t common = std::min(had, findings.size());
    const auto begin = together_.begin() + static_cast<std::ptrdiff_t>(at);
    const auto rest =
        std::move(findings.begin(), findings.begin() + static_cast<std::ptrdiff_t>(common), begin);
    if (had > common) {
        together_.erase(rest, begin + static_cast<std::ptrdiff_t>(had));
    } else {
        together_.insert(
            rest, std::make_move_iterator(findings.begin() + static_cast<std::ptrdiff_t>(common)),
            std::make_move_iterator(findings.end()));
    }
}

}  // namespace lacewright
