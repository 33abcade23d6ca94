#include "core/count/row_solver.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "core/count/shares.h"

namespace lacewright {
namespace {

bool divisible(const AffineForm& form, std::int64_t by) {
    if (form.constant() % by != 0) return false;
    return std::all_of(form.terms().begin(), form.terms().end(),
                       [by](const AffineForm::Term& t) { return t.coefficient % by == 0; });
}

AffineForm divided(const AffineForm& form, std::int64_t by) {
    AffineForm result(form.constant() / by);
    for (const auto& term : form.terms()) result.add(term.variable, term.coefficient / by);
    return result;
}

std::vector<std::int64_t> partsOf(const std::vector<AffineForm::Term>& own) {
    std::vector<std::int64_t> parts;
    for (const auto& term : own) parts.push_back(term.coefficient);
    return parts;
}

bool canShare(const std::vector<std::int64_t>& parts, std::int64_t loops) {
    return largestShared(parts, loops) == loops;
}

}  // namespace

void RowSolver::solve(std::vector<AffineForm> equations) {
    bool progress = true;
    while (progress && fit_.fits()) {
        progress = false;
        for (AffineForm& equation : equations) {
            equation = filled(equation);
            const auto own = ownOf(equation);
            if (own.empty()) {
                requireZero(equation);
                equation = AffineForm();
            } else if (own.size() == 1) {
                solveFor(own.front(), equation);
                equation = AffineForm();
                progress = true;
            }
            if (!fit_.fits()) return;
        }
    }
    for (const AffineForm& equation : equations) {
        const AffineForm rest = filled(equation);
        if (ownOf(rest).size() > 1) {
            share(rest);
        } else {
            leaveFree(rest);
        }
        if (!fit_.fits()) return;
    }
}

AffineForm RowSolver::filled(const AffineForm& form) const {
    return needle_.resolved(form).substituted([this](Variable v) -> const AffineForm* {
        const auto at = fit_.solved.find(v);
        return at == fit_.solved.end() ? nullptr : &at->second;
    });
}

std::vector<AffineForm::Term> RowSolver::ownOf(const AffineForm& form) const {
    std::vector<AffineForm::Term> own;
    for (const auto& term : form.terms()) {
        if (!needle_.free_.contains(term.variable)) own.push_back(term);
    }
    return own;
}

std::int64_t RowSolver::smallest(Variable v) const {
    const auto raised = fit_.raised.find(v);
    return raised == fit_.raised.end() ? needle_.smallest(v) : raised->second;
}

// The row fails where `form` is bad, unless counts that are tied never make it so.
bool RowSolver::fail(FitKind kind, const AffineForm& form, const Bad& bad) {
    fit_.kind = kind;
    if (needle_.ties_.empty()) {
        setExample(form, bad);
        return true;
    }
    std::map<Variable, std::int64_t> least;
    for (const auto& [variable, value] : needle_.free_) least[variable] = smallest(variable);
    if (auto example = needle_.ties_.example(form, std::move(least), bad)) {
        fit_.example = std::move(*example);
        return true;
    }
    fit_.kind = FitKind::Fits;
    return false;
}

void RowSolver::requireZero(const AffineForm& rest) {
    const auto constant = needle_.ties_.constantOf(rest);
    if (constant == 0) return;
    const FitKind kind = constant ? FitKind::Edges : FitKind::Drift;
    if (!fail(kind, rest, [](std::int64_t difference) { return difference != 0; })) return;
    if (rest.terms().size() != 1) return;
    const auto& term = rest.terms().front();
    const std::int64_t at = -rest.constant() / term.coefficient;
    if (-rest.constant() % term.coefficient == 0 && at >= smallest(term.variable)) fit_.onlyAt = at;
}

// equation = coefficient * own + rest = 0
void RowSolver::solveFor(const AffineForm::Term& own, const AffineForm& equation) {
    const AffineForm rest = equation - AffineForm::of(own.variable, own.coefficient);
    const std::int64_t each = own.coefficient < 0 ? -own.coefficient : own.coefficient;
    const AffineForm loops =
        needle_.settled(own.coefficient < 0 ? rest : AffineForm() - rest);  // each * own = loops
    for (const AffineForm& same : needle_.ties_.divisible(loops, each)) {
        const AffineForm value = divided(same, each);
        if (!keepAtLeast(value, 0)) continue;
        fit_.solved.emplace(own.variable, value);
        return;
    }
    const bool fails = isWhole(loops, each)
                           ? fail(FitKind::TooFew, loops, [](std::int64_t v) { return v < 0; })
                           : !fit_.fits();
    if (!fails) {
        fit_.ties.push_back(equation);
        fit_.freed.insert(own.variable);
    }
}

// Stretches that the row works as often as it likes, all together on `loops` loops.
void RowSolver::share(const AffineForm& equation) {
    std::vector<AffineForm::Term> own = ownOf(equation);
    AffineForm rest = equation;
    for (const auto& term : own) rest.add(term.variable, -term.coefficient);
    const bool downward =
        std::all_of(own.begin(), own.end(), [](const auto& term) { return term.coefficient < 0; });
    if (downward) {
        for (auto& term : own) term.coefficient = -term.coefficient;
    } else {
        rest = AffineForm() - rest;
    }
    settle(equation, needle_.settled(rest), own);
}

// Whether `loops` are a multiple of `each` for all free counts; else the row fails.
bool RowSolver::isWhole(const AffineForm& loops, std::int64_t each) {
    if (divisible(loops, each) || !needle_.ties_.divisible(loops, each).empty()) return true;
    const auto bad = [each](std::int64_t value) { return value < 0 || value % each != 0; };
    if (loops.isConstant() && loops.constant() < 0) {
        fail(FitKind::TooFew, loops, bad);
        return false;
    }
    if (fail(FitKind::NotWhole, loops, bad)) findResidue(loops, each);
    return false;
}

void RowSolver::settle(const AffineForm& equation, const AffineForm& loops,
                       const std::vector<AffineForm::Term>& own) {
    const std::vector<std::int64_t> parts = partsOf(own);
    const std::int64_t common =
        std::accumulate(parts.begin(), parts.end(), std::int64_t{0},
                        [](std::int64_t a, std::int64_t b) { return std::gcd(a, b); });
    if (!isWhole(loops, common) && !fit_.fits()) return;
    const bool upward = std::all_of(parts.begin(), parts.end(), [](auto part) { return part > 0; });
    if (upward && loops.isConstant()) {
        if (!canShare(parts, loops.constant())) {
            fail(loops.constant() < 0 ? FitKind::TooFew : FitKind::NotWhole, loops,
                 [](std::int64_t) { return true; });
        } else if (const auto only = onlyWay(parts, loops.constant())) {
            for (std::size_t i = 0; i < own.size(); ++i)
                fit_.solved.emplace(own[i].variable, AffineForm((*only)[i]));
            return;
        }
    } else if (upward && !keepShared(loops, parts)) {
        fail(FitKind::TooFew, loops, [](std::int64_t v) { return v < 0; });
    }
    if (!fit_.fits()) return;
    fit_.ties.push_back(equation);
    leaveFree(equation);
}

// True when the value is at least `least` for all allowed free counts, after raising the smallest
// value of one.
bool RowSolver::keepAtLeast(const AffineForm& value, std::int64_t least) {
    std::int64_t lowest = value.constant();
    for (const auto& term : value.terms()) {
        if (term.coefficient < 0) return false;
        lowest += term.coefficient * smallest(term.variable);
    }
    if (lowest >= least) return true;
    if (value.terms().size() != 1) return false;
    const auto& term = value.terms().front();
    fit_.raised[term.variable] =
        (least - value.constant() + term.coefficient - 1) / term.coefficient;
    return true;
}

// The same for loops that are shared out among `parts`.
bool RowSolver::keepShared(const AffineForm& loops, const std::vector<std::int64_t>& parts) {
    constexpr std::int64_t kMostTried = 2'000;
    constexpr std::int64_t kMostAsked = 1'000'000;
    const std::int64_t from = sharedFrom(parts);
    if (loops.terms().size() != 1 || from > kMostAsked) return keepAtLeast(loops, 0);
    if (!keepAtLeast(loops, from)) return false;
    const auto& term = loops.terms().front();
    const auto raised = fit_.raised.find(term.variable);
    if (raised == fit_.raised.end() || from > kMostTried) return true;
    // It may be well from fewer on.
    const std::int64_t least = needle_.smallest(term.variable);
    const auto fewer = [&] { return term.coefficient * (raised->second - 1) + loops.constant(); };
    while (raised->second > least && canShare(parts, fewer())) --raised->second;
    if (raised->second == least) fit_.raised.erase(raised);
    return true;
}

void RowSolver::findResidue(const AffineForm& loops, std::int64_t each) {
    if (loops.terms().size() != 1) return;
    const auto& term = loops.terms().front();
    const std::int64_t modulus = each / std::gcd(each, term.coefficient);
    for (std::int64_t residue = 0; residue < modulus; ++residue) {
        if ((term.coefficient * residue + loops.constant()) % each == 0) {
            fit_.onlyWhen = {residue, modulus};
            return;
        }
    }
}

// The smallest free values at which `form` is bad: the smallest of all, or one count raised.
void RowSolver::setExample(const AffineForm& form, const Bad& bad) {
    constexpr std::int64_t kTries = 200;
    std::map<Variable, std::int64_t> base;
    for (const auto& [variable, least] : needle_.free_) base[variable] = smallest(variable);
    const auto value = [&form](const std::map<Variable, std::int64_t>& values) {
        return form.at([&values](Variable v) {
            const auto at = values.find(v);
            return at == values.end() ? kSmallestCount : at->second;
        });
    };
    fit_.example = base;
    for (std::int64_t step = 0; step < kTries && !bad(value(fit_.example)); ++step) {
        for (const auto& term : form.terms()) {
            fit_.example = base;
            fit_.example[term.variable] += step + 1;
            if (bad(value(fit_.example))) break;
        }
    }
}

void RowSolver::leaveFree(const AffineForm& equation) {
    for (const auto& term : ownOf(equation)) fit_.freed.insert(term.variable);
}

}  // namespace lacewright
