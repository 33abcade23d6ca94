#include <algorithm>

#include "core/chart/edits.h"
#include "core/words/chart_from_rows.h"
#include "core/words/compare.h"
#include "core/words/writer.h"
#include "tests/fuzz/words_fuzz.h"

// What was understood of any text is drawn as a chart, which is in order, and a small chart is
// written again and compared with the text.
namespace {

using lacewright::fuzz::require;

constexpr std::int64_t kMostCells = 600;  // of a chart that is written and compared as well

void requireInOrder(const lacewright::Chart& chart, const lacewright::WrittenPattern& pattern,
                    bool sameSizes) {
    using namespace lacewright;
    require(!frameProblem(chart));
    if (std::int64_t{chart.width} * chart.height() > kMostCells) return;
    const auto written = writeRows(chart);
    require(written || !written.error().message.empty());
    if (written) require(!readWritten(written->text()).hasErrors());
    if (!sameSizes) return;
    const auto compared = compareRows(chart, pattern);
    require(compared || !compared.error().message.empty());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lacewright;
    const auto input = fuzz::readInput(data, size);
    const WrittenPattern& pattern = input.read.pattern;
    if (pattern.rows.empty()) return 0;
    const std::size_t sizes = std::min<std::size_t>(pattern.sizeCount(), 2);
    for (std::size_t i = 0; i < sizes; ++i) {
        const auto drawn = chartFromRows(pattern, i);
        require(drawn || !drawn.error().message.empty());
        if (drawn) requireInOrder(drawn->chart, pattern, sizes == 1);
    }
    if (sizes > 1) {
        const auto all = chartFromRows(pattern);
        if (all) requireInOrder(all->chart, pattern, true);
    }
    return 0;
}
