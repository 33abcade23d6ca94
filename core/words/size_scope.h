#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/token_cursor.h"
#include "core/words/written.h"

// Rows that only some sizes work.
namespace lacewright {

// "Sizes M and L only:" before the rows of these sizes, "All sizes:" behind them.
struct SizeScope {
    std::vector<std::size_t> sizes;  // counted from 0; empty: all of them
    bool unknown = false;            // it names a size that the pattern does not have
};

// Nothing, and nothing is passed, when no such words stand here.
std::optional<SizeScope> parseSizeScope(TokenCursor& at, const std::vector<std::string>& names);

// Some row is not worked in every size.
bool differsInRows(const WrittenPattern& pattern);
// The rows that this size works, as a pattern for it.
WrittenPattern rowsOfSize(const WrittenPattern& pattern, std::size_t size);

}  // namespace lacewright
