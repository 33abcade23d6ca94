#include "core/base/text.h"
#include "core/check/rules/size_family.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

using Group = std::vector<const SizeSurvey*>;

std::string countsOf(const Group& group) {
    std::vector<std::string> counts;
    for (const SizeSurvey* s : group)
        counts.push_back(std::to_string(firstCount(*s)) + " (" + s->size.name + ")");
    return listing(counts);
}

}  // namespace

void checkSizeHalves(const Survey& survey, std::vector<Finding>& findings) {
    if (survey.height() == 0 || !survey.chart().grading.halved) return;
    Group even;
    Group odd;
    for (const SizeSurvey& s : survey.sizes()) {
        (firstCount(s) % 2 == 0 ? even : odd).push_back(&s);
    }
    if (even.empty() || odd.empty()) return;
    // The fewer stand out; of as many, those that cannot be halved.
    const bool oddStandOut = odd.size() <= even.size();
    const Group& few = oddStandOut ? odd : even;
    const Group& many = oddStandOut ? even : odd;
    findings.push_back(familyFinding(
        survey, "size-halves", 0, few,
        rowName(survey.chart(), 0) + " takes an " + (oddStandOut ? "odd" : "even") +
            " number of stitches in " + (few.size() == 1 ? "one size, " : "some sizes, ") +
            countsOf(few) + ", but an " + (oddStandOut ? "even" : "odd") + " one in " +
            countsOf(many) + ": they cannot all be divided into halves in the same way."));
}

}  // namespace lacewright
