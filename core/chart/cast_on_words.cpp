#include "core/chart/cast_on_words.h"

#include "core/base/text.h"

namespace lacewright {

std::string castOnText(const CastOn& castOn) {
    if (castOn.multiple == 0) return counted(castOn.plus, "stitch", "stitches");
    std::string text = "a multiple of " + std::to_string(castOn.multiple);
    if (castOn.plus > 0) text += " plus " + std::to_string(castOn.plus);
    if (castOn.plus < 0) text += " minus " + std::to_string(-castOn.plus);
    return text;
}

}  // namespace lacewright
