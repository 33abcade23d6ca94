#include "core/words/box_counts.h"

#include <algorithm>

namespace lacewright {

namespace {

std::int64_t floorOf(std::int64_t a, std::int64_t b) {
    return a / b - (a % b != 0 && (a < 0) != (b < 0) ? 1 : 0);
}

}  // namespace

AffineForm BoxCounts::inBoxes(const AffineForm& form) {
    for (const auto& term : form.terms()) {
        if (!isBox(term.variable))
            known_.try_emplace(term.variable, named_ ? AffineForm(1) : AffineForm::of(kBoxCount));
    }
    return form.substituted([this](Variable v) {
        const auto at = known_.find(v);
        return at == known_.end() ? nullptr : &at->second;
    });
}

void BoxCounts::settle(const WrittenRowProof& row) {
    if (row.verdict == RowVerdict::Fits) return;
    for (const OwnCount& own : row.counted.own) {
        if (isBox(own.variable) || known_.contains(own.variable) || own.takes <= 0) continue;
        AffineForm others = row.counted.forms.takes - AffineForm::of(own.variable, own.takes);
        // "to last 3 sts, k2" is worked up to the last 3, as it says.
        if (row.counted.wrongRest)
            others.add(row.counted.wrongRest->said - row.counted.wrongRest->follows);
        const AffineForm room = inBoxes(row.fit.available) - inBoxes(others);
        const bool grows = std::any_of(room.terms().begin(), room.terms().end(),
                                       [](const auto& term) { return term.coefficient > 0; });
        const std::int64_t fixed = floorOf(room.constant(), own.takes);
        AffineForm times(grows ? fixed : std::max<std::int64_t>(0, fixed));
        for (const auto& term : room.terms()) {
            const std::int64_t each = floorOf(term.coefficient, own.takes);
            times.add(term.variable, grows && !named_ ? std::max<std::int64_t>(1, each)
                                                      : std::max<std::int64_t>(0, each));
        }
        known_[own.variable] = times;
    }
}

}  // namespace lacewright
