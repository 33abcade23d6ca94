#include "core/check/survey.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace lacewright {

PathTable::PathTable(const Chart& chart, const Size* size) : bands_(pathBands(chart, size)) {
    bandOf_.reserve(static_cast<std::size_t>(chart.height()));
    for (std::size_t i = 0; i < bands_.size(); ++i) {
        for (int row = bands_[i].firstRow; row <= bands_[i].lastRow; ++row) bandOf_.push_back(i);
    }
}

SizeSurvey::SizeSurvey(const Chart& chart, const Size& which)
    : size(which),
      times(timesOf(chart, which)),
      paths(chart, &which),
      counts(static_cast<std::size_t>(chart.height())) {
    for (auto& n : times) n = n.value_or(1);
}

Survey::Survey(const Chart& chart)
    : chart_(chart), whole_(chart, nullptr), forms_(static_cast<std::size_t>(chart.height())) {
    sizes_.reserve(chart.sizes.size());
    for (const Size& size : chart.sizes) sizes_.emplace_back(chart, size);
    for (int row = 0; row < height(); ++row) count(row);
    for (int row = 0; row < height(); ++row) {
        if (!simplyFits(row)) measure(row);
    }
}

void Survey::count(int row) {
    const auto r = static_cast<std::size_t>(row);
    forms_[r] = formsOf(chart_.row(row), whole_.path(row));
    for (SizeSurvey& s : sizes_) {
        const RowForms forms = formsOf(chart_, row, s.size, s.paths.path(row), s.times);
        s.counts[r] = {forms.takes.constant(), forms.makes.constant()};
    }
}

bool Survey::simplyFits(int row) const {
    const auto r = static_cast<std::size_t>(row);
    return row > 0 && forms_[r].takes == forms_[r - 1].makes && whole_.sameBand(row, row - 1);
}

Needle Survey::needleBefore(int row) const {
    const auto next = steps_.lower_bound(row);
    Needle needle;
    if (next == steps_.begin()) {
        if (chart_.castOn && row == 0) return Needle(*chart_.castOn, kCastOnVariable);
    } else {
        needle = std::prev(next)->second.after;
    }
    if (row > 0) needle.hold(forms_[static_cast<std::size_t>(row) - 1].makes);
    return needle;
}

void Survey::measure(int row) {
    Needle needle = needleBefore(row);
    const RowForms& forms = forms_[static_cast<std::size_t>(row)];
    Fit fit = needle.fit(forms.takes);
    needle.work(forms, fit);
    for (const Segment& segment : whole_.path(row)) {
        if (segment.isBox()) needle.meet(segment.repeat);
    }
    steps_.insert_or_assign(row, Step{std::move(fit), std::move(needle)});
}

std::vector<int> Survey::refresh(const Chart& chart) {
    std::set<int> due;
    const auto changed = [&](std::size_t index) {
        const int row = static_cast<int>(index);
        due.insert(row);
        if (row + 1 < height()) due.insert(row + 1);
    };
    const RowList before = std::exchange(chart_.rows, chart.rows);
    chart_.stitches = chart.stitches;  // an equal catalogue, that the rows may have been made with
    chart_.rows.forEachDifference(before, [&](std::size_t row) {
        changed(row);
        count(static_cast<int>(row));
    });
    std::vector<int> affected;
    bool spread = false;
    while (!due.empty()) {
        const int row = *due.begin();
        due.erase(due.begin());
        affected.push_back(row);
        if (remeasure(row) || spread) continue;
        // The solved counts differ from here on, so every later measurement is stale.
        spread = true;
        for (auto step = steps_.upper_bound(row); step != steps_.end(); ++step)
            due.insert(step->first);
    }
    return affected;
}

bool Survey::remeasure(int row) {
    const auto known = steps_.find(row);
    std::optional<Needle> before;
    if (known != steps_.end()) before = std::move(known->second.after);
    if (simplyFits(row)) {
        if (known != steps_.end()) steps_.erase(known);
        return !before.has_value();
    }
    measure(row);
    return before && before->sameCounts(steps_.at(row).after);
}

const Fit* Survey::fit(int row) const {
    const auto step = steps_.find(row);
    return step == steps_.end() ? nullptr : &step->second.fit;
}

const Fit* Survey::misfit(int row) const {
    const Fit* found = fit(row);
    return found != nullptr && !found->fits() ? found : nullptr;
}

bool Survey::anyMisfit() const {
    return std::any_of(steps_.begin(), steps_.end(),
                       [](const auto& step) { return !step.second.fit.fits(); });
}

bool fixesTimes(Variable variable, const AffineForm& solved) {
    return variable < kCastOnVariable && solved.isConstant();
}

bool fixesTimes(const AffineForm& tie) {
    const auto& terms = tie.terms();
    return std::all_of(terms.begin(), terms.end(), [&](const AffineForm::Term& term) {
        return term.variable < kCastOnVariable &&
               (term.coefficient < 0) == (terms.front().coefficient < 0);
    });
}

bool Survey::anyTimes() const {
    return std::none_of(steps_.begin(), steps_.end(), [](const auto& step) {
        const auto& [solved, ties] = std::tie(step.second.fit.solved, step.second.fit.ties);
        return std::any_of(
                   solved.begin(), solved.end(),
                   [](const auto& count) { return fixesTimes(count.first, count.second); }) ||
               std::any_of(ties.begin(), ties.end(),
                           [](const AffineForm& tie) { return fixesTimes(tie); });
    });
}

Needle Survey::needleAtEnd() const {
    return needleBefore(height());
}

}  // namespace lacewright
