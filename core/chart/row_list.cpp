#include "core/chart/row_list.h"

#include <utility>

namespace lacewright {

RowList::RowList(const std::vector<RowPtr>& rows) : size_(rows.size()) {
    if (rows.empty()) return;
    Blocks blocks;
    for (std::size_t start = 0; start < rows.size(); start += kBlock) {
        const std::size_t end = start + kBlock < rows.size() ? start + kBlock : rows.size();
        blocks.push_back(
            std::make_shared<const Block>(rows.begin() + static_cast<std::ptrdiff_t>(start),
                                          rows.begin() + static_cast<std::ptrdiff_t>(end)));
    }
    blocks_ = std::make_shared<const Blocks>(std::move(blocks));
}

void RowList::replace(std::size_t index, RowPtr row) {
    auto blocks = std::make_shared<Blocks>(*blocks_);
    auto block = std::make_shared<Block>(*(*blocks)[index / kBlock]);
    (*block)[index % kBlock] = std::move(row);
    (*blocks)[index / kBlock] = std::move(block);
    blocks_ = std::move(blocks);
}

std::vector<RowPtr> RowList::toVector() const {
    std::vector<RowPtr> rows;
    rows.reserve(size_);
    for (std::size_t row = 0; row < size_; ++row) rows.push_back((*this)[row]);
    return rows;
}

bool RowList::operator==(const RowList& other) const {
    if (size_ != other.size_) return false;
    bool same = true;
    forEachDifference(other, [&](std::size_t i) { same = same && *(*this)[i] == *other[i]; });
    return same;
}

}  // namespace lacewright
