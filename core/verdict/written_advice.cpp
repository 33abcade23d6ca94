#include "core/verdict/written_advice.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <variant>

#include "core/check/advice.h"
#include "core/verdict/empty_repeat.h"
#include "core/verdict/slip_search.h"
#include "core/verdict/straight_chart.h"
#include "core/verdict/written_mends.h"
#include "core/words/prove.h"

namespace lacewright {
namespace {

// Of any severity, and of one size or several: texts are searched for slips size by size.
bool tellsOfCounts(const Finding& finding) {
    return finding.rule == "continuity" || finding.rule == "cast-on" || finding.rule == "closing" ||
           finding.rule == "stated-count";
}

// Advice about the straight chart, told in words of the written rows.
class Translator {
 public:
    Translator(const WrittenPattern& pattern, std::size_t size, StraightChart straight)
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

    void adviseOn(Finding& finding) const {
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

    std::vector<Suspect> suspects() const { return translated(report_.suspects); }

    std::vector<Finding> oddFindings() const {
        std::vector<Finding> findings;
        for (const Finding& odd : report_.findings) {
            if (odd.rule != "symmetry" || isMerelyTexture(odd)) continue;
            Finding finding = odd;
            finding.row = numberOf(odd.row);
            finding.columns.clear();
            finding.suspects = translated(odd.suspects);
            finding.mends = translated(odd.mends);
            if (finding.mends.empty()) continue;
            finding.message = "Beside the other rows this looks out of place: \"" +
                              finding.mends.front().label + "\" would agree with them.";
            findings.push_back(std::move(finding));
        }
        return findings;
    }

 private:
    // Leaves out what is suspected or mended in other rows, if anything is left then.
    void keepToRow(int number, std::vector<Suspect>& suspects, std::vector<Mend>& mends) const {
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
    bool isMerelyTexture(const Finding& odd) const {
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

    const WrittenRow& writtenRow(int rowIndex) const {
        return pattern_.rows[straight_.written[static_cast<std::size_t>(rowIndex)]];
    }
    // Number in the text, of a row by its number in the straight chart.
    int numberOf(int number) const {
        const auto index = straight_.chart.indexOfRowNumber(number);
        return index ? writtenRow(*index).number : number;
    }

    // A finding, or what follows from its cause, is about the row of this number in the text.
    bool concerns(const Finding& advised, int number) const {
        return numberOf(advised.row) == number ||
               std::any_of(advised.folded.begin(), advised.folded.end(),
                           [&](const Finding& folded) { return concerns(folded, number); });
    }

    // The place of a column in the row as worked, from 1; of a gap, where it would be filled. A
    // repeat may be drawn several times.
    int placeOf(int rowIndex, int column) const {
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

    std::vector<Suspect> translated(const std::vector<Suspect>& suspects) const {
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

    std::vector<Mend> translated(const std::vector<Mend>& mends) const {
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

    const WrittenPattern& pattern_;
    std::size_t size_;
    WrittenProof proof_;
    StraightChart straight_;
    Report report_;
    // Rows that leave another number of stitches after their repeat than they say: wrong in
    // themselves, whatever the rows around them do.
    std::set<int> contradicting_;
};

// Those of the findings, and of rows that none of them suspects the odd ones, the likeliest first.
std::vector<Suspect> suspectsOf(const std::vector<Finding>& findings,
                                const std::vector<Suspect>& odd) {
    std::vector<Suspect> all;
    std::set<int> rows;
    for (const Finding& finding : findings) {
        for (const Suspect& suspect : finding.suspects) {
            rows.insert(suspect.row);
            const bool known = std::any_of(all.begin(), all.end(), [&](const Suspect& other) {
                return other.row == suspect.row && other.column == suspect.column;
            });
            if (!known) all.push_back(suspect);
        }
    }
    for (const Suspect& suspect : odd) {
        if (!rows.contains(suspect.row)) all.push_back(suspect);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
    if (all.size() > kMaxSuspectsInAll) all.resize(kMaxSuspectsInAll);
    return all;
}

// A fault or a miscount that goes with one above, whose mend leaves nothing wrong.
bool follows(const Finding& finding, const Finding& first) {
    const bool wrong = finding.severity == Severity::Fault || finding.rule == "stated-count";
    return wrong && (first.sizes.empty() || finding.sizes == first.sizes);
}

// Faults that the same mend takes away are one: the later ones follow from the first.
std::vector<Finding> foldByMend(std::vector<Finding> findings) {
    std::vector<Finding> kept;
    for (Finding& finding : findings) {
        const auto first = std::find_if(kept.begin(), kept.end(), [&](const Finding& earlier) {
            return earlier.severity == Severity::Fault && finding.severity == Severity::Fault &&
                   earlier.sizes == finding.sizes && !earlier.mends.empty() &&
                   !finding.mends.empty() && earlier.mends.front() == finding.mends.front();
        });
        if (first == kept.end()) {
            kept.push_back(std::move(finding));
        } else {
            first->folded.push_back(std::move(finding));
        }
    }
    return kept;
}

}  // namespace

void adviseOnRows(const WrittenPattern& pattern, const std::vector<std::size_t>& sizes,
                  Report& report) {
    // A finding about some sizes is judged for the first of them, all others for the first of all.
    std::map<std::size_t, std::optional<Translator>> known;
    const auto translatorFor = [&](std::size_t size) -> const std::optional<Translator>& {
        const auto [at, isNew] = known.try_emplace(size);
        if (isNew) {
            if (auto straight = straightChart(pattern, size))
                at->second.emplace(pattern, size, std::move(*straight));
        }
        return at->second;
    };
    const auto sizeOf = [&](const Finding& finding) {
        if (finding.sizes.empty()) return sizes.front();
        const auto named =
            std::find(pattern.sizes.begin(), pattern.sizes.end(), finding.sizes.front());
        return named == pattern.sizes.end()
                   ? sizes.front()
                   : static_cast<std::size_t>(named - pattern.sizes.begin());
    };
    std::map<std::size_t, SlipSearch> searches;
    std::vector<Finding> findings;
    std::optional<std::size_t> whole;  // of findings, whose first mend leaves nothing wrong
    for (Finding& next : report.findings) {
        if (whole && follows(next, findings[*whole])) {
            findings[*whole].folded.push_back(std::move(next));
            continue;
        }
        Finding& finding = findings.emplace_back(std::move(next));
        const bool uncountable = finding.rule == "uncountable";
        if (!uncountable && !tellsOfCounts(finding)) continue;
        const std::size_t size = sizeOf(finding);
        const auto explained =
            searches.try_emplace(size, pattern, size).first->second.adviseOn(finding);
        if (explained == SlipSearch::Explained::Whole && finding.severity == Severity::Fault)
            whole = findings.size() - 1;
        if (explained != SlipSearch::Explained::Not) continue;
        if (uncountable) {
            if (const WrittenRow* row = pattern.findRow(finding.row))
                finding.suspects = suspectsInEmptyRepeat(*row, size);
        } else if (finding.severity >= Severity::Warning && finding.rule != "stated-count") {
            if (const auto& translator = translatorFor(size)) translator->adviseOn(finding);
        }
    }
    report.findings = foldByMend(std::move(findings));
    const auto& translator = translatorFor(sizes.front());
    report.suspects =
        suspectsOf(report.findings, translator ? translator->suspects() : std::vector<Suspect>());
    if (!translator) return;
    for (Finding& odd : translator->oddFindings()) report.findings.push_back(std::move(odd));
    std::stable_sort(report.findings.begin(), report.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.row < b.row; });
}

}  // namespace lacewright
