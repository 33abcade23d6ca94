#pragma once

#include <optional>
#include <string_view>

#include "core/words/token_cursor.h"
#include "core/words/written.h"

namespace lacewright {

// What a further piece of the work begins with.
struct PieceStart {
    std::optional<WrittenCastOn> castOn;  // nothing where the line does not say how many there are
};

// "Cast on 45 (49, 53) sts.", "Sleeve: using smaller needles, CO 45 sts", "Pick up and k 80 sts
// around neck": a line that begins a piece with loops of its own. Stitches cast on beside others,
// "cast on 6 sts at end of row", begin none. `text` is the whole text, `sizes` how many sizes are
// known. Nothing when the line is none of these.
std::optional<PieceStart> pieceStart(const TokenCursor& line, std::string_view text,
                                     std::size_t sizes);

}  // namespace lacewright
