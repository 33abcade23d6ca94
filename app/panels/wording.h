#pragma once

#include <QString>

#include "core/chart/chart.h"
#include "core/check/finding.h"
#include "core/count/tally.h"

// Sentences and words that panels and the status bar share.
namespace lacewright::app {

// "Row 7, right side" or "Round 7". Requires: 0 <= row < height.
QString rowTitle(const Chart& chart, int row);
// "7 ←": the number with the direction it is worked in. Requires as above.
QString rowLabel(const Chart& chart, int row);

// "B (12)", or "12" where no point stands at the column.
QString placeText(const Chart& chart, int column);

// "6A + 2": a count by the names of the chart's repeats.
QString formText(const AffineForm& form, const Chart& chart);

// "yarn over (takes 0, makes 1)".
QString stitchSentence(const Stitch& stitch);
// Name, loops and both sides' wording, for a tooltip, as rich text.
QString stitchToolTip(const Stitch& stitch);

// What a row takes and makes: by its own repeats, or for a size in its own numbers.
RowForms countsOf(const Chart& chart, int row, const Size* size);
// "Takes 6A + 2 and makes as many." Size as above.
QString rowSentence(const Chart& chart, int row, const Size* size);

QString severityWord(Severity severity);
QString severityCount(Severity severity, int count);  // "2 faults"

}  // namespace lacewright::app
