#include <cmath>
#include <cstddef>
#include <cstdint>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "core/file/chart_text.h"
#include "tests/fuzz/insist.h"

namespace {

constexpr int kMostCells = 600;  // larger charts are no other charts, only slower

}  // namespace

// Any chart that can be read is checked and advised on: what is told of it lies in the chart, and
// mends can be applied.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lacewright;
    using fuzz::insist;
    const Result<Chart> chart = readChart({reinterpret_cast<const char*>(data), size}, "fuzz");
    if (!chart || chart->width * chart->height() > kMostCells) return 0;
    Report report = check(*chart);
    insist(report.knittable != report.hasFault(), "Knittable and at fault.");
    advise(*chart, report);
    for (const Finding& finding : report.findings) {
        insist(finding.message.ends_with('.'), "A finding is no sentence.");
        insist(finding.row == 0 || chart->indexOfRowNumber(finding.row).has_value(),
               "A finding lies outside the chart.");
        for (const int column : finding.columns)
            insist(column >= 1 && column <= chart->width, "A column lies outside the chart.");
        for (const Mend& mend : finding.mends)
            insist(applyMend(*chart, mend).has_value(), "A mend cannot be applied.");
    }
    for (const Suspect& suspect : report.suspects)
        insist(
            suspect.column >= 1 && suspect.column <= chart->width && std::isfinite(suspect.weight),
            "A suspect lies outside the chart.");
    return 0;
}
