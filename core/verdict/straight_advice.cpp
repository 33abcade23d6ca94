#include "core/verdict/straight_advice.h"

#include <algorithm>
#include <variant>

#include "core/check/advice.h"
#include "core/verdict/placed_row.h"
#include "core/verdict/written_mends.h"

namespace lacewright {

bool tellsOfCounts(const Finding& finding) {
    return finding.rule == "continuity" || finding.rule == "cast-on" || finding.rule == "closing" ||
           finding.rule == "stated-count";
}

StraightAdvice::StraightAdvice(const WrittenPattern& pattern, std::size_t size,
                               StraightChart straight)
    : pattern_(pattern),
      size_(size),
      proof_(proveWritten(pattern, size)),
      straight_(std::move(straight)),
      report_(check(straight_.chart)) {
    advise(straight_.chart, report_);
    for (const WrittenRowProof& row : proof_.rows) {
        if (row.verdict == RowVerdict::WrongRest) contradicting_.insert(row.number);
    }
}

void StraightAdvice::adviseOn(Finding& finding) const {
    for (const Finding& advised : report_.findings) {
        if (!tellsOfCounts(advised) || advised.suspects.empty()) continue;
        const bool closing = finding.rule == "closing";
        if (closing != (advised.rule == "closing")) continue;
        if (!closing && !concerns(advised, finding.row)) continue;
        std::vector<Suspect> suspects = advised.suspects;
        std::vector<Mend> mends = advised.mends;
        if (contradicting_.contains(finding.row)) keepToRow(finding.row, suspects, mends);
        finding.suspects = translated(suspects);
        finding.mends = translated(mends);
        return;
    }
}

namespace {

// Where nothing miscounts, a stitch or two may be mistaken; that a whole stretch stands one further
// on takes two slips that make up for one another.
bool movesStitches(const Mend& mend) {
    constexpr std::size_t kMost = 2;
    return mend.redrawn.size() > kMost;
}

}  // namespace

std::vector<Finding> StraightAdvice::oddFindings() const {
    std::vector<Finding> findings;
    for (const Finding& odd : report_.findings) {
        if (odd.rule != "symmetry" || isMerelyTexture(odd)) continue;
        Finding finding = odd;
        finding.row = numberOf(odd.row);
        finding.columns.clear();
        finding.suspects = translated(odd.suspects);
        finding.mends = translated(odd.mends);
        if (finding.mends.empty() || movesStitches(finding.mends.front())) continue;
        finding.message = "Beside the other rows this looks out of place: \"" +
                          finding.mends.front().label + "\" would agree with them.";
        findings.push_back(std::move(finding));
    }
    return findings;
}

// Leaves out what is suspected or mended in other rows, if anything is left then.
void StraightAdvice::keepToRow(int number, std::vector<Suspect>& suspects,
                               std::vector<Mend>& mends) const {
    const auto elsewhere = [&](int rowIndex) { return writtenRow(rowIndex).number != number; };
    std::vector<Suspect> own = suspects;
    std::erase_if(own, [&](const Suspect& suspect) { return numberOf(suspect.row) != number; });
    if (own.empty()) return;
    double sum = 0;
    for (const Suspect& suspect : own) sum += suspect.weight;
    for (Suspect& suspect : own) suspect.weight /= sum;
    suspects = std::move(own);
    std::erase_if(mends, [&](const Mend& mend) {
        return std::any_of(mend.steps.begin(), mend.steps.end(), [&](const MendStep& step) {
            if (const auto* replaced = std::get_if<ReplaceStitch>(&step))
                return elsewhere(replaced->row);
            const auto* rewritten = std::get_if<RewriteRow>(&step);
            return rewritten != nullptr && elsewhere(rewritten->row);
        });
    });
}

// Only stitches that shape nothing would change: knit against purl or a slipped edge stitch is
// a matter of texture, and texts have more of it than a symmetry foretells.
bool StraightAdvice::isMerelyTexture(const Finding& odd) const {
    const Chart& chart = straight_.chart;
    if (odd.mends.empty()) return false;
    const auto& steps = odd.mends.front().steps;
    return std::all_of(steps.begin(), steps.end(), [&](const MendStep& step) {
        const auto* replaced = std::get_if<ReplaceStitch>(&step);
        if (replaced == nullptr) return false;
        const Stitch& drawn = (*chart.stitches)[chart.row(replaced->row).at(replaced->column)];
        return drawn.net() == 0 && drawn.takes == 1;
    });
}

const WrittenRow& StraightAdvice::writtenRow(int rowIndex) const {
    return pattern_.rows[straight_.written[static_cast<std::size_t>(rowIndex)]];
}
// Number in the text, of a row by its number in the straight chart.
int StraightAdvice::numberOf(int number) const {
    const auto index = straight_.chart.indexOfRowNumber(number);
    return index ? writtenRow(*index).number : number;
}

// A finding, or what follows from its cause, is about the row of this number in the text.
bool StraightAdvice::concerns(const Finding& advised, int number) const {
    return numberOf(advised.row) == number ||
           std::any_of(advised.folded.begin(), advised.folded.end(),
                       [&](const Finding& folded) { return concerns(folded, number); });
}

// The place of a column in the row as worked, from 1; of a gap, where it would be filled. A
// repeat may be drawn several times.
int StraightAdvice::placeOf(int rowIndex, int column) const {
    const std::size_t index = straight_.written[static_cast<std::size_t>(rowIndex)];
    const Side side = pattern_.rows[index].side;
    const auto worked = workedColumns(straight_.chart, rowIndex, side);
    const auto before =
        static_cast<std::size_t>(std::count_if(worked.begin(), worked.end(), [&](int other) {
            return side == Side::Wrong ? other > column : other < column;
        }));
    const auto placed = placedRow(pattern_, index, proof_, size_);
    const auto places = placed ? placed->unfolded(worked.size()) : std::nullopt;
    return static_cast<int>(places && before < places->size() ? (*places)[before] : before) + 1;
}

std::vector<Suspect> StraightAdvice::translated(const std::vector<Suspect>& suspects) const {
    std::vector<Suspect> result;
    for (const Suspect& suspect : suspects) {
        const auto index = straight_.chart.indexOfRowNumber(suspect.row);
        if (!index) continue;
        const WrittenRow& row = writtenRow(*index);
        Suspect told = suspect;
        told.row = row.number;
        told.column = placeOf(*index, suspect.column);
        const auto same = std::find_if(result.begin(), result.end(), [&](const Suspect& s) {
            return s.row == told.row && s.column == told.column;
        });
        if (same == result.end()) result.push_back(std::move(told));
    }
    return result;
}

std::vector<Mend> StraightAdvice::translated(const std::vector<Mend>& mends) const {
    std::vector<Mend> result;
    for (const Mend& mend : mends) {
        std::optional<Mend> told = mendInWords(pattern_, straight_, mend);
        if (!told) continue;
        const bool known = std::any_of(result.begin(), result.end(), [&](const Mend& other) {
            return other.label == told->label;
        });
        if (!known) result.push_back(std::move(*told));
    }
    return result;
}

}  // namespace lacewright
