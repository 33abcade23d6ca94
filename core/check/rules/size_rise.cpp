#include <algorithm>

#include "core/base/length.h"
#include "core/base/text.h"
#include "core/check/rules/size_family.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

// The sizes from the smallest to the largest as far as the chart says: in its own order when it
// says that they rise, or by their letter codes.
std::vector<const SizeSurvey*> inOrder(const Survey& survey) {
    std::vector<const SizeSurvey*> order;
    for (const SizeSurvey& s : survey.sizes()) order.push_back(&s);
    if (survey.chart().grading.rising) return order;
    for (const SizeSurvey* s : order) {
        if (!rankOfLetterCode(s->size.name)) return {};
    }
    std::stable_sort(order.begin(), order.end(), [](const SizeSurvey* a, const SizeSurvey* b) {
        return *rankOfLetterCode(a->size.name) < *rankOfLetterCode(b->size.name);
    });
    return order;
}

// " and comes out 2.0 cm (0.8 in) narrower"
std::string narrower(const Chart& chart, std::int64_t stitches) {
    if (chart.gauge.stitches <= 0) return {};
    return " and comes out " +
           lengthText(lengthOf(static_cast<int>(stitches), chart.gauge.stitches)) + " narrower";
}

// A smaller and a larger size compared on one row, where they have so many stitches.
void compare(const Survey& survey, int row, const SizeSurvey& small, const SizeSurvey& large,
             std::int64_t has, std::int64_t wants, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    const bool first = row == 0;
    const std::string name = rowName(chart, row);
    if (wants > has) {
        findings.push_back(familyFinding(
            survey, "size-rise", row, {&small, &large},
            name + (first ? " takes " : " leaves ") + stitchCount(has) + " in size " +
                large.size.name + ", " + std::to_string(wants - has) + " fewer than in size " +
                small.size.name + " (" + std::to_string(wants) + "), though " + large.size.name +
                " is the larger size" + narrower(chart, wants - has) + "."));
    } else if (wants == has && first && chart.grading.rising) {
        findings.push_back(familyFinding(survey, "size-rise", row, {&small, &large},
                                         "Sizes " + small.size.name + " and " + large.size.name +
                                             " both begin with " + stitchCount(has) +
                                             ", though the sizes are meant to rise."));
        findings.back().severity = Severity::Note;
    }
}

}  // namespace

void checkSizeRise(const Survey& survey, std::vector<Finding>& findings) {
    if (survey.height() == 0) return;
    const auto order = inOrder(survey);
    for (std::size_t i = 0; i + 1 < order.size(); ++i) {
        const SizeSurvey& small = *order[i];
        const SizeSurvey& large = *order[i + 1];
        const std::size_t before = findings.size();
        compare(survey, 0, small, large, firstCount(large), firstCount(small), findings);
        if (findings.size() == before)
            compare(survey, survey.height() - 1, small, large, lastCount(large), lastCount(small),
                    findings);
    }
}

}  // namespace lacewright
