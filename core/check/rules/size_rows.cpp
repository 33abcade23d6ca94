#include <algorithm>
#include <cstdlib>
#include <map>
#include <span>
#include <tuple>

#include "core/base/text.h"
#include "core/check/parting.h"
#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

constexpr std::size_t kUsualLength = 96;  // of a sentence, bytes

struct Parting {
    Edge edge = Edge::Start;
    int column = 1;  // the first or last column the size works
    std::vector<CompanionPair> pairs;
    auto key() const {
        std::vector<std::pair<int, int>> columns;
        for (const CompanionPair& p : pairs) columns.emplace_back(p.increase, p.decrease);
        return std::tuple(edge, column, columns);
    }
};

std::vector<Parting> partingsOf(PairsAcross& pairs, const SizeSurvey& s, int row) {
    const Reach& reach = s.paths.reach(row);
    std::vector<Parting> partings;
    for (const auto& [edge, column, right] : {std::tuple(Edge::Start, reach.start, reach.start - 1),
                                              std::tuple(Edge::End, reach.end, reach.end)}) {
        Parting parting{edge, column, pairs.partedAt(right)};
        const Edge side = edge;
        std::erase_if(parting.pairs,
                      [&](const CompanionPair& p) { return isSubstituted(s.size, row, side, p); });
        if (!parting.pairs.empty()) partings.push_back(std::move(parting));
    }
    return partings;
}

std::int64_t difference(const SizeSurvey& s, int row) {
    const auto r = static_cast<std::size_t>(row);
    return row == 0 ? 0 : s.counts[r].takes - s.counts[r - 1].makes;
}

std::string sizeWords(const std::vector<std::string>& sizes) {
    return (sizes.size() == 1 ? "Size " : "Sizes ") + listing(sizes);
}

// Adds "row 7 takes 1 more than row 6 leaves: 64 against 63 (S)."
void addCountWords(std::string& words, const Survey& survey, int row,
                   std::span<const SizeSurvey* const> sizes) {
    const Chart& chart = survey.chart();
    const auto r = static_cast<std::size_t>(row);
    const std::int64_t by = difference(*sizes.front(), row);
    const std::string name = lowerAscii(rowName(chart, row));
    words += name;
    words += " takes ";
    words += std::to_string(std::abs(by));
    words += by > 0 ? " more than " : " fewer than ";
    words.append(name, 0, name.find(' ') + 1);
    words += std::to_string(chart.rowNumber(row) - 1);
    words += " leaves: ";
    for (const SizeSurvey* s : sizes) {
        if (s != sizes.front()) words += ", ";
        words += std::to_string(s->counts[r].takes);
        words += " against ";
        words += std::to_string(s->counts[r - 1].makes);
        if (sizes.size() > 1) words += " (" + s->size.name + ")";
    }
    words += '.';
}

Finding sizeFinding(const Survey& survey, int row, const char* rule, Severity severity,
                    std::span<const SizeSurvey* const> sizes) {
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.row = survey.chart().rowNumber(row);
    finding.sizes.reserve(sizes.size());
    for (const SizeSurvey* s : sizes) finding.sizes.push_back(s->size.name);
    return finding;
}

Finding partingFinding(const Survey& survey, int row, const Parting& parting, bool miscounts,
                       std::span<const SizeSurvey* const> sizes) {
    Finding finding = sizeFinding(survey, row, "size-edge",
                                  miscounts ? Severity::Fault : Severity::Warning, sizes);
    std::vector<std::string> pairs;
    for (const CompanionPair& pair : parting.pairs) {
        const bool outside = parting.edge == Edge::Start ? pair.increase < parting.column
                                                         : pair.increase > parting.column;
        const std::string increase = "the increase in column " + std::to_string(pair.increase);
        const std::string decrease = "the decrease in column " + std::to_string(pair.decrease);
        pairs.push_back(outside ? decrease + " without " + increase
                                : increase + " without " + decrease);
        finding.columns.push_back(outside ? pair.decrease : pair.increase);
    }
    std::sort(finding.columns.begin(), finding.columns.end());
    finding.columns.erase(std::unique(finding.columns.begin(), finding.columns.end()),
                          finding.columns.end());
    finding.message =
        sizeWords(finding.sizes) + ", which " +
        (parting.edge == Edge::Start ? (finding.sizes.size() == 1 ? "begins" : "begin")
                                     : (finding.sizes.size() == 1 ? "ends" : "end")) +
        " at column " + std::to_string(parting.column) + ", would work " + listing(pairs);
    if (miscounts) {
        finding.message += ": ";
        addCountWords(finding.message, survey, row, sizes);
    } else {
        finding.message += "; the count holds, but the stitches beside it move sideways.";
    }
    return finding;
}

}  // namespace

void checkSizeRows(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    using Group = std::vector<const SizeSurvey*>;  // never empty
    // One sentence, and one mend, holds for sizes that part the same and are off by as many.
    std::map<std::pair<decltype(Parting().key()), std::int64_t>, std::pair<Parting, Group>>
        partings;
    Group miscounting;  // without parting anything
    PairsAcross pairs(chart, row);
    for (const SizeSurvey& s : survey.sizes()) {
        const std::int64_t by = difference(s, row);
        const auto parted = partingsOf(pairs, s, row);
        for (const Parting& parting : parted) {
            auto& entry = partings[{parting.key(), by}];
            entry.first = parting;
            entry.second.push_back(&s);
        }
        if (by != 0 && parted.empty()) miscounting.push_back(&s);
    }
    for (const auto& [key, entry] : partings) {
        findings.push_back(partingFinding(survey, row, entry.first, key.second != 0, entry.second));
    }
    // Those that are off by as many share a finding.
    const auto offBy = [row](const SizeSurvey* s) { return difference(*s, row); };
    std::ranges::stable_sort(miscounting, {}, offBy);
    findings.reserve(findings.size() + miscounting.size());
    for (auto first = miscounting.begin(); first != miscounting.end();) {
        const auto last = std::find_if(first, miscounting.end(), [&](const SizeSurvey* s) {
            return offBy(s) != offBy(*first);
        });
        const std::span sizes(first, last);
        Finding finding = sizeFinding(survey, row, "continuity", Severity::Fault, sizes);
        finding.message.reserve(kUsualLength);  // one for every size may be written at every edit
        finding.message += sizeWords(finding.sizes);
        finding.message += ": ";
        addCountWords(finding.message, survey, row, sizes);
        const Reach& reach = (*first)->paths.reach(row);
        finding.columns = {reach.start, reach.end};
        findings.push_back(std::move(finding));
        first = last;
    }
}

}  // namespace lacewright
