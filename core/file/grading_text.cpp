#include "core/file/grading_text.h"

#include <vector>

#include "core/file/fields.h"
#include "core/file/layout_text.h"
#include "core/file/object_writer.h"
#include "core/file/refusal.h"

namespace lacewright {
namespace {

constexpr Range kPieces = {"a number of pieces", 1, kMaxPieces};
constexpr Range kEdgeStitches = {"a number of stitches", 0, kMaxWidth};

Shoulder readShoulder(const JsonValue& value, const Chart& chart) {
    Fields fields(value);
    Shoulder shoulder;
    shoulder.row = readRowNumber(fields.need("row", "the number of a drawn row"), chart);
    shoulder.right = fields.number("right", columnsOf(chart));
    shoulder.left = fields.number("left", columnsOf(chart));
    if (shoulder.right > shoulder.left) {
        refuse(*fields.find("right"),
               "The right edge is in column " + std::to_string(shoulder.right) +
                   " and the left edge in column " + std::to_string(shoulder.left) +
                   "; expected the right one not beyond the left one.");
    }
    shoulder.extras = fields.extras();
    return shoulder;
}

std::optional<double> readEase(Fields& fields, std::string_view name) {
    const JsonValue* found = fields.find(name);
    if (found == nullptr) return std::nullopt;
    return signedNumber(*found, static_cast<int>(kMaxEase));
}

std::string writeShoulder(const Shoulder& shoulder, const Chart& chart) {
    ObjectWriter out;
    out.number("row", chart.rowNumber(shoulder.row));
    out.number("right", shoulder.right);
    out.number("left", shoulder.left);
    out.extras(shoulder.extras);
    return out.onOneLine();
}

}  // namespace

Grading readGrading(const JsonValue& value, const Chart& chart) {
    Fields fields(value);
    Grading grading;
    grading.rising = fields.flag("rising");
    grading.halved = fields.flag("halved");
    grading.pieces = fields.number("pieces", kPieces, 1);
    grading.edgeStitches = fields.number("edgeStitches", kEdgeStitches, 0);
    grading.leastEase = readEase(fields, "leastEase");
    grading.mostEase = readEase(fields, "mostEase");
    if (grading.leastEase && grading.mostEase && *grading.leastEase > *grading.mostEase) {
        const JsonValue& least = *fields.find("leastEase");
        refuse(least, "Found " + shown(least) +
                          "; expected a least ease of not more than the most, " +
                          shown(*fields.find("mostEase")) + ".");
    }
    for (const JsonValue& item : fields.list("shoulders", kMaxShoulders))
        grading.shoulders.push_back(readShoulder(item, chart));
    grading.extras = fields.extras();
    return grading;
}

std::string writeGrading(const Grading& grading, const Chart& chart) {
    ObjectWriter out;
    out.trueOrNothing("rising", grading.rising);
    out.trueOrNothing("halved", grading.halved);
    out.numberUnless("pieces", grading.pieces, 1);
    out.numberUnless("edgeStitches", grading.edgeStitches, 0);
    if (grading.leastEase) out.decimal("leastEase", *grading.leastEase);
    if (grading.mostEase) out.decimal("mostEase", *grading.mostEase);
    std::vector<std::string> shoulders;
    for (const Shoulder& shoulder : grading.shoulders)
        shoulders.push_back(writeShoulder(shoulder, chart));
    if (!shoulders.empty()) out.raw("shoulders", listOnOneLine(shoulders));
    out.extras(grading.extras);
    return out.onOneLine();
}

}  // namespace lacewright
