#pragma once

#include <QColor>

class QPalette;

namespace lacewright::app {

// The colours of the chart on screen, by role. Hues are those of Okabe and Ito, "Color Universal
// Design" (2002, 2008), which people with any colour vision tell apart; lines keep 3:1 and text
// 4.5:1 against the grounds they lie on (WCAG 2.2, 1.4.11 and 1.4.3). No role is told by colour
// alone: each has a line style, a shape or a label of its own.
struct ChartColours {
    // Grounds of cells.
    QColor ground;
    QColor groundInside;   // within the chosen size
    QColor groundOutside;  // beyond the chosen size
    QColor groundGuilty;   // named by a fault
    QColor groundWarned;   // named by a warning
    QColor groundNoStitch;

    QColor glyph;
    QColor glyphOutside;
    QColor hatch;  // of cells without stitch

    QColor gridFine;
    QColor gridFive;  // every 5 cells
    QColor gridTen;   // every 10 cells
    QColor frame;

    QColor repeat;
    QColor size;
    QColor fault;
    QColor warning;  // a fill; always outlined with `text`
    QColor note;
    QColor companion;  // arcs from increases to decreases
    QColor selection;  // laid over cells, translucent
    QColor hole;       // yarn overs in the overview
    QColor shaping;    // everything else that is not plain, in the overview

    QColor margin;  // around the chart
    QColor text;
    QColor textQuiet;

    bool operator==(const ChartColours&) const = default;
};

ChartColours lightColours();
ChartColours darkColours();
// Light or dark, whichever suits the widget palette.
ChartColours coloursFor(const QPalette& palette);

// Contrast ratio of two opaque colours, 1..21, by the formula of WCAG 2.2.
double contrast(const QColor& a, const QColor& b);

}  // namespace lacewright::app
