#include "core/file/stitch_text.h"

#include <iterator>
#include <set>

#include "core/base/text.h"
#include "core/file/file_limits.h"
#include "core/file/object_writer.h"
#include "core/file/refusal.h"
#include "core/file/spellings.h"
#include "core/file/stitch_id.h"

namespace lacewright {
namespace {

constexpr Range kLoops = {"a number of loops", 0, kMaxLoops};
constexpr Range kSpan = {"a number of cells", 1, kMaxSpan};
// A pen may be set down outside the cells, but not far.
constexpr Range kCoordinate = {"a place in cell units", -kCellUnits, kCellUnits*(kMaxSpan + 1)};

SideWording readWording(const JsonValue& value) {
    Fields fields(value);
    SideWording wording;
    wording.abbreviation = fields.text("abbreviation");
    wording.instruction = fields.text("instruction");
    wording.extras = fields.extras();
    return wording;
}

// Path data goes into SVG as it stands, so nothing else gets in.
std::string readTail(const JsonValue& value) {
    const std::string tail = nonEmptyText(value);
    if (tail.find_first_not_of("lhvcqaz0123456789.,- ") == std::string::npos) return tail;
    refuse(value, "Found " + shown(value) +
                      "; expected SVG path data of the commands l h v c q a z and plain numbers.");
}

GlyphStroke readStroke(const JsonValue& value) {
    Fields fields(value);
    const JsonValue& at = fields.need("at", "a list of two numbers");
    const JsonList& place = listOf(at, 2);
    if (place.size() != 2) {
        refuse(at, "Found " + counted(std::ssize(place), "item", "items") +
                       "; expected two numbers, x and y.");
    }
    GlyphStroke stroke;
    stroke.x = wholeNumber(place[0], kCoordinate);
    stroke.y = wholeNumber(place[1], kCoordinate);
    stroke.tail = readTail(fields.need("tail", "SVG path data"));
    stroke.filled = fields.flag("filled");
    stroke.extras = fields.extras();
    return stroke;
}

Stitch readStitch(const JsonValue& value) {
    Fields fields(value);
    Stitch stitch;
    stitch.id = fields.needText("id");
    checkStitchId(stitch.id, *fields.find("id"));
    stitch.name = fields.text("name");
    stitch.takes = fields.number("takes", kLoops);
    stitch.makes = fields.number("makes", kLoops);
    stitch.span = fields.number("span", kSpan, 1);
    stitch.lean = fields.choice("lean", kLeans);
    stitch.kind = fields.choice("kind", kStitchKinds);
    stitch.mirror = fields.text("mirror");
    if (const JsonValue* side = fields.find("right")) stitch.rightSide = readWording(*side);
    if (const JsonValue* side = fields.find("wrong")) stitch.wrongSide = readWording(*side);
    for (const JsonValue& stroke : fields.list("glyph", kMaxStrokes)) {
        stitch.glyph.push_back(readStroke(stroke));
    }
    stitch.shaded = fields.flag("shaded");
    stitch.source = fields.text("source");
    stitch.extras = fields.extras();
    return stitch;
}

void writeWording(ObjectWriter& out, std::string_view name, const SideWording& wording) {
    if (wording == SideWording{}) return;
    ObjectWriter side;
    side.textUnlessEmpty("abbreviation", wording.abbreviation);
    side.textUnlessEmpty("instruction", wording.instruction);
    side.extras(wording.extras);
    out.raw(name, side.onOneLine());
}

std::string writeStroke(const GlyphStroke& stroke) {
    ObjectWriter out;
    out.raw("at", listOnOneLine({std::to_string(stroke.x), std::to_string(stroke.y)}));
    out.text("tail", stroke.tail);
    out.trueOrNothing("filled", stroke.filled);
    out.extras(stroke.extras);
    return out.onOneLine();
}

std::string writeStitch(const Stitch& stitch) {
    ObjectWriter out;
    out.text("id", stitch.id);
    out.textUnlessEmpty("name", stitch.name);
    out.number("takes", stitch.takes);
    out.number("makes", stitch.makes);
    out.numberUnless("span", stitch.span, 1);
    if (stitch.lean != Lean::None) out.text("lean", spelt(kLeans, stitch.lean));
    if (stitch.kind != StitchKind::Plain) out.text("kind", spelt(kStitchKinds, stitch.kind));
    out.textUnlessEmpty("mirror", stitch.mirror);
    writeWording(out, "right", stitch.rightSide);
    writeWording(out, "wrong", stitch.wrongSide);
    if (!stitch.glyph.empty()) {
        std::vector<std::string> strokes;
        for (const GlyphStroke& stroke : stitch.glyph) strokes.push_back(writeStroke(stroke));
        out.raw("glyph", listOnOneLine(strokes));
    }
    out.trueOrNothing("shaded", stitch.shaded);
    out.textUnlessEmpty("source", stitch.source);
    out.extras(stitch.extras);
    return out.onOneLine();
}

}  // namespace

std::vector<Stitch> readOwnStitches(std::span<const JsonValue> list) {
    std::vector<Stitch> own;
    std::set<std::string> ids;
    for (const JsonValue& value : list) {
        own.push_back(readStitch(value));
        if (ids.insert(own.back().id).second) continue;
        refuse(value, "A second stitch has the id " + quoteJson(own.back().id) +
                          "; expected ids that differ.");
    }
    return own;
}

std::vector<std::string> writeOwnStitches(const StitchCatalogue& stitches) {
    const StitchCatalogue& builtIn = *builtInStitches();
    std::vector<std::string> definitions;
    if (&stitches == &builtIn) return definitions;
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        if (stitch.kind == StitchKind::Unknown) continue;
        const auto place = builtIn.find(stitch.id);
        if (!place || !(builtIn[*place] == stitch)) definitions.push_back(writeStitch(stitch));
    }
    return definitions;
}

}  // namespace lacewright
