#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <vector>

#include "core/count/affine_form.h"

namespace lacewright {

// What free counts have to do with each other: forms that are zero although no count of them is
// known. "A cast-on of 10r is worked as A repeats of 4 and B of 6" ties A, B and r: 4A + 6B - 10r.
// Few are kept, with small numbers; one that is not kept is not known of, and no harm done.
class Ties {
 public:
    using Values = std::map<Variable, std::int64_t>;
    using Bad = std::function<bool(std::int64_t)>;

    bool empty() const { return zeros_.empty(); }
    // `zero` is 0 from now on.
    void add(const AffineForm& zero);
    // What the form comes to for all counts that are tied so, where that is one number.
    std::optional<std::int64_t> constantOf(const AffineForm& form) const;
    // Forms that come to the same as this one and are divisible by `by`, the plainest first.
    // Requires: by > 0.
    std::vector<AffineForm> divisible(const AffineForm& form, std::int64_t by) const;
    // The smallest counts, from those in `least` on, that are tied so and make `form` bad; nothing
    // when small ones do not. Counts that no tie speaks of stay the smallest unless `form` does.
    std::optional<Values> example(const AffineForm& form, Values least, const Bad& bad) const;

    bool operator==(const Ties&) const = default;

 private:
    struct Reduced {
        AffineForm form;
        std::int64_t times = 1;  // as much as the form it was made of
    };
    Reduced reduced(AffineForm form) const;
    bool complete(Values& values, const Values& least) const;

    std::vector<AffineForm> zeros_;  // each without the first count of those before it
};

}  // namespace lacewright
