#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/chart/edits.h"
#include "core/words/chart_from_rows.h"
#include "core/words/prove.h"
#include "core/words/reader.h"

// Any text at all is read, its errors told, what was understood proved and drawn as a chart:
// nothing may crash, hang or point outside the text, and a chart is always in order.
namespace {

void require(bool condition) {
    if (!condition) std::abort();
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
        if (drawn) require(!frameProblem(drawn->chart));
    }
    return 0;
}
