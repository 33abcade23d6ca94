#include "core/words/cut_rows.h"

#include <algorithm>
#include <set>

#include "core/words/box_counts.h"

namespace lacewright {

namespace {

using Stitches = std::vector<RowStitch>;

void add(Stitches& to, const Stitches& stitches, std::int64_t times) {
    for (std::int64_t i = 0; i < times && to.size() < kMostRowStitches; ++i)
        to.insert(to.end(), stitches.begin(), stitches.end());
}

std::int64_t loopsOf(const Stitches& stitches, int RowStitch::*loops) {
    std::int64_t sum = 0;
    for (const RowStitch& stitch : stitches) sum += stitch.*loops;
    return sum;
}

// Loops before the first box, behind it up to the next, and so on; one more than there are boxes.
std::vector<std::int64_t> gapsOf(const BoxRow& row, int RowStitch::*loops) {
    std::vector<std::int64_t> gaps = {loopsOf(row.before, loops)};
    for (const RowBox& box : row.boxes) gaps.push_back(loopsOf(box.after, loops));
    return gaps;
}

// Puts together a row from the right edge.
class RowBuilder {
 public:
    explicit RowBuilder(std::size_t boxes) { row_.boxes.resize(boxes); }

    Stitches& beside() { return next_ == 0 ? row_.before : row_.boxes[next_ - 1].after; }
    std::size_t gap() const { return next_; }
    // False when the row has passed this box.
    bool addBox(std::size_t box, const RowPart& part, std::int64_t each) {
        if (box < next_) return false;
        next_ = box + 1;
        add(row_.boxes[box].stitches, part.stitches, each);
        row_.boxes[box].starred = part.starred;
        return true;
    }
    BoxRow take() { return std::move(row_); }

 private:
    BoxRow row_;
    std::size_t next_ = 0;  // box that may come
};

class Cutter {
 public:
    Cutter(const WrittenPattern& pattern, const WrittenProof& proof, std::size_t size)
        : pattern_(pattern), proof_(proof), size_(size), counts_(!pattern.counts.empty()) {}

    Result<std::optional<CutRows>> run() {
        for (std::size_t i = 0; i < pattern_.rows.size(); ++i) {
            Result<WorkedRow> row = workedRow(pattern_, pattern_.rows[i], proof_.rows[i], size_);
            if (!row) return row.error();
            counts_.settle(proof_.rows[i]);
            for (RowPart& part : row->parts) {
                part.times = counts_.inBoxes(part.times);
                if (!noteShift(part)) return std::optional<CutRows>();
            }
            if (row->side == Side::Wrong) {
                std::reverse(row->parts.begin(), row->parts.end());
                for (RowPart& part : row->parts)
                    std::reverse(part.stitches.begin(), part.stitches.end());
            }
            worked_.push_back(std::move(*row));
        }
        findBoxes();
        if (!cutAll()) return std::optional<CutRows>();
        return std::optional(std::move(cut_));
    }

 private:
    // False when the part shrinks as a count grows.
    bool noteShift(const RowPart& part) {
        const auto& terms = part.times.terms();
        if (terms.empty()) return true;
        std::int64_t least = part.times.constant();
        for (const auto& term : terms) {
            if (term.coefficient < 0) return false;
            least += term.coefficient * cut_.shiftOf(term.variable);
        }
        if (least < 0) {
            const auto& first = terms.front();
            cut_.shift[first.variable] += (-least + first.coefficient - 1) / first.coefficient;
        }
        return true;
    }

    // The boxes from the right, as they stand in the row that tells most of them apart.
    void findBoxes() {
        for (const WorkedRow& row : worked_) {
            std::vector<Variable> apart;
            for (const RowPart& part : row.parts) {
                if (part.times.terms().size() == 1)
                    apart.push_back(part.times.terms().front().variable);
            }
            const bool once = std::set<Variable>(apart.begin(), apart.end()).size() == apart.size();
            if (once && apart.size() > cut_.counts.size()) cut_.counts = std::move(apart);
        }
        for (const WorkedRow& row : worked_) {
            for (const RowPart& part : row.parts) {
                for (const auto& term : part.times.terms()) {
                    if (std::find(cut_.counts.begin(), cut_.counts.end(), term.variable) ==
                        cut_.counts.end())
                        cut_.counts.push_back(term.variable);
                }
            }
        }
    }

    static bool tellsApart(const WorkedRow& row) {
        return std::all_of(row.parts.begin(), row.parts.end(),
                           [](const RowPart& part) { return part.times.terms().size() <= 1; });
    }

    // Rows that tell the boxes apart first, then the others by their neighbours.
    bool cutAll() {
        cut_.rows.resize(worked_.size());
        const auto first = std::find_if(worked_.begin(), worked_.end(), tellsApart);
        const auto known = static_cast<std::size_t>(first - worked_.begin());
        std::vector<std::int64_t> gaps(cut_.counts.size() + 1, 0);
        for (std::size_t r = known; r < worked_.size(); ++r) {
            if (!cut(r, gaps, &RowStitch::takes)) return false;
            gaps = gapsOf(cut_.rows[r], &RowStitch::makes);
        }
        if (known < worked_.size()) gaps = gapsOf(cut_.rows[known], &RowStitch::takes);
        for (std::size_t r = known; r-- > 0;) {
            if (!cut(r, gaps, &RowStitch::makes)) return false;
            gaps = gapsOf(cut_.rows[r], &RowStitch::takes);
        }
        return true;
    }

    // `gaps`: loops beside the boxes that stand there already, on the side where this row's `loops`
    // meet them.
    bool cut(std::size_t r, const std::vector<std::int64_t>& gaps, int RowStitch::*loops) {
        RowBuilder row(cut_.counts.size());
        for (const RowPart& part : worked_[r].parts) {
            std::int64_t fixed = part.times.constant();
            for (const auto& term : part.times.terms())
                fixed += term.coefficient * cut_.shiftOf(term.variable);
            const bool spans = part.times.terms().size() > 1;
            const std::int64_t width = loopsOf(part.stitches, loops);
            // Copies that stand right of the next box; of a repeat they are worked first.
            const auto room = [&] {
                if (!spans) return worked_[r].side == Side::Right ? fixed : 0;
                const std::int64_t stand = loopsOf(row.beside(), loops);
                const std::int64_t left = gaps[row.gap()] - stand;
                return width > 0 ? std::clamp<std::int64_t>(left / width, 0, fixed) : 0;
            };
            for (std::size_t box = 0; box < cut_.counts.size(); ++box) {
                const std::int64_t each = part.times.coefficient(cut_.counts[box]);
                if (each == 0) continue;
                const std::int64_t copies = room();
                add(row.beside(), part.stitches, copies);
                fixed -= copies;
                if (!row.addBox(box, part, each)) return false;
            }
            add(row.beside(), part.stitches, fixed);
        }
        cut_.rows[r] = row.take();
        return true;
    }

    const WrittenPattern& pattern_;
    const WrittenProof& proof_;
    std::size_t size_;
    BoxCounts counts_;
    std::vector<WorkedRow> worked_;
    CutRows cut_;
};

}  // namespace

Result<std::optional<CutRows>> cutRows(const WrittenPattern& pattern, const WrittenProof& proof,
                                       std::size_t size) {
    return Cutter(pattern, proof, size).run();
}

}  // namespace lacewright
