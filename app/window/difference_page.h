#pragma once

#include <QPalette>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/words/compare.h"

class QUrl;

namespace lacewright::app {

inline const QString kCompareNow = QStringLiteral("compare:now");

// Every differing row with its first difference between its neighbours, chart above text, and the
// smallest change of either. Stitches are links. `row` is what rows are called.
QString differencesHtml(const std::vector<RowDifference>& differences, const std::string& row,
                        const QPalette& palette);

// What such a link stands for; nothing for another link.
struct LinkedStitch {
    int row = 0;              // row number
    ContrastedStitch stitch;  // column 0: the row as a whole
};
std::optional<LinkedStitch> stitchOfLink(const QUrl& link,
                                         const std::vector<RowDifference>& differences);

}  // namespace lacewright::app
