#pragma once

#include <functional>
#include <vector>

#include "core/count/needle.h"

namespace lacewright {

inline constexpr std::int64_t kSmallestCount = 1;  // of a free count of which nothing is known

// Solves one row for Needle: every equation is "form = 0" in the row's own counts.
class RowSolver {
 public:
    // Both must live longer; `fit` receives what is found.
    RowSolver(const Needle& needle, Fit& fit) : needle_(needle), fit_(fit) {}

    // Requires: not solved before. Order matters: the first equation that fails is the one told.
    void solve(std::vector<AffineForm> equations);
    // A form with every count filled in that was solved before or is by now.
    AffineForm filled(const AffineForm& form) const;

 private:
    using Bad = Ties::Bad;

    std::vector<AffineForm::Term> ownOf(const AffineForm& form) const;
    std::int64_t smallest(Variable v) const;
    void requireZero(const AffineForm& rest);
    void solveFor(const AffineForm::Term& own, const AffineForm& equation);
    void share(const AffineForm& equation);
    bool isWhole(const AffineForm& loops, std::int64_t each);
    void settle(const AffineForm& equation, const AffineForm& loops,
                const std::vector<AffineForm::Term>& own);
    bool keepAtLeast(const AffineForm& value, std::int64_t least);
    bool keepShared(const AffineForm& loops, const std::vector<std::int64_t>& parts);
    void findResidue(const AffineForm& loops, std::int64_t each);
    bool fail(FitKind kind, const AffineForm& form, const Bad& bad);
    void setExample(const AffineForm& form, const Bad& bad);
    void leaveFree(const AffineForm& equation);

    const Needle& needle_;
    Fit& fit_;
};

}  // namespace lacewright
