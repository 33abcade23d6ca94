#include "app/document/cell_text.h"

#include <QStringList>
#include <algorithm>

namespace lacewright::app {

namespace {

const QString kCoveredMark = QStringLiteral(".");

Result<std::vector<StitchIndex>> rowFrom(const QString& line, const StitchCatalogue& stitches) {
    std::vector<StitchIndex> row;
    const QStringList words = line.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    for (auto word = words.rbegin(); word != words.rend(); ++word) {
        const std::string id = word->toStdString();
        const auto index =
            *word == kCoveredMark ? std::optional<StitchIndex>(kCovered) : stitches.find(id);
        if (!index) {
            return Error{ErrorCode::NotFound, "This chart has no stitch \"" + id + "\".", {}};
        }
        row.push_back(*index);
    }
    return row;
}

}  // namespace

QString textOf(const CellBlock& block, const StitchCatalogue& stitches) {
    QStringList lines;
    for (auto row = block.rows.rbegin(); row != block.rows.rend(); ++row) {
        QStringList words;
        for (auto cell = row->rbegin(); cell != row->rend(); ++cell) {
            words << (*cell == kCovered ? kCoveredMark
                                        : QString::fromStdString(stitches[*cell].id));
        }
        lines << words.join(QLatin1Char(' '));
    }
    return lines.join(QLatin1Char('\n'));
}

Result<CellBlock> cellsFrom(const QString& text, const StitchCatalogue& stitches) {
    // Longer than the text of the largest chart with the longest ids makes no sense to try.
    constexpr qsizetype kLongest = qsizetype{kMaxCells} * (kMaxIdLength + 1);
    if (text.size() > kLongest) return Error{ErrorCode::OutOfRange, "Too much to paste.", {}};
    CellBlock block;
    const QStringList lines = text.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
        Result<std::vector<StitchIndex>> row = rowFrom(*line, stitches);
        if (!row) return row.error();
        if (row->empty()) continue;
        if (!block.rows.empty() && row->size() != block.rows.front().size()) {
            return Error{ErrorCode::Malformed, "The rows to paste are not equally long.", {}};
        }
        block.rows.push_back(*std::move(row));
    }
    if (block.rows.empty()) {
        return Error{ErrorCode::Malformed, "There are no cells to paste.", {}};
    }
    return block;
}

}  // namespace lacewright::app
