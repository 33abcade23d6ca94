#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/token_cursor.h"
#include "core/words/vocabulary.h"
#include "core/words/written.h"

// Abbreviations that a pattern explains before its rows: `definitions` in "The grammar of written
// rows" of DEVELOPERS.md.
namespace lacewright {

// Opens a list of abbreviations; passes its heading, so that what follows may be a definition.
bool parseDefinitionsOpening(TokenCursor& at);

// The stitches that this line defines and no vocabulary knows, or knows with other counts: "DD = sl
// 2 tog kwise, k1, p2sso". Words for what is no stitch define nothing. Empty optional: the line is
// no definition. `inList`: a colon or a dash will do for "=".
std::optional<std::vector<OwnStitch>> parseDefinitions(const TokenCursor& line, bool inList,
                                                       Wording wording,
                                                       const std::vector<OwnStitch>& earlier);

}  // namespace lacewright
