#include <algorithm>

#include "core/base/text.h"
#include "core/check/rules/size_family.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

// The stitches that a size makes in the columns of a shoulder.
std::int64_t leftBy(const Survey& survey, const SizeSurvey& s, const Shoulder& shoulder) {
    const Chart& chart = survey.chart();
    const Row& row = chart.row(shoulder.row);
    const Path& path = s.paths.path(shoulder.row);
    std::int64_t stitches = 0;
    for (const Segment& segment : path) {
        const int first = std::max(segment.first, shoulder.right);
        const int last = std::min(segment.last, shoulder.left);
        if (first > last) continue;
        const int times =
            segment.isBox() ? s.times[static_cast<std::size_t>(segment.repeat)].value_or(1) : 1;
        stitches += row.tally(first, last).makes * times;
    }
    for (const Substitution& substitution : s.size.substitutions) {
        if (substitution.row != shoulder.row || substitution.column < shoulder.right ||
            substitution.column > shoulder.left)
            continue;
        if (const auto effect = substitutionEffect(chart, substitution, path, s.times))
            stitches += effect->makes;
    }
    return stitches;
}

std::string placeOfShoulder(const Chart& chart, const Shoulder& shoulder) {
    return "columns " + std::to_string(shoulder.right) + " to " + std::to_string(shoulder.left) +
           " of " + lowerAscii(rowName(chart, shoulder.row));
}

void checkSize(const Survey& survey, const SizeSurvey& s, const std::vector<Shoulder>& shoulders,
               std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    std::vector<std::int64_t> counts;
    counts.reserve(shoulders.size());
    for (const Shoulder& shoulder : shoulders) counts.push_back(leftBy(survey, s, shoulder));
    const std::int64_t wanted = s.size.shoulder ? std::int64_t{*s.size.shoulder} : counts.front();
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == wanted) continue;
        const std::string other =
            s.size.shoulder
                ? "the shoulder it is joined to has " + std::to_string(wanted)
                : placeOfShoulder(chart, shoulders.front()) + " leave " + std::to_string(wanted);
        Finding finding =
            familyFinding(survey, "size-shoulders", shoulders[i].row, {&s},
                          "Size " + s.size.name + " leaves " + stitchCount(counts[i]) + " in " +
                              placeOfShoulder(chart, shoulders[i]) + ", but " + other +
                              ": they cannot be joined stitch by stitch.");
        finding.columns = {shoulders[i].right, shoulders[i].left};
        if (shoulders[i].right == shoulders[i].left) finding.columns.pop_back();
        findings.push_back(std::move(finding));
    }
}

}  // namespace

void checkSizeShoulders(const Survey& survey, std::vector<Finding>& findings) {
    if (survey.height() == 0) return;
    const Chart& chart = survey.chart();
    std::vector<Shoulder> shoulders = chart.grading.shoulders;
    const bool wholeRow = shoulders.empty();
    if (wholeRow) shoulders.push_back({chart.height() - 1, 1, chart.width, {}});
    for (const SizeSurvey& s : survey.sizes()) {
        if (wholeRow && !s.size.shoulder) continue;
        checkSize(survey, s, shoulders, findings);
    }
}

}  // namespace lacewright
