#include "core/check/edge_advice.h"

#include <algorithm>

#include "core/check/edge_mends.h"

namespace lacewright {
namespace {

// What the sizes part at their other edge on the row: a finding for all that part the same.
// Empty when there is a size that parts nothing there.
std::vector<Finding> atOtherEdge(const Finding& finding, const std::vector<Finding>& all) {
    std::vector<Finding> others;
    std::size_t sizes = 0;
    for (const Finding& other : all) {
        if (!isAboutEdge(other) || other.row != finding.row || other.message == finding.message)
            continue;
        Finding same = other;
        std::erase_if(same.sizes, [&](const std::string& size) {
            return std::find(finding.sizes.begin(), finding.sizes.end(), size) ==
                   finding.sizes.end();
        });
        sizes += same.sizes.size();
        if (!same.sizes.empty()) others.push_back(std::move(same));
    }
    return sizes == finding.sizes.size() ? others : std::vector<Finding>{};
}

// Where both edges of a size part companions on a row, and one makes up for the other, only
// both can be mended: in one edit.
std::vector<Mend> bothEdges(const Chart& chart, const Finding& finding,
                            const std::vector<Mend>& here, const std::vector<Finding>& all) {
    std::vector<std::vector<Mend>> there;
    for (const Finding& other : atOtherEdge(finding, all)) {
        there.push_back(edgeMendsFor(chart, other).substitutions);
        if (there.back().empty()) return {};
    }
    if (there.empty()) return {};
    std::vector<Mend> both;
    for (const Mend& one : here) {
        for (const std::size_t way : {std::size_t{0}, std::size_t{1}}) {
            Mend mend = one;
            for (const std::vector<Mend>& ways : there) {
                const Mend& other = ways[std::min(way, ways.size() - 1)];
                mend.label += "; at the other edge f" + other.label.substr(1);  // "For ..."
                mend.steps.insert(mend.steps.end(), other.steps.begin(), other.steps.end());
            }
            mend.reason += "; one edge makes up for the other, so both are mended";
            both.push_back(std::move(mend));
        }
    }
    return both;
}

}  // namespace

void adviseOnEdge(const Chart& chart, MendTrial& trial, Finding& finding,
                  const std::vector<Finding>& all) {
    const EdgeMends proposals = edgeMendsFor(chart, finding);
    finding.mends.clear();
    if (!trial.offerFirst(finding, proposals.substitutions))
        trial.offerFirst(finding, bothEdges(chart, finding, proposals.substitutions, all));
    trial.offerFirst(finding, proposals.moves);
}

}  // namespace lacewright
