#pragma once

#include <memory>
#include <optional>

#include "core/check/beliefs.h"
#include "core/verdict/placed_row.h"
#include "core/verdict/straight_chart.h"

namespace lacewright {

// The rest of a text as evidence for what one row of it was meant to be: the straight chart of the
// text as it may have been meant, with the row as it is written.
class SlipFrame {
 public:
    static constexpr int kWidest = 800;  // columns of a text that can be heard in the time

    // `text` holds the row, by index, as it may have been meant; `meant` are its stitches there,
    // `written` those it is written with. Null when the text cannot be drawn, or not this row.
    static std::unique_ptr<SlipFrame> make(const WrittenPattern& text, std::size_t row,
                                           std::size_t size, const PlacedRow& meant,
                                           const PlacedRow& written);

    // Log odds of the row as it was meant against the row as written, with one slip that shows
    // `times` over. Requires: its parts are as long as those of the row that the frame was made of.
    double evidence(const PlacedRow& meant, std::size_t times) const;

 private:
    // Columns of one part of the straight chart, and how many stitches they hold.
    struct Strip {
        int first = 1;
        int last = 0;
        bool gapsAtRight = false;  // or else at the left
        std::size_t stitches = 0;
    };
    using Cells = std::vector<StitchIndex>;
    // Rows of other lengths agree with one another at one end, at the other, or about the middle.
    enum class Laying : std::uint8_t { AsDrawn, OtherEnd, Middle };
    // What the rest of the text says when it is laid so.
    struct Voice {
        Laying laying = Laying::AsDrawn;
        std::unique_ptr<Beliefs> beliefs;
        RowBeliefs row;
        double written = 0;  // log weight of the row as written
    };

    SlipFrame() = default;
    bool draw(const WrittenPattern& text, std::size_t row, std::size_t size, int room);
    void drawUsual();
    std::vector<Strip> stripsOf() const;
    bool rowsDifferInLength() const;
    void hear(Laying laying, const Cells& written);
    // The row's cells with these stitches, each strip as many more or fewer as its part has.
    std::optional<Cells> cellsOf(const PlacedRow& placed) const;
    Cells laid(const Cells& cells, Laying laying) const;
    double weightOf(const Cells& cells, const Voice& voice) const;

    StraightChart straight_;
    StitchIndex gap_ = kCovered;
    bool centred_ = false;  // double decreases are taken for centred ones
    int row_ = 0;           // row index
    Side side_ = Side::Right;
    std::vector<Strip> strips_;  // in working order
    Alphabet alphabet_;
    std::vector<Voice> voices_;
    int copies_ = 1;   // of the row's repeat in the chart
    PlacedRow model_;  // the row the frame was made of
};

}  // namespace lacewright
