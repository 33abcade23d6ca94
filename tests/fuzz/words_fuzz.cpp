#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/chart/edits.h"
#include "core/words/chart_from_rows.h"
#include "core/words/compare.h"
#include "core/words/prove.h"
#include "core/words/reader.h"
#include "core/words/writer.h"

// Any text at all is read, its errors told, what was understood proved, drawn as a chart, written
// again and compared: nothing may crash, hang or point outside the text, and a chart is always in
// order.
namespace {

void require(bool condition) {
    if (!condition) std::abort();
}

constexpr std::int64_t kMostCells = 4000;  // of a chart that is written and compared as well

// The chart is in order; written again it reads without errors; held against the text it came from
// it gives an answer.
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
    const std::string text(reinterpret_cast<const char*>(data), size);
    const ReadRows read = readWritten(text);
    for (const ReadMessage& message : read.messages) {
        require(message.place.offset + message.place.length <= text.size());
        require(message.place.line >= 1 && message.place.column >= 1);
        require(!rendered(message, text, "text").empty());
    }
    int before = 0;
    for (const WrittenRow& row : read.pattern.rows) {
        require(row.number > before);
        before = row.number;
    }
    const std::size_t sizes = std::min<std::size_t>(read.pattern.sizeCount(), 3);
    for (std::size_t i = 0; i < sizes; ++i) {
        const WrittenProof proof = proveWritten(read.pattern, i);
        require(proof.rows.size() == read.pattern.rows.size());
        require(proof.knittable == proof.faulty.empty());
        const auto drawn = chartFromRows(read.pattern, i);
        require(drawn || !drawn.error().message.empty());
        if (drawn) requireInOrder(drawn->chart, read.pattern, sizes == 1);
    }
    if (sizes > 1) {
        const auto all = chartFromRows(read.pattern);
        if (all) requireInOrder(all->chart, read.pattern, true);
    }
    return 0;
}
