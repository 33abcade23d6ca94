#include <algorithm>

#include "core/words/prove.h"
#include "tests/fuzz/words_fuzz.h"

// What was understood of any text is proved, for the first sizes.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace lacewright;
    const auto input = fuzz::readInput(data, size);
    const WrittenPattern& pattern = input.read.pattern;
    const std::size_t sizes = std::min<std::size_t>(pattern.sizeCount(), 3);
    for (std::size_t i = 0; i < sizes; ++i) {
        const WrittenProof proof = proveWritten(pattern, i);
        fuzz::require(proof.rows.size() == pattern.rows.size());
        fuzz::require(proof.knittable == proof.faulty.empty());
    }
    return 0;
}
