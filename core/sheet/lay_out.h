#pragma once

#include <optional>
#include <string>

#include "core/chart/chart.h"
#include "core/sheet/sheet.h"

namespace lacewright {

// A sheet of paper, upright. All sizes in millimetres.
struct Paper {
    double widthMm = 210;
    double heightMm = 297;
    double marginMm = 15;
    bool operator==(const Paper&) const = default;
};
inline constexpr Paper kA5{148, 210, 12};
inline constexpr Paper kA4{210, 297, 15};
inline constexpr Paper kA3{297, 420, 15};
inline constexpr Paper kLetter{215.9, 279.4, 15};
inline constexpr Paper kTabloid{279.4, 431.8, 15};

enum class Orientation : std::uint8_t {
    Fewest,
    Upright,
    Across
};  // Fewest: whatever needs fewer sheets

struct SheetOptions {
    std::string title;  // empty: the chart's name
    std::string size;   // the size to highlight, by name; empty or unknown: none
    double cellMm = kStandardCellMm;
    double textPoints = 8.5;     // of running text; the rest follows
    int heavyEvery = 5;          // a heavier grid line after so many columns and rows
    std::optional<Paper> paper;  // none: one picture as large as the chart needs
    Orientation orientation = Orientation::Fewest;
    bool operator==(const SheetOptions&) const = default;
};

// Rows are told in words beside their pictures only in charts up to this many cells, about a dozen
// printed pages; beyond it the words would outweigh the picture and nobody could listen to them.
inline constexpr int kMostCellsInWords = 20'000;

// A pure function. Requires: chart.width >= 1 and at least one row; cellMm and textPoints > 0,
// heavyEvery >= 1, and paper with room for at least one cell beside its margins.
Sheet layOut(const Chart& chart, const SheetOptions& options);

}  // namespace lacewright
