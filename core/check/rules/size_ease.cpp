#include "core/base/length.h"
#include "core/base/text.h"
#include "core/check/rules/size_family.h"

namespace lacewright {
namespace {

// A tenth of a millimetre: lengths that are meant to be equal differ by less.
constexpr double kNothing = 0.01;

std::string easeText(double cm) {
    return (cm > 0 ? "+" : "") + lengthText(cm);
}

}  // namespace

void checkSizeEase(const Survey& survey, std::vector<Finding>& findings) {
    const Grading& grading = survey.chart().grading;
    if (survey.height() == 0 || (!grading.leastEase && !grading.mostEase)) return;
    for (const SizeSurvey& s : survey.sizes()) {
        const auto width = finishedWidth(survey.chart(), firstCount(s));
        if (!s.size.body || !width) continue;
        const double around = grading.pieces * *width;
        const double ease = around - *s.size.body;
        const bool tight = grading.leastEase && ease < *grading.leastEase - kNothing;
        const bool wide = grading.mostEase && ease > *grading.mostEase + kNothing;
        if (!tight && !wide) continue;
        findings.push_back(familyFinding(
            survey, "size-ease", 0, {&s},
            "Size " + s.size.name + " measures " + lengthText(around) + " around, " +
                (grading.pieces > 1
                     ? std::to_string(grading.pieces) + " pieces of " + lengthText(*width) + ", "
                     : "") +
                "for a body of " + lengthText(*s.size.body) + ": its ease of " + easeText(ease) +
                " is " +
                (tight ? "less than the least, " + easeText(*grading.leastEase)
                       : "more than the most, " + easeText(*grading.mostEase)) +
                "."));
    }
}

}  // namespace lacewright
