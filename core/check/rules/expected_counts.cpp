#include <algorithm>
#include <cstdlib>

#include "core/base/text.h"
#include "core/check/rules/first_row.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

constexpr std::int64_t kFewLoops = 4;  // by which a repeat is thought to be wrong

// A size whose first row does not take what it expects.
struct Miss {
    const SizeSurvey* size = nullptr;
    FirstRow row;
    std::int64_t wanted = 0;
    std::int64_t by() const { return row.count() - wanted; }
};

std::string more(std::int64_t by) {
    return std::to_string(std::abs(by)) + (by > 0 ? " more" : " fewer");
}

// Nothing where a size takes more than can be expected.
void offerToExpect(const Chart& chart, const std::vector<Miss>& misses, Finding& finding) {
    if (std::any_of(misses.begin(), misses.end(),
                    [](const Miss& miss) { return miss.row.count() > kMaxNeedle; }))
        return;
    Mend mend;
    std::vector<std::string> parts;
    for (const Miss& miss : misses) {
        parts.push_back(parts.empty() ? stitchCount(miss.row.count())
                                      : std::to_string(miss.row.count()));
        parts.back() += " in size " + miss.size->size.name;
        mend.steps.emplace_back(
            ChangeExpected{miss.size->size.name, static_cast<int>(miss.row.count())});
    }
    mend.label = "Expect " + listing(parts);
    mend.reason = "what " + lowerAscii(rowName(chart, 0)) + " takes as drawn";
    finding.mends.push_back(std::move(mend));
}

Finding fault(const Chart& chart, const std::vector<Miss>& misses) {
    Finding finding;
    finding.rule = "size-count";
    finding.severity = Severity::Fault;
    finding.row = chart.rowNumber(0);
    for (const Miss& miss : misses) finding.sizes.push_back(miss.size->size.name);
    return finding;
}

Finding single(const Chart& chart, const Miss& miss) {
    Finding finding = fault(chart, {miss});
    finding.message = miss.row.words() + ", but " + std::to_string(miss.wanted) + " are expected";
    miss.row.explain(miss.wanted, finding);
    offerToExpect(chart, {miss}, finding);
    return finding;
}

// ": 85 against 76 (XS), 98 against 88 (S)."
std::string examples(const std::vector<Miss>& misses) {
    std::vector<std::string> parts;
    for (const Miss& miss : misses) {
        parts.push_back(std::to_string(miss.row.count()) + " against " +
                        std::to_string(miss.wanted) + " (" + miss.size->size.name + ")");
    }
    return ": " + join(parts, ", ") + ".";
}

Finding together(const Chart& chart, const std::vector<Miss>& misses) {
    Finding finding = fault(chart, misses);
    finding.message = "Sizes " + listing(finding.sizes) + ": " + lowerAscii(rowName(chart, 0)) +
                      " takes " + more(misses.front().by()) + " than expected" + examples(misses);
    offerToExpect(chart, misses, finding);
    return finding;
}

// All are out by a few stitches in every repeat of one box: it is drawn wrong.
std::optional<Finding> byRepeat(const Survey& survey, const std::vector<Miss>& misses) {
    const Chart& chart = survey.chart();
    for (const Segment& segment : survey.whole().path(0)) {
        if (!segment.isBox()) continue;
        const auto index = static_cast<std::size_t>(segment.repeat);
        const auto times = [&](const Miss& miss) {
            return std::int64_t{miss.size->times[index].value_or(1)};
        };
        const std::int64_t each =
            times(misses.front()) == 0 ? 0 : misses.front().by() / times(misses.front());
        if (each == 0 || std::abs(each) > kFewLoops ||
            !std::all_of(misses.begin(), misses.end(),
                         [&](const Miss& miss) { return miss.by() == each * times(miss); }))
            continue;
        Finding finding = fault(chart, misses);
        for (int column = segment.first; column <= segment.last; ++column)
            finding.columns.push_back(column);
        finding.message = rowName(chart, 0) + " takes " + more(each) + " in every repeat of " +
                          chart.repeats[index].name + " than the sizes expect" + examples(misses);
        offerToExpect(chart, misses, finding);
        return finding;
    }
    return std::nullopt;
}

}  // namespace

void checkExpectedCounts(const Survey& survey, std::vector<Finding>& findings) {
    if (survey.height() == 0) return;
    std::vector<Miss> misses;
    std::size_t expecting = 0;
    for (const SizeSurvey& s : survey.sizes()) {
        if (!s.size.stitches) continue;
        ++expecting;
        Miss miss{&s, FirstRow(survey, s), *s.size.stitches};
        if (miss.by() != 0) misses.push_back(std::move(miss));
    }
    // One cell of the row is a single fault, for however many sizes.
    const auto differs = [&](const Miss& miss) { return miss.by() != misses.front().by(); };
    if (misses.size() > 1 && misses.size() == expecting &&
        std::any_of(misses.begin(), misses.end(), differs)) {
        if (auto finding = byRepeat(survey, misses)) {
            findings.push_back(std::move(*finding));
            return;
        }
    }
    while (!misses.empty()) {
        // Where a repeat worked more or less often explains a size, that is told by itself.
        const auto otherCause = [first = misses.front()](const Miss& miss) {
            return miss.size != first.size &&
                   (miss.by() != first.by() || miss.row.canTake(miss.wanted) ||
                    first.row.canTake(first.wanted));
        };
        const auto rest = std::stable_partition(misses.begin(), misses.end(),
                                                [&](const Miss& m) { return !otherCause(m); });
        std::vector<Miss> group(misses.begin(), rest);
        misses.erase(misses.begin(), rest);
        findings.push_back(group.size() == 1 ? single(survey.chart(), group.front())
                                             : together(survey.chart(), group));
    }
}

}  // namespace lacewright
