#include "core/check/proven.h"

namespace lacewright {

std::string provenSentence(const Chart& chart, const Report& report) {
    const bool sizes = !chart.sizes.empty();
    if (chart.repeats.empty()) {
        return sizes ? "Proven for every size."
                     : "Proven: every row takes what the row below made.";
    }
    if (!report.anyTimes) return "Proven with the repeats worked as often as the notes say.";
    return sizes ? "Proven for every size and any number of repeats."
                 : "Proven for any number of repeats.";
}

}  // namespace lacewright
