#include <algorithm>
#include <ostream>

#include "app/cli/verb.h"
#include "core/base/disk.h"
#include "core/base/text.h"
#include "core/file/chart_file.h"
#include "core/words/compare.h"
#include "core/words/difference_words.h"
#include "core/words/reader.h"

namespace lacewright::cli {
namespace {

constexpr std::size_t kContext = 4;      // stitches shown on either side of a difference
constexpr std::size_t kMostChanges = 6;  // spelled out for one row

// Chart and text one above the other, with the first difference between bars.
void tellContext(std::ostream& out, const RowDifference& row) {
    const std::size_t at = row.firstDifference();
    const std::size_t first = at > kContext ? at - kContext : 0;
    const std::size_t last = std::min(row.stitches.size(), at + kContext + 1);
    std::string chart = "    chart ";
    std::string text = "    text  ";
    for (std::size_t i = first; i < last; ++i) {
        const ContrastedStitch& stitch = row.stitches[i];
        std::string above = stitch.charted.empty() ? "-" : stitch.charted;
        std::string below = stitch.written.empty() ? "-" : stitch.written;
        const std::size_t width = std::max(above.size(), below.size());
        above.resize(width, ' ');
        below.resize(width, ' ');
        const bool here = i == at;
        chart += (here ? " |" : "  ") + above + (here ? "|" : " ");
        text += (here ? " |" : "  ") + below + (here ? "|" : " ");
    }
    out << chart << "\n" << text << "\n";
}

void tellChanges(std::ostream& out, const RowDifference& row) {
    const std::vector<ContrastedStitch> changes = row.changes();
    out << "    smallest change of either: "
        << counted(static_cast<long long>(changes.size()), "stitch", "stitches") << "\n";
    std::size_t told = 0;
    for (const ContrastedStitch& stitch : changes) {
        if (++told > kMostChanges) {
            out << "      and so on\n";
            return;
        }
        out << "      " << changeSentence(stitch) << "\n";
    }
}

void tell(std::ostream& out, const RowDifference& row, const std::string& word) {
    out << differenceSentence(row, word) << "\n";
    if (!areAligned(row)) return;
    tellContext(out, row);
    tellChanges(out, row);
}

}  // namespace

int runCompare(const Call& call) {
    if (call.files.size() != 2)
        return call.refuse("compare takes a chart and a file of written rows.");
    const Result<Chart> chart = loadChart(call.files[0]);
    if (!chart) return call.refuse(chart.error().text());
    const Result<std::string> text = readFile(call.files[1]);
    if (!text) return call.refuse(text.error().text());
    const ReadRows read = readWritten(*text);
    if (read.hasErrors()) {
        for (const ReadMessage& message : read.messages) {
            if (message.error) call.err << rendered(message, *text, call.files[1]) << "\n";
        }
        return kMisuse;
    }
    const std::string name = call.get("--size", "all");
    const std::string size = name == "all" ? "" : name;
    const Result<Comparison> comparison = compareRows(*chart, read.pattern, size);
    if (!comparison) return call.refuse(comparison.error().text());
    if (comparison->same()) {
        call.out << call.files[0] << " and " << call.files[1]
                 << " are the same knitting, proven for " << provenFor(*chart, size) << ".\n";
        return kDone;
    }
    const std::string word = chart->worked == Worked::Flat ? "Row" : "Rnd";
    for (const RowDifference& row : comparison->differences) tell(call.out, row, word);
    call.out << counted(static_cast<long long>(comparison->differences.size()), "row differs",
                        "rows differ")
             << ".\n";
    return kFound;
}

}  // namespace lacewright::cli
