#include "core/chart/row_list.h"

#include <utility>

namespace lacewright {

RowList::RowList(const std::vector<RowPtr>& rows) : size_(rows.size()) {
    for (std::size_t start = 0; start < rows.size(); start += kBlock) {
        const std::size_t end = start + kBlock < rows.size() ? start + kBlock : rows.size();
        blocks_.push_back(
            std::make_shared<const Block>(rows.begin() + static_cast<std::ptrdiff_t>(start),
                                          rows.begin() + static_cast<std::ptrdiff_t>(end)));
    }
}

void RowList::replace(std::size_t index, RowPtr row) {
    auto& shared = blocks_[index / kBlock];
    auto block = std::make_shared<Block>(*shared);
    (*block)[index % kBlock] = std::move(row);
    shared = std::move(block);
}

std::vector<RowPtr> RowList::toVector() const {
    std::vector<RowPtr> rows;
    rows.reserve(size_);
    for (const auto& block : blocks_) rows.insert(rows.end(), block->begin(), block->end());
    return rows;
}

bool RowList::operator==(const RowList& other) const {
    if (size_ != other.size_) return false;
    bool same = true;
    forEachDifference(other, [&](std::size_t i) { same = same && *(*this)[i] == *other[i]; });
    return same;
}

}  // namespace lacewright
