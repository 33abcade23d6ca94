#include "core/count/needle.h"

#include <algorithm>
#include <numeric>

namespace lacewright {

namespace {

constexpr std::int64_t kSmallestCount = 1;

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

}  // namespace

// Solves one row: every demand is an equation "form = 0" in the row's own counts.
class Solver {
 public:
    Solver(const Needle& needle, Fit& fit) : needle_(needle), fit_(fit) {}

    // Requires: not solved before. Order matters: the first equation that fails is the one told.
    void solve(std::vector<AffineForm> equations) {
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
        for (const AffineForm& equation : equations) leaveFree(filled(equation));
    }

    AffineForm filled(const AffineForm& form) const {
        return needle_.resolved(form).substituted([this](Variable v) -> const AffineForm* {
            const auto at = fit_.solved.find(v);
            return at == fit_.solved.end() ? nullptr : &at->second;
        });
    }

 private:
    std::vector<AffineForm::Term> ownOf(const AffineForm& form) const {
        std::vector<AffineForm::Term> own;
        for (const auto& term : form.terms()) {
            if (!needle_.free_.contains(term.variable)) own.push_back(term);
        }
        return own;
    }

    std::int64_t smallest(Variable v) const {
        const auto raised = fit_.raised.find(v);
        return raised == fit_.raised.end() ? needle_.smallest(v) : raised->second;
    }

    void requireZero(const AffineForm& rest) {
        if (rest == AffineForm()) return;
        fit_.kind = rest.isConstant() ? FitKind::Edges : FitKind::Drift;
        if (rest.terms().size() == 1) {
            const auto& term = rest.terms().front();
            const std::int64_t at = -rest.constant() / term.coefficient;
            if (-rest.constant() % term.coefficient == 0 && at >= smallest(term.variable))
                fit_.onlyAt = at;
        }
        setExample(rest, [](std::int64_t difference) { return difference != 0; });
    }

    // equation = coefficient * own + rest = 0
    void solveFor(const AffineForm::Term& own, const AffineForm& equation) {
        const AffineForm rest = equation - AffineForm::of(own.variable, own.coefficient);
        const std::int64_t size = own.coefficient < 0 ? -own.coefficient : own.coefficient;
        const AffineForm share =
            own.coefficient < 0 ? rest : AffineForm() - rest;  // size * own = share
        if (!divisible(share, size)) {
            fit_.kind = FitKind::NotWhole;
            findResidue(share, size);
            setExample(share,
                       [size](std::int64_t value) { return value < 0 || value % size != 0; });
            return;
        }
        const AffineForm value = divided(share, size);
        if (!keepNonNegative(value)) {
            fit_.kind = FitKind::TooFew;
            setExample(value, [](std::int64_t v) { return v < 0; });
            return;
        }
        fit_.solved.emplace(own.variable, value);
    }

    // True when the value is >= 0 for all allowed free counts, after raising a smallest value.
    bool keepNonNegative(const AffineForm& value) {
        std::int64_t least = value.constant();
        for (const auto& term : value.terms()) {
            if (term.coefficient < 0) return false;
            least += term.coefficient * smallest(term.variable);
        }
        if (least >= 0) return true;
        if (value.terms().size() != 1) return false;
        const auto& term = value.terms().front();
        fit_.raised[term.variable] = (-value.constant() + term.coefficient - 1) / term.coefficient;
        return true;
    }

    void findResidue(const AffineForm& share, std::int64_t size) {
        if (share.terms().size() != 1) return;
        const auto& term = share.terms().front();
        const std::int64_t modulus = size / std::gcd(size, term.coefficient);
        for (std::int64_t residue = 0; residue < modulus; ++residue) {
            if ((term.coefficient * residue + share.constant()) % size == 0) {
                fit_.onlyWhen = {residue, modulus};
                return;
            }
        }
    }

    // The smallest free values at which `form` is bad: the smallest of all, or one count raised.
    template <class Bad>
    void setExample(const AffineForm& form, Bad bad) {
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

    void leaveFree(const AffineForm& equation) {
        for (const auto& term : ownOf(equation)) fit_.freed.insert(term.variable);
    }

    const Needle& needle_;
    Fit& fit_;
};

Needle::Needle(const CastOn& castOn, Variable r) : loops_(AffineForm(castOn.plus)) {
    if (castOn.multiple == 0) return;
    loops_->add(r, castOn.multiple);
    free_[r] = kSmallestCount;
}

std::int64_t Needle::smallest(Variable variable) const {
    const auto at = free_.find(variable);
    return at == free_.end() ? kSmallestCount : at->second;
}

AffineForm Needle::resolved(const AffineForm& form) const {
    if (solved_.empty()) return form;
    return form.substituted([this](Variable v) -> const AffineForm* {
        const auto at = solved_.find(v);
        return at == solved_.end() ? nullptr : &at->second;
    });
}

bool Needle::bringsOwn(const AffineForm& takes) const {
    const auto& terms = takes.terms();
    return std::any_of(terms.begin(), terms.end(), [this](const AffineForm::Term& term) {
        return !free_.contains(term.variable) && !solved_.contains(term.variable);
    });
}

Fit Needle::fit(const AffineForm& takes, const std::vector<Demand>& demands) const {
    Fit fit = measured(takes, demands);
    if (fit.fits() || !lost_ || !bringsOwn(takes)) return fit;
    Needle before = *this;
    before.loops_ = lost_;
    Fit again = before.measured(takes, demands);
    return again.fits() ? again : fit;
}

Fit Needle::measured(const AffineForm& takes, const std::vector<Demand>& demands) const {
    Fit fit;
    Solver solver(*this, fit);
    std::vector<AffineForm> equations;
    equations.reserve(demands.size() + 1);
    for (const Demand& demand : demands)
        equations.push_back(demand.form - AffineForm(demand.value));
    if (loops_) {
        fit.available = *loops_;
        equations.push_back(takes - *loops_);
    }
    solver.solve(std::move(equations));
    fit.required = solver.filled(takes);
    if (!loops_) fit.available = fit.required;
    for (const auto& term : fit.required.terms()) {
        if (!free_.contains(term.variable)) fit.freed.insert(term.variable);
    }
    if (fit.fits()) return fit;

    const auto value = [&fit](Variable v) {
        const auto at = fit.example.find(v);
        return at == fit.example.end() ? kSmallestCount : at->second;
    };
    fit.exampleAvailable = fit.available.at(value);
    // Own counts of the row go as far as the loops allow; what is left over shows as a difference.
    std::int64_t fixed = fit.required.constant();
    std::int64_t own = 0;
    for (const auto& term : fit.required.terms()) {
        if (free_.contains(term.variable)) {
            fixed += term.coefficient * value(term.variable);
        } else {
            own = own == 0 ? term.coefficient : std::gcd(own, term.coefficient);
        }
    }
    const std::int64_t room = fit.exampleAvailable - fixed;
    fit.exampleRequired = fixed + (own > 0 && room > 0 ? room / own * own : 0);
    return fit;
}

void Needle::work(const RowForms& row, const Fit& fit) {
    for (const auto& [variable, form] : fit.solved) solved_.insert_or_assign(variable, form);
    for (const auto& [variable, least] : fit.raised) free_[variable] = least;
    for (const Variable variable : fit.freed) free_.emplace(variable, kSmallestCount);
    if (!fit.fits() && !lost_) lost_ = loops_;
    if (lost_ && fit.fits() && !fit.solved.empty()) {
        // A row that adds as many to whatever it finds ("purl to end") decides nothing.
        const AffineForm net = row.makes - row.takes;
        lost_ = net.isConstant() ? std::optional(*lost_ + net) : std::nullopt;
    }
    hold(row.makes);
}

void Needle::meet(Variable variable) {
    if (!solved_.contains(variable)) free_.emplace(variable, kSmallestCount);
}

void Needle::hold(const AffineForm& makes) {
    loops_ = resolved(makes);
    for (const auto& term : loops_->terms()) meet(term.variable);
}

}  // namespace lacewright
