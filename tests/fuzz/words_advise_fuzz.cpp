#include <cmath>

#include "core/verdict/written_advice.h"
#include "core/verdict/written_report.h"
#include "tests/fuzz/words_fuzz.h"

// What is reported of any text is advised on, for the first size.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lacewright;
    const auto input = fuzz::readInput(data, size);
    if (input.read.hasErrors()) return 0;
    Report report = reportOnRows(input.read, {0}).report;
    adviseOnRows(input.read.pattern, {0}, report);
    for (const Suspect& suspect : report.suspects)
        fuzz::require(suspect.column >= 1 && std::isfinite(suspect.weight));
    for (const Finding& finding : report.findings) {
        for (const Mend& mend : finding.mends) fuzz::require(!mend.label.empty());
    }
    return 0;
}
