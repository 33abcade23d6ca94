#include "tests/support/source_tree.h"

namespace lacewright::test {

std::string inSourceTree(std::string_view path) {
    return std::string(LACEWRIGHT_SOURCE_DIR "/").append(path);
}

}  // namespace lacewright::test
