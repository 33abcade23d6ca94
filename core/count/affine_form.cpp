#include "core/count/affine_form.h"

#include <algorithm>

namespace lacewright {

AffineForm AffineForm::of(Variable variable, std::int64_t coefficient) {
    AffineForm form;
    form.add(variable, coefficient);
    return form;
}

std::int64_t AffineForm::coefficient(Variable variable) const {
    for (const Term& term : terms_) {
        if (term.variable == variable) return term.coefficient;
    }
    return 0;
}

AffineForm& AffineForm::add(Variable variable, std::int64_t coefficient) {
    if (coefficient == 0) return *this;
    const auto at = std::lower_bound(terms_.begin(), terms_.end(), variable,
                                     [](const Term& t, Variable v) { return t.variable < v; });
    if (at == terms_.end() || at->variable != variable) {
        terms_.insert(at, {variable, coefficient});
    } else if ((at->coefficient += coefficient) == 0) {
        terms_.erase(at);
    }
    return *this;
}

AffineForm& AffineForm::add(const AffineForm& other, std::int64_t times) {
    constant_ += times * other.constant_;
    for (const Term& term : other.terms_) add(term.variable, times * term.coefficient);
    return *this;
}

std::int64_t AffineForm::at(const Assignment& values) const {
    std::int64_t sum = constant_;
    for (const Term& term : terms_) sum += term.coefficient * values(term.variable);
    return sum;
}

AffineForm AffineForm::substituted(const std::function<const AffineForm*(Variable)>& find) const {
    AffineForm result(constant_);
    for (const Term& term : terms_) {
        if (const AffineForm* value = find(term.variable)) {
            result.add(*value, term.coefficient);
        } else {
            result.add(term.variable, term.coefficient);
        }
    }
    return result;
}

std::string AffineForm::text(const std::function<std::string(Variable)>& name) const {
    std::string out;
    const auto append = [&out](std::int64_t value, const std::string& what) {
        if (out.empty()) {
            if (value < 0) out += "-";
        } else {
            out += value < 0 ? " - " : " + ";
        }
        const std::int64_t size = value < 0 ? -value : value;
        if (what.empty() || size != 1) out += std::to_string(size);
        out += what;
    };
    for (const Term& term : terms_) append(term.coefficient, name(term.variable));
    if (constant_ != 0 || out.empty()) append(constant_, "");
    return out;
}

}  // namespace lacewright
