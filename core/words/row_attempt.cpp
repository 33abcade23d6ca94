#include "core/words/row_attempt.h"

#include <algorithm>

#include "core/words/turned_row.h"

namespace lacewright {

namespace {

constexpr std::int64_t kMostLoops = 10'000'000;  // on the needle, in any part of the form

bool tooLarge(const AffineForm& form) {
    return std::abs(form.constant()) > kMostLoops ||
           std::any_of(form.terms().begin(), form.terms().end(), [](const AffineForm::Term& t) {
               return std::abs(t.coefficient) > kMostLoops;
           });
}

bool dropsOvers(const WrittenRow& row) {
    return std::any_of(row.elements.begin(), row.elements.end(), [](const Element& e) {
        const auto* aside = std::get_if<Aside>(&e.what);
        return aside != nullptr && aside->term == kDropsOvers;
    });
}

}  // namespace

bool isWorkedThrough(const WrittenRow& row) {
    return !dropsOvers(row) && !turnsSomewhere(row);
}

RowAttempt rowAttempt(const Needle& needle, CountedRow counted) {
    RowAttempt result;
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

void workOn(Needle& needle, RowAttempt& attempt) {
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

NeedleReach after(const NeedleReach& reach, RowAttempt attempt) {
    NeedleReach next = reach;
    workOn(next.needle, attempt);
    next.waiting = attempt.fits() ? attempt.counted.left : AffineForm();
    next.overs = {next.needle.resolved(attempt.counted.overs.all),
                  next.needle.resolved(attempt.counted.overs.extra)};
    return next;
}

std::vector<CountedRow> readingsThere(const WrittenRow& row, std::size_t size,
                                      Variable firstVariable, const NeedleReach& reach,
                                      Worked worked) {
    std::vector<CountedRow> all =
        readingsOver(row, size, firstVariable, reach.needle, reach.waiting, worked);
    if (!dropsOvers(row) || reach.overs.all == AffineForm()) return all;
    // What falls takes loops and makes none: all that the yarn overs made, or only what is beyond a
    // stitch for each of them.
    std::vector<CountedRow> dropping;
    for (const AffineForm* loops : {&reach.overs.all, &reach.overs.extra}) {
        for (CountedRow counted : all) {
            counted.forms.takes.add(*loops);
            counted.dropsOvers = true;
            dropping.push_back(std::move(counted));
        }
    }
    return dropping;
}

}  // namespace lacewright
