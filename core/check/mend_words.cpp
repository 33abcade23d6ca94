#include "core/check/mend_words.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/chart/cast_on_words.h"
#include "core/check/companions.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

const Stitch& stitchAt(const Chart& chart, int rowIndex, int column) {
    const Row& row = chart.row(rowIndex);
    return (*chart.stitches)[row.at(row.ownerOf(column))];
}

// What a cell elsewhere in the chart says for it.
std::string symmetryReason(const Chart& chart, const Repair::Cell& cell, const Beliefs& beliefs) {
    const auto letter = beliefs.alphabet().letterIn(cell.row, cell.stitch);
    if (letter == Alphabet::kNone || !beliefs.grid().holds(cell.row)) return {};
    const auto witnesses = beliefs.witnesses(cell.row, cell.column, letter);
    if (witnesses.empty()) return {};
    const auto& witness = witnesses.front();
    const int row = witness.place.y + beliefs.grid().firstRow();
    const int column = witness.place.x + 1;
    const std::string place =
        row == cell.row ? "column " + std::to_string(column) : placeInWords(chart, row, column);
    const std::string holds = stitchInWords(stitchAt(chart, row, column));
    return (witness.mirror ? "its mirror cell, " + place + "," : place + " of the same figure") +
           " is " + holds;
}

// Shaping that finds its companion again.
std::string companionReason(const Chart& chart, const Chart& mended, const Repair::Cell& cell) {
    const auto before = orphansOn(chart, cell.row);
    const auto after = orphansOn(mended, cell.row);
    for (const int column : before) {
        if (column == cell.column || std::find(after.begin(), after.end(), column) != after.end())
            continue;
        return "the " + stitchAt(chart, cell.row, column).name + " in column " +
               std::to_string(column) + " then has its companion";
    }
    return {};
}

}  // namespace

std::string stitchInWords(const Stitch& stitch) {
    return (stitch.kind == StitchKind::YarnOver ? "a " : "") + stitch.name;
}

std::string placeInWords(const Chart& chart, int rowIndex, int column) {
    return (chart.worked == Worked::InTheRound ? "round " : "row ") +
           std::to_string(chart.rowNumber(rowIndex)) + ", column " + std::to_string(column);
}

std::string labelOf(const Chart& chart, const Repair& repair) {
    if (repair.castOn) return "Cast on " + castOnText(*repair.castOn);
    std::vector<std::string> parts;
    for (const Repair::Cell& cell : repair.cells) {
        const std::string stitch = stitchInWords((*chart.stitches)[cell.stitch]);
        const std::string place = placeInWords(chart, cell.row, cell.column);
        std::string part;
        if (!repair.shift) {
            part.append("draw ").append(stitch).append(" in ").append(place);
        } else if (repair.shift->putIn) {
            part.append("put ").append(stitch).append(" in at ").append(place).append(
                ", moving the rest to the left");
        } else {
            part.append("take ")
                .append(stitch)
                .append(" out of ")
                .append(place)
                .append(", moving the rest to the right");
        }
        parts.push_back(std::move(part));
    }
    return capital(join(parts, " and "));
}

std::string reasonFor(const Chart& chart, const Chart& mended, const Repair& repair,
                      const Beliefs* beliefs) {
    const Repair::Cell& cell = repair.cells.front();
    std::string reason;
    if (beliefs != nullptr && !repair.shift) reason = symmetryReason(chart, cell, *beliefs);
    if (reason.empty() && !repair.shift) reason = companionReason(chart, mended, cell);
    return capital(reason);
}

std::string reasonForCastOn(const Chart& chart) {
    return "what " + lowerAscii(rowName(chart, 0)) + " uses up as drawn";
}

}  // namespace lacewright
