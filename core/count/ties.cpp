#include "core/count/ties.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>
#include <set>
#include <utility>

namespace lacewright {
namespace {

constexpr std::size_t kMostTies = 2;
constexpr std::int64_t kMostLoops = 10'000;  // in any part of a tie
constexpr std::int64_t kMostTimes = 60;      // that a tie is added to make a form divisible
constexpr std::int64_t kMostMore = 400;      // of all counts together beyond the smallest
constexpr std::int64_t kMostTried = 50'000;  // sets of counts, for an example

bool isSmall(const AffineForm& form) {
    return std::abs(form.constant()) <= kMostLoops &&
           std::all_of(form.terms().begin(), form.terms().end(),
                       [](const auto& term) { return std::abs(term.coefficient) <= kMostLoops; });
}

bool allDivisible(const AffineForm& form, std::int64_t by) {
    return form.constant() % by == 0 &&
           std::all_of(form.terms().begin(), form.terms().end(),
                       [by](const auto& term) { return term.coefficient % by == 0; });
}

}  // namespace

// Without the first count of any tie.
Ties::Reduced Ties::reduced(AffineForm form) const {
    std::int64_t times = 1;
    for (const AffineForm& zero : zeros_) {
        const auto [variable, each] = zero.terms().front();
        const std::int64_t has = form.coefficient(variable);
        if (has == 0) continue;
        const std::int64_t common = std::gcd(has, each);
        form = AffineForm().add(form, each / common).add(zero, -(has / common));
        times *= each / common;
    }
    return {std::move(form), times};
}

void Ties::add(const AffineForm& zero) {
    if (zeros_.size() == kMostTies || !isSmall(zero)) return;
    const AffineForm rest = reduced(zero).form;
    if (!rest.isConstant() && isSmall(rest)) zeros_.push_back(rest);
}

std::optional<std::int64_t> Ties::constantOf(const AffineForm& form) const {
    const auto [rest, times] = reduced(form);
    if (!rest.isConstant() || rest.constant() % times != 0) return std::nullopt;
    return rest.constant() / times;
}

std::vector<AffineForm> Ties::divisible(const AffineForm& form, std::int64_t by) const {
    std::vector<AffineForm> found;
    const std::int64_t most = std::min(by - 1, kMostTimes);
    // 0, -1, 1, -2, 2 ... times each tie.
    const auto tried = [&](auto&& self, std::size_t tie, const AffineForm& sum) -> void {
        if (tie == zeros_.size()) {
            if (allDivisible(sum, by)) found.push_back(sum);
            return;
        }
        for (std::int64_t step = 0; step <= 2 * most; ++step) {
            const std::int64_t times = step % 2 == 0 ? step / 2 : -(step + 1) / 2;
            self(self, tie + 1, AffineForm(sum).add(zeros_[tie], times));
        }
    };
    tried(tried, 0, form);
    return found;
}

// Gives the first count of every tie the value that the other counts leave it; false when that is
// no whole number or less than it may be.
bool Ties::complete(Values& values, const Values& least) const {
    return std::all_of(zeros_.rbegin(), zeros_.rend(), [&](const AffineForm& zero) {
        const auto [variable, each] = zero.terms().front();
        values.at(variable) = 0;
        const std::int64_t rest = zero.at([&](Variable v) { return values.at(v); });
        values.at(variable) = -rest / each;
        return rest % each == 0 && values.at(variable) >= least.at(variable);
    });
}

std::optional<Ties::Values> Ties::example(const AffineForm& form, Values least,
                                          const Bad& bad) const {
    std::set<Variable> moving;
    const auto meet = [&](const AffineForm& some) {
        for (const auto& term : some.terms()) {
            moving.insert(term.variable);
            least.emplace(term.variable, 1);
        }
    };
    meet(form);
    for (const AffineForm& zero : zeros_) meet(zero);
    for (const AffineForm& zero : zeros_) moving.erase(zero.terms().front().variable);
    const std::vector<Variable> counts(moving.begin(), moving.end());
    Values values = least;
    std::int64_t tried = 0;
    // Counts from `at` on are `more` larger together than they may be.
    const auto shared = [&](auto&& self, std::size_t at, std::int64_t more) -> bool {
        if (at == counts.size()) {
            ++tried;
            return complete(values, least) &&
                   bad(form.at([&](Variable v) { return values.at(v); }));
        }
        const bool last = at + 1 == counts.size();  // it takes what is left
        for (std::int64_t here = last ? more : 0; here <= more && tried < kMostTried; ++here) {
            values.at(counts[at]) = least.at(counts[at]) + here;
            if (self(self, at + 1, more - here)) return true;
        }
        return false;
    };
    for (std::int64_t more = 0; more <= kMostMore && tried < kMostTried; ++more) {
        if (shared(shared, 0, more)) return values;
    }
    return std::nullopt;
}

}  // namespace lacewright
