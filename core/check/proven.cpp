#include "core/check/proven.h"

namespace lacewright {

std::string provenSentence(bool hasSizes, bool hasRepeats) {
    if (!hasRepeats) {
        return hasSizes ? "Proven for every size."
                        : "Proven: every row takes what the row below made.";
    }
    return hasSizes ? "Proven for every size and any number of repeats."
                    : "Proven for any number of repeats.";
}

std::string provenSentence(const Chart& chart, const Report& report) {
    const bool repeats = !chart.repeats.empty();
    if (repeats && !report.anyTimes)
        return "Proven with the repeats worked as often as the notes say.";
    return provenSentence(!chart.sizes.empty(), repeats);
}

}  // namespace lacewright
