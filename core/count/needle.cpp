#include "core/count/needle.h"

#include <algorithm>

#include "core/count/row_solver.h"
#include "core/count/shares.h"

namespace lacewright {

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

AffineForm Needle::settled(const AffineForm& form) const {
    AffineForm filled = resolved(form);
    const auto constant = ties_.constantOf(filled);
    return constant ? AffineForm(*constant) : filled;
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
    RowSolver solver(*this, fit);
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
    std::vector<std::int64_t> own;
    for (const auto& term : fit.required.terms()) {
        if (free_.contains(term.variable)) {
            fixed += term.coefficient * value(term.variable);
        } else if (term.coefficient > 0) {
            own.push_back(term.coefficient);
        }
    }
    const std::int64_t room = fit.exampleAvailable - fixed;
    fit.exampleRequired = fixed + (own.empty() ? 0 : largestShared(own, room).value_or(0));
    return fit;
}

void Needle::work(const RowForms& row, const Fit& fit) {
    for (const auto& [variable, form] : fit.solved) solved_.insert_or_assign(variable, form);
    for (const auto& [variable, least] : fit.raised) free_[variable] = least;
    // What shares the loops with others may be worked no time at all.
    for (const AffineForm& tie : fit.ties) {
        if (fit.fits()) ties_.add(tie);
        for (const auto& term : tie.terms()) free_.emplace(term.variable, 0);
    }
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
