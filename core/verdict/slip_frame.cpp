#include "core/verdict/slip_frame.h"

#include <algorithm>
#include <cmath>

#include "core/verdict/slip_letters.h"

namespace lacewright {
namespace {

// Witnesses repeat each other: log odds beyond which they count for little.
constexpr double kSure = 6.0;
constexpr double kBeyondSure = 0.1;
constexpr double kUnseen = -4.0;  // log odds for a stitch that the text works nowhere else

// Lengths of what stands outside the repeats and of the repeats by turns, in working order.
std::vector<std::size_t> lengthsOf(const PlacedRow& placed, std::size_t copies) {
    std::vector<std::size_t> lengths{0};
    for (const PlacedRow::Part& part : placed.parts) {
        if (part.repeats) {
            lengths.push_back(part.length * copies);
            lengths.push_back(0);
        } else {
            lengths.back() = part.length;
        }
    }
    return lengths;
}

}  // namespace

std::unique_ptr<SlipFrame> SlipFrame::make(const WrittenPattern& text, std::size_t row,
                                           std::size_t size, const PlacedRow& meant,
                                           const PlacedRow& written) {
    if (meant.stitches.size() > kWidest) return nullptr;
    std::unique_ptr<SlipFrame> frame(new SlipFrame);
    frame->model_ = meant;
    std::optional<Cells> cells;
    for (const int room : {1, 6}) {  // a repeat drawn several times needs as many places more
        if (!frame->draw(text, row, size, room)) return nullptr;
        if ((cells = frame->cellsOf(written))) break;
    }
    if (!cells) return nullptr;
    Chart& chart = frame->straight_.chart;
    chart.rows.replace(static_cast<std::size_t>(frame->row_), makeRow(*cells, *chart.stitches));
    frame->alphabet_ = alphabetOf(chart);
    frame->hear(Laying::AsDrawn, *cells);
    if (frame->rowsDifferInLength()) {
        frame->hear(Laying::OtherEnd, *cells);
        frame->hear(Laying::Middle, *cells);
    }
    return frame->voices_.empty() ? nullptr : std::move(frame);
}

// In any part; else it is all one where they are laid.
bool SlipFrame::rowsDifferInLength() const {
    const Chart& chart = straight_.chart;
    return std::any_of(strips_.begin(), strips_.end(), [&](const Strip& strip) {
        const auto gapsIn = [&](int row) {
            const auto first = chart.row(row).cells().begin() + (strip.first - 1);
            return std::count(first, first + (strip.last - strip.first + 1), gap_);
        };
        for (int row = 1; row < chart.height(); ++row) {
            if (gapsIn(row) != gapsIn(0)) return true;
        }
        return false;
    });
}

void SlipFrame::hear(Laying laying, const Cells& written) {
    Chart chart = straight_.chart;
    for (int row = 0; row < chart.height(); ++row) {
        const Cells& drawn = straight_.chart.row(row).cells();
        Cells cells = laid(drawn, laying);
        if (cells == drawn) continue;
        chart.rows.replace(static_cast<std::size_t>(row),
                           makeRow(std::move(cells), *chart.stitches));
    }
    auto beliefs = std::make_unique<Beliefs>(chart, alphabet_, row_);
    if (!beliefs->grid().holds(row_)) return;
    Voice& voice = voices_.emplace_back();
    voice.laying = laying;
    voice.row = beliefs->of(row_);
    voice.beliefs = std::move(beliefs);
    voice.written = weightOf(written, voice);
}

// Each strip moved to its other end, or to the middle.
SlipFrame::Cells SlipFrame::laid(const Cells& cells, Laying laying) const {
    if (laying == Laying::AsDrawn) return cells;
    Cells moved = cells;
    for (const Strip& strip : strips_) {
        const auto first = moved.begin() + (strip.first - 1);
        const auto last = moved.begin() + strip.last;
        const auto isStitch = [&](StitchIndex cell) { return cell != gap_; };
        const auto begin = std::find_if(first, last, isStitch);
        if (begin == last) continue;
        const auto end = std::find_if(std::make_reverse_iterator(last),
                                      std::make_reverse_iterator(begin), isStitch)
                             .base();
        const auto free = (last - first) - (end - begin);
        const auto right = laying == Laying::Middle ? free / 2 : strip.gapsAtRight ? 0 : free;
        const Cells stitches(begin, end);
        std::fill(first, last, gap_);
        std::copy(stitches.begin(), stitches.end(), first + right);
    }
    return moved;
}

bool SlipFrame::draw(const WrittenPattern& text, std::size_t row, std::size_t size, int room) {
    auto straight = straightChart(text, size, room);
    if (!straight) return false;
    const auto at = std::find(straight->written.begin(), straight->written.end(), row);
    if (at == straight->written.end()) return false;
    if (straight->chart.width > kWidest) return false;
    straight_ = std::move(*straight);
    drawUsual();
    gap_ = straight_.chart.stitches->find("no-stitch").value();
    row_ = static_cast<int>(at - straight_.written.begin());
    side_ = text.rows[row].side;
    strips_ = stripsOf();
    std::size_t all = 0;
    for (const Strip& strip : strips_) all += strip.stitches;
    if (!model_.unfolded(all)) return false;
    copies_ = 1;
    for (const PlacedRow::Part& part : model_.parts) {
        if (part.repeats && part.length > 0)
            copies_ += static_cast<int>((all - model_.stitches.size()) / part.length);
    }
    return true;
}

// Stitches that a row mirrors with all the same are one. Where no double decrease leans the other
// way, none is meant to lean.
void SlipFrame::drawUsual() {
    Chart& chart = straight_.chart;
    const StitchCatalogue& stitches = *chart.stitches;
    centred_ = true;
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex cell : chart.row(row).cells())
            centred_ = centred_ && (cell == kCovered || stitches[cell].takes != 3 ||
                                    stitches[cell].lean != Lean::Right);
    }
    for (int row = 0; row < chart.height(); ++row) {
        Cells cells = chart.row(row).cells();
        for (StitchIndex& cell : cells) cell = usualStitch(stitches, cell, centred_);
        chart.rows.replace(static_cast<std::size_t>(row), makeRow(std::move(cells), stitches));
    }
}

std::vector<SlipFrame::Strip> SlipFrame::stripsOf() const {
    const Chart& chart = straight_.chart;
    std::vector<Strip> strips;
    const auto add = [&](int first, int last) {
        Strip& strip = strips.emplace_back(Strip{first, last, strips.empty(), 0});
        for (int column = first; column <= last; ++column) {
            const StitchIndex cell = chart.row(row_).at(column);
            if (cell != kCovered && cell != gap_) ++strip.stitches;
        }
    };
    int next = 1;
    for (const Repeat& repeat : chart.repeats) {
        add(next, repeat.right - 1);
        add(repeat.right, repeat.left);
        next = repeat.left + 1;
    }
    add(next, chart.width);
    strips.front().gapsAtRight = strips.size() > 1;
    if (side_ == Side::Wrong) std::reverse(strips.begin(), strips.end());
    return strips;
}

std::optional<SlipFrame::Cells> SlipFrame::cellsOf(const PlacedRow& placed) const {
    const Chart& chart = straight_.chart;
    const auto copies = static_cast<std::size_t>(copies_);
    // How many stitches of each strip there are now: parts and strips may part at other places,
    // as a repeat may be drawn beginning one stitch further on.
    std::vector<std::size_t> counts;
    const auto before = lengthsOf(model_, copies);
    const auto now = lengthsOf(placed, copies);
    if (before.size() != now.size()) return std::nullopt;
    const bool onePart = before.size() == 1;
    if (!onePart && before.size() != strips_.size()) return std::nullopt;
    std::size_t length = 0;
    for (std::size_t i = 0; i < strips_.size(); ++i) {
        const Strip& strip = strips_[i];
        std::size_t count = strip.stitches;
        if (!onePart) {
            if (count + now[i] < before[i]) return std::nullopt;
            count = count + now[i] - before[i];
        } else if (count > 0) {
            count = count + now[0] - before[0];
        }
        counts.push_back(count);
        length += count;
    }
    const auto places = placed.unfolded(length);
    if (!places) return std::nullopt;
    Cells cells(static_cast<std::size_t>(chart.width), gap_);
    std::size_t next = 0;
    for (std::size_t i = 0; i < strips_.size(); ++i) {
        std::vector<StitchIndex> stitches;
        int width = 0;
        for (; stitches.size() < counts[i]; ++next) {
            const auto stitch = chart.stitches->find(placed.stitches[(*places)[next]].id);
            if (!stitch) return std::nullopt;
            stitches.push_back(usualStitch(*chart.stitches, *stitch, centred_));
            width += (*chart.stitches)[*stitch].span;
        }
        if (side_ == Side::Wrong) std::reverse(stitches.begin(), stitches.end());
        const auto [first, last, gapsAtRight, count] = strips_[i];
        if (width > last - first + 1) return std::nullopt;
        auto at = static_cast<std::size_t>(gapsAtRight ? last - width : first - 1);
        for (const StitchIndex stitch : stitches) {
            cells[at++] = stitch;
            for (int covered = 1; covered < (*chart.stitches)[stitch].span; ++covered)
                cells[at++] = kCovered;
        }
    }
    return cells;
}

// What stands in the gaps at the end of a part is no evidence.
double SlipFrame::weightOf(const Cells& cells, const Voice& voice) const {
    std::vector<Alphabet::Letter> letters;
    double gaps = 0;
    for (const StitchIndex cell : laid(cells, voice.laying)) {
        if (cell == gap_)
            gaps += voice.row.asRow[letters.size() * static_cast<std::size_t>(voice.row.letters)];
        letters.push_back(cell == gap_ ? Alphabet::kNone : alphabet_.letterIn(row_, cell));
    }
    return voice.beliefs->weightOf(voice.row, letters) - gaps;
}

double SlipFrame::evidence(const PlacedRow& meant, std::size_t times) const {
    const auto cells = cellsOf(meant);
    if (!cells) return kUnseen;
    const auto unseen = std::count_if(cells->begin(), cells->end(), [&](StitchIndex cell) {
        return cell != kCovered && (*straight_.chart.stitches)[cell].span == 1 &&
               alphabet_.letterIn(row_, cell) < 0;
    });
    double evidence = kUnseen * static_cast<double>(unseen);
    for (const Voice& voice : voices_)
        evidence += (weightOf(*cells, voice) - voice.written) / static_cast<double>(voices_.size());
    evidence /= static_cast<double>(times) * copies_;
    const double beyond = std::abs(evidence) - kSure;
    return beyond > 0 ? std::copysign(kSure + kBeyondSure * beyond, evidence) : evidence;
}

}  // namespace lacewright
