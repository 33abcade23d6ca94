#include "core/verdict/written_advice.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <variant>

#include "core/base/text.h"
#include "core/check/advice.h"
#include "core/check/mend.h"
#include "core/verdict/straight_chart.h"
#include "core/words/prove.h"

namespace lacewright {
namespace {

constexpr std::size_t kMostMoved = 8;  // stitches named in one mend of a row

bool isAboutCounts(const Finding& finding) {
    return finding.rule == "continuity" || finding.rule == "cast-on" || finding.rule == "closing";
}

// Advice about the straight chart, told in words of the written rows.
class Translator {
 public:
    Translator(const WrittenPattern& pattern, std::size_t size, StraightChart straight)
        : pattern_(pattern), straight_(std::move(straight)), report_(check(straight_.chart)) {
        advise(straight_.chart, report_);
        for (const WrittenRowProof& row : proveWritten(pattern, size).rows) {
            if (row.verdict == RowVerdict::WrongRest) contradicting_.insert(row.number);
        }
    }

    void adviseOn(Finding& finding) const {
        for (const Finding& advised : report_.findings) {
            if (!isAboutCounts(advised) || advised.suspects.empty()) continue;
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

    // The place of a column in the row as worked, from 1; of a gap, where it would be filled.
    static int placeOf(const std::vector<int>& worked, int column, Side side) {
        const auto before = std::count_if(worked.begin(), worked.end(), [&](int other) {
            return side == Side::Wrong ? other > column : other < column;
        });
        return static_cast<int>(before) + 1;
    }

    std::vector<Suspect> translated(const std::vector<Suspect>& suspects) const {
        std::vector<Suspect> result;
        for (const Suspect& suspect : suspects) {
            const auto index = straight_.chart.indexOfRowNumber(suspect.row);
            if (!index) continue;
            const WrittenRow& row = writtenRow(*index);
            const auto worked = workedColumns(straight_.chart, *index, row.side);
            Suspect told = suspect;
            told.row = row.number;
            told.column = placeOf(worked, suspect.column, row.side);
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
            const Result<Chart> mended = applyMend(straight_.chart, mend);
            if (!mended) continue;
            std::vector<std::string> changes;
            Mend told;
            bool clear = true;
            for (int row = 0; row < mended->height(); ++row) {
                if (mended->row(row) == straight_.chart.row(row)) continue;
                const RowChange change = changeIn(*mended, row);
                clear = clear && isClear(change);
                changes.push_back(inWords(change, *mended, row));
                addRedrawn(change, *mended, row, told.redrawn);
            }
            told.label = join(changes, "; ");
            const bool known = std::any_of(result.begin(), result.end(), [&](const Mend& other) {
                return other.label == told.label;
            });
            if (!known && clear) result.push_back(std::move(told));
        }
        return result;
    }

    // What one row becomes: stitches that go and come at one place of the row as worked.
    struct RowChange {
        std::vector<int> before, after;  // columns of the stitches as worked
        std::size_t begin = 0;           // of those, where the rows part
        std::vector<int> gone, come;
    };

    // A change that moves more stitches than a reader compares at a glance is no mend in words.
    static bool isClear(const RowChange& change) {
        return change.gone.size() == change.come.size() ||
               std::max(change.gone.size(), change.come.size()) <= kMostMoved;
    }

    std::string wordsOf(const Chart& chart, int row, const std::vector<int>& columns) const {
        std::vector<std::string> words;
        for (const int column : columns) {
            const Stitch& stitch = (*chart.stitches)[chart.row(row).at(column)];
            const SideWording& side =
                writtenRow(row).side == Side::Wrong ? stitch.wrongSide : stitch.rightSide;
            words.push_back(side.abbreviation.empty() ? stitch.id : side.abbreviation);
        }
        return join(words, ", ");
    }

    // The repeats with what stands between them, counted from the right: repeats are odd.
    std::size_t partOf(int column) const {
        std::size_t part = 0;
        for (const Repeat& repeat : straight_.chart.repeats) {
            if (column >= repeat.right) ++part;
            if (column > repeat.left) ++part;
        }
        return part;
    }

    // "the repeat", or which of several
    std::string repeatInWords(std::size_t index) const {
        const auto& repeats = straight_.chart.repeats;
        return repeats.size() == 1 ? "the repeat" : "repeat " + repeats[index].name;
    }

    // "stitch 3 of the repeat"
    std::string placeInWords(const std::vector<int>& worked, std::size_t at) const {
        const std::size_t here = partOf(worked[at]);
        const auto number =
            1 + std::count_if(worked.begin(), worked.begin() + static_cast<std::ptrdiff_t>(at),
                              [&](int column) { return partOf(column) == here; });
        std::string words = "stitch " + std::to_string(number);
        if (straight_.chart.repeats.empty()) return words;
        if (here % 2 == 1) return words + " of " + repeatInWords(here / 2);
        const bool first = partOf(worked.front()) == here;
        const bool leftwards = worked.front() < worked.back();
        // Of the repeats beside it the one that is worked before, or else the one behind.
        const std::size_t beside = here / 2 - (leftwards != first ? 1 : 0);
        return words + (first ? " before " : " after ") + repeatInWords(beside);
    }

    RowChange changeIn(const Chart& mended, int row) const {
        const Side side = writtenRow(row).side;
        RowChange change{
            workedColumns(straight_.chart, row, side), workedColumns(mended, row, side), 0, {}, {}};
        const auto& before = change.before;
        const auto& after = change.after;
        const auto same = [&](std::size_t a, std::size_t b) {
            return straight_.chart.row(row).at(before[a]) == mended.row(row).at(after[b]);
        };
        const std::size_t shorter = std::min(before.size(), after.size());
        std::size_t begin = 0;
        while (begin < shorter && same(begin, begin)) ++begin;
        std::size_t end = 0;
        while (end < shorter - begin && same(before.size() - 1 - end, after.size() - 1 - end))
            ++end;
        const auto middle = [&](const std::vector<int>& columns) {
            return std::vector<int>(columns.begin() + static_cast<std::ptrdiff_t>(begin),
                                    columns.end() - static_cast<std::ptrdiff_t>(end));
        };
        change.begin = begin;
        change.gone = middle(before);
        change.come = middle(after);
        return change;
    }

    std::string inWords(const RowChange& change, const Chart& mended, int row) const {
        const auto& [before, after, begin, gone, come] = change;
        const std::string place =
            gone.empty() ? placeInWords(after, begin) : placeInWords(before, begin);
        const std::string where = writtenRow(row).label + ": ";
        if (gone.empty()) return where + "put in " + wordsOf(mended, row, come) + " as " + place;
        if (come.empty())
            return where + "leave out " + wordsOf(straight_.chart, row, gone) + ", " + place;
        std::vector<std::string> parts;
        for (const auto& [first, end] : partsThatDiffer(change, mended, row)) {
            const auto part = [first = first, end = end](const std::vector<int>& columns) {
                return std::vector<int>(
                    columns.begin() + static_cast<std::ptrdiff_t>(first),
                    columns.begin() + static_cast<std::ptrdiff_t>(std::min(end, columns.size())));
            };
            parts.push_back(wordsOf(mended, row, part(come)) + " instead of " +
                            wordsOf(straight_.chart, row, part(gone)) + ", " +
                            placeInWords(before, begin + first));
        }
        return where + "work " + join(parts, " and ");
    }

    // From and to, among the stitches that come: where as many go, what stays the same between them
    // is not told.
    std::vector<std::pair<std::size_t, std::size_t>> partsThatDiffer(const RowChange& change,
                                                                     const Chart& mended,
                                                                     int row) const {
        if (change.gone.size() != change.come.size())
            return {{0, std::max(change.gone.size(), change.come.size())}};
        std::vector<std::pair<std::size_t, std::size_t>> parts;
        for (std::size_t i = 0; i < change.come.size(); ++i) {
            if (straight_.chart.row(row).at(change.gone[i]) == mended.row(row).at(change.come[i]))
                continue;
            if (parts.empty() || parts.back().second != i) parts.push_back({i, i});
            parts.back().second = i + 1;
        }
        return parts;
    }

    // The stitches that come and were not there already, by their places in the row as worked.
    void addRedrawn(const RowChange& change, const Chart& mended, int row,
                    std::vector<RedrawnCell>& cells) const {
        for (std::size_t i = 0; i < change.come.size(); ++i) {
            const StitchIndex stitch = mended.row(row).at(change.come[i]);
            const bool kept = change.gone.size() == change.come.size() &&
                              straight_.chart.row(row).at(change.gone[i]) == stitch;
            if (kept) continue;
            cells.push_back({writtenRow(row).number, static_cast<int>(change.begin + i) + 1,
                             (*mended.stitches)[stitch].id});
        }
    }

    const WrittenPattern& pattern_;
    StraightChart straight_;
    Report report_;
    // Rows that leave another number of stitches after their repeat than they say: wrong in
    // themselves, whatever the rows around them do.
    std::set<int> contradicting_;
};

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
    for (Finding& finding : report.findings) {
        if (!isAboutCounts(finding) || finding.severity < Severity::Warning) continue;
        if (const auto& translator = translatorFor(sizeOf(finding))) translator->adviseOn(finding);
    }
    const auto& translator = translatorFor(sizes.front());
    if (!translator) return;
    report.suspects = translator->suspects();
    for (Finding& odd : translator->oddFindings()) report.findings.push_back(std::move(odd));
    std::stable_sort(report.findings.begin(), report.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.row < b.row; });
}

}  // namespace lacewright
