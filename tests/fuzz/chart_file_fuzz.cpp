#include <cstddef>
#include <cstdint>
#include <iostream>

#include "core/file/chart_text.h"
#include "tests/fuzz/insist.h"

// Whatever bytes come in: they are refused with a sentence, or they are a chart whose text reads
// back as that same text.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lacewright;
    using fuzz::insist;
    const Result<Chart> chart = readChart({reinterpret_cast<const char*>(data), size}, "fuzz");
    if (!chart) {
        const Error& error = chart.error();
        insist(error.message.ends_with('.') && !error.place.empty(),
               "The refusal is no placed sentence.");
        return 0;
    }
    const std::string text = writeChart(*chart);
    const Result<Chart> again = readChart(text, "written");
    if (!again) std::cerr << again.error().text() << "\n" << text;
    insist(again.has_value(), "The written text is refused.");
    insist(writeChart(*again) == text, "Writing twice gives two texts.");
    return 0;
}
