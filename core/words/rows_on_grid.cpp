#include "core/words/rows_on_grid.h"

#include <algorithm>
#include <optional>

#include "core/chart/letter_names.h"
#include "core/words/column_layout.h"
#include "core/words/loop_look.h"

namespace lacewright {

namespace {

Stitch ownStitch(const RowStitch& written) {
    Stitch stitch;
    stitch.id = written.id;
    stitch.name = written.id;
    stitch.takes = written.takes;
    stitch.makes = written.makes;
    stitch.span = std::clamp(std::min(written.takes, written.makes), 1, kMaxSpan);
    stitch.kind = written.takes > written.makes   ? StitchKind::Decrease
                  : written.takes < written.makes ? StitchKind::Increase
                                                  : StitchKind::Texture;
    stitch.rightSide = stitch.wrongSide = {written.id, "Work " + written.id, {}};
    stitch.source = "the written rows";
    return stitch;
}

class Grid {
 public:
    explicit Grid(const std::vector<BoxRow>& rows) {
        noStitch_ = stitches_->find("no-stitch").value();
        knit_ = stitches_->find("k").value();
        purl_ = stitches_->find("p").value();
        boxes_ = rows.empty() ? 0 : rows.front().boxes.size();
        for (const BoxRow& row : rows) add(row);
    }

    Result<Chart> run() {
        if (problem_) return *problem_;
        showWhatLiesBelow();
        const int width = layOut(laid_);
        const auto cells =
            static_cast<std::int64_t>(width) * static_cast<std::int64_t>(laid_.size());
        if (width > kMaxWidth || laid_.size() > kMaxRows || cells > kMaxCells) {
            return Error{ErrorCode::OutOfRange,
                         "The rows would make a chart of " + std::to_string(width) + " x " +
                             std::to_string(laid_.size()) +
                             " cells, which is more than a chart "
                             "may hold.",
                         {}};
        }
        Chart chart;
        chart.width = width;
        chart.stitches = stitches_;
        std::vector<RowPtr> drawn;
        for (std::size_t r = 0; r < laid_.size(); ++r) drawn.push_back(draw(r, width));
        chart.rows = RowList(drawn);
        addRepeats(chart);
        return chart;
    }

 private:
    struct Cut {
        std::size_t first = 0;  // of the stitches in the box
        std::size_t end = 0;
    };

    void add(const BoxRow& row) {
        laid_.emplace_back();
        ids_.emplace_back();
        presents_.emplace_back();
        cuts_.emplace_back();
        for (const RowStitch& stitch : row.before) put(stitch);
        for (const RowBox& box : row.boxes) {
            const std::size_t first = ids_.back().size();
            for (const RowStitch& stitch : box.stitches) put(stitch);
            if (box.stitches.empty()) {  // a box is never without a cell
                laid_.back().push_back({0, 0, 1, 0});
                ids_.back().push_back(noStitch_);
                presents_.back().push_back(false);
            }
            cuts_.back().push_back({first, ids_.back().size()});
            for (const RowStitch& stitch : box.after) put(stitch);
        }
    }

    void put(const RowStitch& stitch) {
        if (problem_) return;
        const StitchIndex index = indexOf(stitch);
        if (index == kCovered) return;
        laid_.back().push_back({stitch.takes, stitch.makes, stitches_->spans()[index], 0});
        ids_.back().push_back(index);
        presents_.back().push_back(stitch.presents);
    }

    StitchIndex indexOf(const RowStitch& stitch) {
        if (!stitch.own) return stitches_->find(stitch.id).value();
        RowStitch named = stitch;
        for (int other = 2;; ++other) {  // two stitches of one name but other counts
            const auto index = stitches_->find(named.id);
            if (!index) break;
            const Stitch& known = (*stitches_)[*index];
            if (known.takes == stitch.takes && known.makes == stitch.makes) return *index;
            named.id = stitch.id + "-" + std::to_string(other);
        }
        auto grown = stitches_->with(ownStitch(named));
        if (!grown || ++own_ > kMaxOwnStitches) {
            problem_ = grown ? Error{ErrorCode::OutOfRange,
                                     "The rows use too many stitches of their own.",
                                     {}}
                             : grown.error();
            return kCovered;
        }
        stitches_ = *grown;
        return stitches_->find(named.id).value();
    }

    void showWhatLiesBelow() {
        for (std::size_t r = 1; r < laid_.size(); ++r) {
            std::vector<std::size_t> makers;  // of every loop on the needle
            for (std::size_t i = 0; i < laid_[r - 1].size(); ++i) {
                makers.insert(makers.end(), static_cast<std::size_t>(laid_[r - 1][i].makes), i);
            }
            std::size_t next = 0;
            for (std::size_t i = 0; i < laid_[r].size(); ++i) {
                if (presents_[r][i] && next < makers.size())
                    ids_[r][i] = lookOf((*stitches_)[ids_[r - 1][makers[next]]]) == LoopLook::Purl
                                     ? purl_
                                     : knit_;
                next += static_cast<std::size_t>(laid_[r][i].takes);
            }
        }
    }

    RowPtr draw(std::size_t r, int width) const {
        std::vector<StitchIndex> cells(static_cast<std::size_t>(width), noStitch_);
        for (std::size_t i = 0; i < ids_[r].size(); ++i) {
            const LaidStitch& stitch = laid_[r][i];
            const auto at = static_cast<std::size_t>(stitch.column - 1);
            cells[at] = ids_[r][i];
            for (int k = 1; k < stitch.span; ++k)
                cells[at + static_cast<std::size_t>(k)] = kCovered;
        }
        return makeRow(std::move(cells), *stitches_);
    }

    static int leftmost(const LaidStitch& stitch) { return stitch.column + stitch.span - 1; }

    // Where an edge may stand on each row: columns low..high.
    struct Room {
        int low = 1;
        int high = 1;
    };

    static int mostAgreed(const std::vector<Room>& rooms, int width) {
        std::vector<int> change(static_cast<std::size_t>(width) + 2);
        for (const Room& room : rooms) {
            ++change[static_cast<std::size_t>(room.low)];
            --change[static_cast<std::size_t>(room.high) + 1];
        }
        int best = 1;
        int most = 0;
        int rows = 0;
        for (int column = 1; column <= width; ++column) {
            rows += change[static_cast<std::size_t>(column)];
            if (rows <= most) continue;
            most = rows;
            best = column;
        }
        return best;
    }

    void addRepeats(Chart& chart) const {
        std::vector<int> taken(laid_.size(), 0);  // columns up to the box before, by row
        for (std::size_t i = 0; i < boxes_; ++i) {
            Repeat repeat = box(i, chart.width, taken);
            repeat.name = letterName(static_cast<int>(i));
            chart.repeats.push_back(std::move(repeat));
        }
    }

    Repeat box(std::size_t index, int width, std::vector<int>& taken) const {
        std::vector<Room> right;
        std::vector<Room> left;
        for (std::size_t r = 0; r < laid_.size(); ++r) {
            const LaidRow& row = laid_[r];
            const auto [first, end] = cuts_[r][index];
            right.push_back({std::max(first == 0 ? 1 : leftmost(row[first - 1]) + 1, taken[r] + 1),
                             row[first].column});
            left.push_back(
                {leftmost(row[end - 1]), end == row.size() ? width : row[end].column - 1});
        }
        Repeat repeat;
        repeat.right = mostAgreed(right, width);
        repeat.left = std::max(mostAgreed(left, width), repeat.right);
        repeat.lastRow = static_cast<int>(laid_.size()) - 1;
        for (std::size_t r = 0; r < laid_.size(); ++r) {
            const Jog jog{std::clamp(repeat.right, right[r].low, right[r].high) - repeat.right,
                          std::clamp(repeat.left, left[r].low, left[r].high) - repeat.left,
                          {}};
            if (jog.right != 0 || jog.left != 0) repeat.jogs[static_cast<int>(r)] = jog;
            taken[r] = repeat.left + jog.left;
        }
        return repeat;
    }

    StitchCataloguePtr stitches_ = builtInStitches();
    StitchIndex noStitch_ = kCovered;
    StitchIndex knit_ = kCovered;
    StitchIndex purl_ = kCovered;
    std::size_t boxes_ = 0;
    int own_ = 0;
    std::vector<LaidRow> laid_;
    std::vector<std::vector<StitchIndex>> ids_;
    std::vector<std::vector<bool>> presents_;
    std::vector<std::vector<Cut>> cuts_;  // by row and box
    std::optional<Error> problem_;
};

}  // namespace

Result<Chart> rowsOnGrid(const std::vector<BoxRow>& rows) {
    return Grid(rows).run();
}

}  // namespace lacewright
