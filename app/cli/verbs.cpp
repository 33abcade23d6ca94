#include <algorithm>
#include <ostream>
#include <utility>

#include "app/cli/verb.h"

namespace lacewright::cli {

const std::vector<Verb>& verbs() {
    static const std::vector<Verb> table = {
        {"check",
         "FILE...",
         "prove that charts can be knitted, for every size and number of repeats",
         {{"--json", "", "one JSON object a file, on a line of its own"},
          {"--size", "NAME|all", "only what concerns this size (default: all)"}},
         &runCheck},
        {"compare",
         "CHART ROWS",
         "prove that a chart and written rows are the same knitting, or show where they part",
         {{"--size", "NAME|all", "only for this size (default: all)"}},
         &runCompare},
        {"draw",
         "FILE",
         "draw a chart as SVG, PDF or PNG, by the ending of OUT",
         {{"-o", "OUT", "where to write the picture"},
          {"--size", "NAME|all", "highlight this size (default: all, none highlighted)"},
          {"--title", "TEXT", "instead of the chart's name"},
          {"--paper", "a4|a3|a5|letter|tabloid", "sheets of the PDF (default: a4)"},
          {"--cell", "MM", "width of a cell in millimetres, 1 to 50 (default: 5)"}},
         &runDraw},
        {"write",
         "FILE",
         "write a chart as rows of text, proven to be the same knitting",
         {{"--size", "NAME|all", "only this size (default: all, as S (M, L))"},
          {"--terms", "us|uk", "whose abbreviations (default: us)"},
          {"--brackets", "square|round", "around repeated stitches (default: square)"},
          {"--numerals", "digits|words", "\"3 times\" or \"three times\" (default: digits)"},
          {"--html", "", "a page for browsers and screen readers"},
          {"-o", "OUT", "where to write (default: standard output)"}},
         &runWrite},
        {"chart",
         "ROWS.txt",
         "draw written rows as a chart; faults in them are told, and drawn",
         {{"-o", "OUT.lacewright", "where to write the chart"},
          {"--size", "NAME|all", "draw this size alone (default: all in one chart)"}},
         &runChart},
        {"sizes",
         "FILE",
         "tell the sizes of a chart in figures and words, or plan new ones",
         {{"--csv", "", "comma-separated values"},
          {"--json", "", "one JSON object"},
          {"--widths", "S=42,M=18.5in", "plan these widths: cm, or inches with \"in\""},
          {"--table", "women[:bust]", "plan for a published table of body measurements"},
          {"--gauge", "22x30[/4in]", "stitches and rows over 10 cm or 4 in (default: the chart's)"},
          {"--ease", "LENGTH", "added to every width (default: 0)"},
          {"--part", "N", "every width is divided into N equal pieces (default: 1)"},
          {"--edge", "N", "plain stitches at each side beside the chart (default: 0)"},
          {"--tolerance", "LENGTH", "widths this near are as good, so that symmetry decides"},
          {"--multiple", "M[+R]", "all stitches of a size are a multiple of M, plus R"},
          {"--hold", "B=1,C=2", "these repeats are worked so often in every size"},
          {"--length", "LENGTH", "rows for this length, in whole row repeats"},
          {"-o", "OUT", "write the chart with the sizes planned"}},
         &runSizes},
        {"spread",
         "BEFORE AFTER",
         "tell where to increase or decrease evenly, from so many stitches to so many",
         {{"--increase", "m1|kfb", "how a stitch is made (default: m1)"},
          {"--ends", "half|whole|grouped",
           "gaps at the ends of the row; grouped for the round (default: half)"}},
         &runSpread},
        {"pick-up",
         "ROWS",
         "tell how many stitches to pick up along the side of a piece, and in which rows",
         {{"--gauge", "24x32[/4in]",
           "stitches of the band and rows of the piece over 10 cm or 4 in"}},
         &runPickUp},
    };
    return table;
}

const Verb* findVerb(std::string_view name) {
    const auto found = std::find_if(verbs().begin(), verbs().end(),
                                    [name](const Verb& verb) { return verb.name == name; });
    return found == verbs().end() ? nullptr : &*found;
}

Error misuse(std::string sentence) {
    return {ErrorCode::Refused, std::move(sentence), {}};
}

int Call::refuse(const std::string& sentence) const {
    err << "lacewright: " << sentence << "\n";
    return kMisuse;
}

}  // namespace lacewright::cli
