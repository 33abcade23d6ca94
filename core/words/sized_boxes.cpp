#include "core/words/sized_boxes.h"

#include <algorithm>
#include <cstdlib>

#include "core/words/prove.h"
#include "core/words/worked_row.h"

namespace lacewright {

namespace {

using Stitches = std::vector<RowStitch>;

constexpr std::int64_t kMostSteps = 60;  // loops that a box may begin beside the one below

// Where a box stands among a row's stitches: all copies, of one size.
struct BoxSpan {
    std::size_t first = 0;
    std::size_t length = 0;  // stitches of one copy
};

// One row of one size, seen from the right side, with the boxes found on it.
struct SpannedRow {
    Stitches stitches;
    std::vector<BoxSpan> boxes;
};

// Sums of loops before the first, second, .. stitch; one more than there are stitches.
std::vector<std::int64_t> before(const Stitches& stitches, int RowStitch::*loops) {
    std::vector<std::int64_t> sums = {0};
    for (const RowStitch& stitch : stitches) sums.push_back(sums.back() + stitch.*loops);
    return sums;
}

class Finder {
 public:
    Finder(const std::vector<const WrittenPattern*>& bySize, RepeatMarks marks)
        : patterns_(bySize), marks_(marks) {}

    std::optional<SizedBoxes> run() {
        if (!expand() || !findAnchor()) return {};
        for (std::size_t r = anchor_ + 1; r < height(); ++r) {
            if (!follow(r - 1, r, &RowStitch::makes, &RowStitch::takes)) return {};
        }
        for (std::size_t r = anchor_; r-- > 0;) {
            if (!follow(r + 1, r, &RowStitch::takes, &RowStitch::makes)) return {};
        }
        return cut();
    }

 private:
    std::size_t height() const { return patterns_.front()->rows.size(); }
    std::size_t sizes() const { return patterns_.size(); }

    // Every row of every size, stitch by stitch.
    bool expand() {
        for (std::size_t size = 0; size < sizes(); ++size) {
            const WrittenPattern& pattern = *patterns_[size];
            if (pattern.rows.size() != height()) return false;
            proofs_.push_back(proveWritten(pattern, size));
            if (!proofs_.back().knittable) return false;
            std::vector<SpannedRow>& rows = rows_.emplace_back();
            for (std::size_t r = 0; r < height(); ++r) {
                const Result<WorkedRow> worked =
                    workedRow(pattern, pattern.rows[r], proofs_.back().rows[r], size);
                if (!worked || !isFixed(*worked)) return false;
                rows.push_back({fromTheRight(*worked), {}});
            }
        }
        return height() > 0;
    }

    static bool isFixed(const WorkedRow& row) {
        return std::all_of(row.parts.begin(), row.parts.end(),
                           [](const RowPart& part) { return part.times.isConstant(); });
    }

    static Stitches fromTheRight(const WorkedRow& row) {
        Stitches stitches = unrolled(row, [](Variable) { return 0; });
        if (row.side == Side::Wrong) std::reverse(stitches.begin(), stitches.end());
        return stitches;
    }

    // The row that tells most repeats apart.
    bool findAnchor() {
        std::optional<CountedRepeats> most;
        for (std::size_t r = 0; r < height(); ++r) {
            std::vector<const WrittenRowProof*> proofs;
            for (const WrittenProof& proof : proofs_) proofs.push_back(&proof.rows[r]);
            auto repeats = countedRepeats(patterns_.front()->rows[r], proofs, marks_);
            const std::size_t known = most ? most->times.size() : 0;
            if (!repeats || repeats->times.size() <= known) continue;
            most = std::move(repeats);
            anchor_ = r;
        }
        if (!most) return false;
        boxes_ = most->times.size();
        for (std::size_t size = 0; size < sizes(); ++size) {
            std::vector<int>& times = times_.emplace_back();
            for (const auto& ofBox : most->times) times.push_back(ofBox[size]);
            if (!spanAnchor(*most, size)) return false;
        }
        return true;
    }

    bool spanAnchor(const CountedRepeats& repeats, std::size_t size) {
        WrittenRow row = patterns_[size]->rows[anchor_];
        nameAllRepeats(row, repeats, size);
        WrittenRowProof proof;
        proof.counted = countedReadings(row, size, 1).front();
        proof.counted.chosen = proofs_[size].rows[anchor_].counted.chosen;
        const Result<WorkedRow> worked = workedRow(*patterns_[size], row, proof, size);
        if (!worked) return false;
        std::vector<RowPart> parts = worked->parts;
        if (row.side == Side::Wrong) std::reverse(parts.begin(), parts.end());
        std::size_t at = 0;
        for (const RowPart& part : parts) {
            const bool box = !part.times.isConstant();
            if (box) rows_[size][anchor_].boxes.push_back({at, part.stitches.size()});
            const auto times = part.times.at([&](Variable count) {
                return isNamedCount(count) ? times_[size][countIndex(count)] : 0;
            });
            at += part.stitches.size() * static_cast<std::size_t>(std::max<std::int64_t>(0, times));
        }
        return rows_[size][anchor_].boxes.size() == boxes_ &&
               at == rows_[size][anchor_].stitches.size();
    }

    // Finds on row `to` the boxes of row `from`, which meet it with their loops `theirs`.
    bool follow(std::size_t from, std::size_t to, int RowStitch::*theirs, int RowStitch::*ours) {
        for (std::size_t box = 0; box < boxes_; ++box) {
            std::vector<std::int64_t> starts;  // loops before the box, by size
            std::int64_t width = 0;            // loops of one copy
            for (std::size_t size = 0; size < sizes(); ++size) {
                const SpannedRow& row = rows_[size][from];
                const auto sums = before(row.stitches, theirs);
                starts.push_back(sums[row.boxes[box].first]);
                if (times_[size][box] > 0) {
                    const BoxSpan& span = row.boxes[box];
                    width = sums[span.first + span.length] - sums[span.first];
                }
            }
            if (width <= 0 || !place(to, box, starts, width, ours)) return false;
        }
        return true;
    }

    bool place(std::size_t r, std::size_t box, const std::vector<std::int64_t>& starts,
               std::int64_t width, int RowStitch::*loops) {
        std::size_t reference = 0;  // the size that repeats it most often says most
        for (std::size_t size = 1; size < sizes(); ++size) {
            if (times_[size][box] > times_[reference][box]) reference = size;
        }
        std::vector<std::vector<std::int64_t>> sums;
        for (std::size_t size = 0; size < sizes(); ++size)
            sums.push_back(before(rows_[size][r].stitches, loops));
        const Stitches& stitches = rows_[reference][r].stitches;
        const auto& sum = sums[reference];
        for (std::int64_t step = 0; step <= 2 * std::min(width, kMostSteps); ++step) {
            // 0, 1 to the left, 1 to the right, 2 to the left ..
            const std::int64_t shift = step % 2 == 1 ? (step + 1) / 2 : -step / 2;
            for (std::size_t at = 0; at < stitches.size(); ++at) {
                if (sum[at] != starts[reference] + shift) continue;
                for (std::size_t end = at + 1; end < sum.size() && sum[end] <= sum[at] + width;
                     ++end) {
                    if (sum[end] != sum[at] + width) continue;
                    const Stitches copy(stitches.begin() + static_cast<std::ptrdiff_t>(at),
                                        stitches.begin() + static_cast<std::ptrdiff_t>(end));
                    if (placeAll(r, box, starts, shift, sums, copy)) return true;
                }
            }
        }
        return false;
    }

    // The box that holds `copy` in every size, `shift` loops beside the one it meets.
    bool placeAll(std::size_t r, std::size_t box, const std::vector<std::int64_t>& starts,
                  std::int64_t shift, const std::vector<std::vector<std::int64_t>>& sums,
                  const Stitches& copy) {
        std::vector<BoxSpan> spans;
        for (std::size_t size = 0; size < sizes(); ++size) {
            const auto at = firstPlace(r, box, size, starts[size] + shift, sums[size], copy);
            if (!at || (box > 0 && !samePath(r, box, size, *at, spans))) return false;
            spans.push_back({*at, copy.size()});
        }
        for (std::size_t size = 0; size < sizes(); ++size)
            rows_[size][r].boxes.push_back(spans[size]);
        return true;
    }

    std::size_t endOfBox(std::size_t r, std::size_t box, std::size_t size) const {
        const BoxSpan& span = rows_[size][r].boxes[box];
        return span.first + span.length * static_cast<std::size_t>(times_[size][box]);
    }

    std::optional<std::size_t> firstPlace(std::size_t r, std::size_t box, std::size_t size,
                                          std::int64_t loops, const std::vector<std::int64_t>& sums,
                                          const Stitches& copy) const {
        const Stitches& stitches = rows_[size][r].stitches;
        const auto times = static_cast<std::size_t>(times_[size][box]);
        const std::size_t least = box == 0 ? 0 : endOfBox(r, box - 1, size);
        for (std::size_t at = least; at + times * copy.size() <= stitches.size(); ++at) {
            if (sums[at] != loops) continue;
            bool same = true;
            for (std::size_t i = 0; i < times * copy.size() && same; ++i)
                same = sameStitch(stitches[at + i], copy[i % copy.size()]);
            if (same) return at;
        }
        return {};
    }

    // What stands between this box and the one before is the same as in the first size.
    bool samePath(std::size_t r, std::size_t box, std::size_t size, std::size_t at,
                  const std::vector<BoxSpan>& spans) const {
        if (size == 0) return true;
        const Stitches& first = rows_[0][r].stitches;
        const Stitches& own = rows_[size][r].stitches;
        const auto from = [&](const Stitches& stitches, std::size_t i) {
            return stitches.begin() + static_cast<std::ptrdiff_t>(i);
        };
        return std::equal(from(first, endOfBox(r, box - 1, 0)), from(first, spans[0].first),
                          from(own, endOfBox(r, box - 1, size)), from(own, at), sameStitch);
    }

    SizedBoxes cut() const {
        SizedBoxes result;
        result.times = times_;
        for (std::size_t size = 0; size < sizes(); ++size) {
            std::vector<BoxRow>& rows = result.rows.emplace_back();
            for (std::size_t r = 0; r < height(); ++r) rows.push_back(cutRow(r, size));
        }
        return result;
    }

    BoxRow cutRow(std::size_t r, std::size_t size) const {
        const SpannedRow& row = rows_[size][r];
        const auto part = [&](std::size_t from, std::size_t to) {
            return Stitches(row.stitches.begin() + static_cast<std::ptrdiff_t>(from),
                            row.stitches.begin() + static_cast<std::ptrdiff_t>(to));
        };
        BoxRow result;
        result.before = part(0, row.boxes.front().first);
        for (std::size_t box = 0; box < boxes_; ++box) {
            // A size that works it no times has the stitches of another that does.
            std::size_t other = size;
            for (std::size_t s = 0; s < sizes() && times_[other][box] == 0; ++s) other = s;
            const SpannedRow& model = rows_[other][r];
            const BoxSpan& span = model.boxes[box];
            RowBox& cut = result.boxes.emplace_back();
            cut.stitches.assign(
                model.stitches.begin() + static_cast<std::ptrdiff_t>(span.first),
                model.stitches.begin() + static_cast<std::ptrdiff_t>(span.first + span.length));
            cut.after = part(endOfBox(r, box, size),
                             box + 1 < boxes_ ? row.boxes[box + 1].first : row.stitches.size());
        }
        return result;
    }

    const std::vector<const WrittenPattern*>& patterns_;
    RepeatMarks marks_;
    std::vector<WrittenProof> proofs_;
    std::vector<std::vector<SpannedRow>> rows_;  // by size
    std::vector<std::vector<int>> times_;        // by size and box
    std::size_t anchor_ = 0;
    std::size_t boxes_ = 0;
};

}  // namespace

std::optional<SizedBoxes> sizedBoxes(const std::vector<const WrittenPattern*>& bySize,
                                     RepeatMarks marks) {
    return Finder(bySize, marks).run();
}

}  // namespace lacewright
