#include "tests/fuzz/words_fuzz.h"

// Any text at all is read: nothing may crash, hang or point outside the text.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    lacewright::fuzz::readInput(data, size);
    return 0;
}
