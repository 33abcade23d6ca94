#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "core/chart/chart.h"
#include "core/count/affine_form.h"
#include "core/count/tally.h"
#include "core/count/ties.h"

namespace lacewright {

// Why a row does or does not use up the loops on the needle.
enum class FitKind {
    Fits,      // for every allowed value of the free counts
    Edges,     // too many or too few by a fixed number, however often the repeats are worked
    Drift,     // the difference grows with a count
    NotWhole,  // the row's own repeats divide the loops only for some values
    TooFew     // the row's own repeat would have to be worked a negative number of times
};

// A row measured against the needle.
struct Fit {
    FitKind kind = FitKind::Fits;
    AffineForm available;  // loops on the needle, in free variables
    AffineForm required;   // what the row takes; own variables that could be solved are filled in
    std::map<Variable, AffineForm> solved;    // own variables, in free variables
    std::set<Variable> freed;                 // own variables left free (nothing fixes them)
    std::vector<AffineForm> ties;             // zeros that hold for those that share the loops
    std::map<Variable, std::int64_t> raised;  // larger smallest values that the row demands

    // For a misfit: the smallest allowed free values at which the row fails, and the plain numbers.
    // Own counts that were to be solved are chosen as large as the loops allow.
    std::map<Variable, std::int64_t> example;
    std::int64_t exampleAvailable = 0;
    std::int64_t exampleRequired = 0;
    // For NotWhole with one free variable v: it fits only when v mod `modulus` is `residue`.
    std::optional<std::pair<std::int64_t, std::int64_t>> onlyWhen;  // residue, modulus
    // For a misfit with one free variable that some value of it would repair.
    std::optional<std::int64_t> onlyAt;

    bool fits() const { return kind == FitKind::Fits; }
};

// A further demand a row makes on its own counts: "to last 5 sts" says that what follows takes 5.
struct Demand {
    AffineForm form;
    std::int64_t value = 0;
};

// The loops on the needle while rows are worked one after the other, known as an affine form in
// free counts (each a whole number of at least `smallest`). A row may bring counts of its own that
// no row had before: they are solved so that the row uses up the loops, or stay free when nothing
// fixes them. Several that share the loops in more than one way stay free and are tied to each
// other. Counts that were seen before keep their value.
//
// A row fits when it uses up exactly the loops on the needle for every allowed value of the free
// counts, each of its own counts being a whole number >= 0. Where an own count would be negative
// only for small values, those values are ruled out (`raised`) instead.
class Needle {
 public:
    // Nothing is known of the loops: the first row decides.
    Needle() = default;
    // A fixed count, or multiple * r + plus with r >= 1 as free variable `r`.
    Needle(const CastOn& castOn, Variable r);

    Fit fit(const AffineForm& takes, const std::vector<Demand>& demands = {}) const;

    // Works the row: after a fit its makes are on the needle; after a misfit counting starts afresh
    // from the row as written, its own counts free. A later row that brings counts of its own may
    // then fit those loops or, as if nothing had been wrong, the ones before the misfit: what does
    // not come out because of one wrong row is no second fault.
    void work(const RowForms& row, const Fit& fit);

    // A count that the rows worked so far have used, even if no loop depended on it: it is free
    // from now on unless it is solved.
    void meet(Variable variable);

    // Puts other loops on the needle without working a row: what a row that fits makes.
    void hold(const AffineForm& makes);

    // Unknown before the first row when there is no cast-on.
    const std::optional<AffineForm>& loops() const { return loops_; }
    std::int64_t smallest(Variable variable) const;
    // A form with every solved count filled in.
    AffineForm resolved(const AffineForm& form) const;
    // The same, a plain number wherever the rows worked so far allow no other.
    AffineForm settled(const AffineForm& form) const;

    // The same counts are solved and free, whatever is on the needle.
    bool sameCounts(const Needle& other) const {
        return solved_ == other.solved_ && free_ == other.free_ && ties_ == other.ties_ &&
               lost_ == other.lost_;
    }

 private:
    friend class RowSolver;
    Fit measured(const AffineForm& takes, const std::vector<Demand>& demands) const;
    bool bringsOwn(const AffineForm& takes) const;

    std::optional<AffineForm> loops_;
    std::optional<AffineForm> lost_;  // loops before the first misfit, until they count again
    std::map<Variable, AffineForm> solved_;
    std::map<Variable, std::int64_t> free_;  // and their smallest values
    Ties ties_;
};

}  // namespace lacewright
