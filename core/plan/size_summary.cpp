#include "core/plan/size_summary.h"

#include <algorithm>

#include "core/check/parting.h"
#include "core/count/tally.h"
#include "core/plan/gauge.h"

namespace lacewright {
namespace {

std::int64_t plainNumber(const AffineForm& form) {
    return form.at([](Variable) { return 1; });
}

RowForms formsOn(const Chart& chart, const Size& size, int row) {
    return formsOf(chart, row, size, pathOn(chart, row, &size), timesOf(chart, size));
}

std::vector<PartedByEdge> partedBy(const Chart& chart, const Size& size) {
    std::vector<PartedByEdge> parted;
    for (int row = 0; row < chart.height(); ++row) {
        PairsAcross pairs(chart, row);
        const Reach reach = size.on(row);
        for (const Edge edge : {Edge::Start, Edge::End}) {
            const int right = edge == Edge::Start ? reach.start - 1 : reach.end;
            for (const CompanionPair& pair : pairs.partedAt(right)) {
                if (!isSubstituted(size, row, edge, pair))
                    parted.push_back({edge, chart.rowNumber(row), pair});
            }
        }
    }
    return parted;
}

std::string letterAt(const Chart& chart, int column) {
    const Point* point = chart.pointAt(column);
    return point != nullptr ? point->name : std::string();
}

}  // namespace

std::vector<SizeSummary> summarizeSizes(const Chart& chart) {
    std::vector<SizeSummary> summaries;
    for (const Size& size : chart.sizes) {
        SizeSummary summary;
        summary.name = size.name;
        summary.reach = size.reach;
        summary.startPoint = letterAt(chart, size.reach.start);
        summary.endPoint = letterAt(chart, size.reach.end);
        for (const Repeat& repeat : chart.repeats) {
            const auto times = size.times.find(repeat.name);
            summary.times.emplace_back(repeat.name, times == size.times.end() ? 1 : times->second);
        }
        summary.first = plainNumber(formsOn(chart, size, 0).takes);
        summary.last = plainNumber(formsOn(chart, size, chart.height() - 1).makes);
        if (chart.gauge.stitches > 0) {
            const int edges = 2 * chart.grading.edgeStitches;
            summary.cm = lengthOf(static_cast<int>(summary.first) + edges, chart.gauge.stitches);
            summary.lastCm = lengthOf(static_cast<int>(summary.last) + edges, chart.gauge.stitches);
        }
        summary.parted = partedBy(chart, size);
        summaries.push_back(std::move(summary));
    }
    return summaries;
}

}  // namespace lacewright
