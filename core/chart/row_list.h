#pragma once

#include <cstddef>
#include <memory>
#include <vector>

#include "core/chart/row.h"

namespace lacewright {

// The rows of a chart, bottom to top, 0-based. Shared in blocks: a copy costs a pointer, and
// replacing a row copies one block and a pointer per block, so an edit costs the same in a tall
// chart as in a short one. Copies share rows; "did this row change" is a pointer comparison.
class RowList {
 public:
    static constexpr std::size_t kBlock = 32;

    RowList() = default;
    explicit RowList(const std::vector<RowPtr>& rows);

    std::size_t size() const { return size_; }
    bool empty() const { return size_ == 0; }
    // Requires: index < size().
    const RowPtr& operator[](std::size_t index) const {
        return (*(*blocks_)[index / kBlock])[index % kBlock];
    }
    // Requires: index < size(), row is not null.
    void replace(std::size_t index, RowPtr row);
    std::vector<RowPtr> toVector() const;

    // Calls `visit(index)` for every index below both sizes whose rows are not the same object.
    template <class Visit>
    void forEachDifference(const RowList& other, Visit visit) const {
        const std::size_t common = size_ < other.size_ ? size_ : other.size_;
        if (blocks_ == other.blocks_) return;
        for (std::size_t block = 0; block * kBlock < common; ++block) {
            if ((*blocks_)[block] == (*other.blocks_)[block]) continue;
            const std::size_t end = (block + 1) * kBlock < common ? (block + 1) * kBlock : common;
            for (std::size_t i = block * kBlock; i < end; ++i) {
                if ((*this)[i] != other[i]) visit(i);
            }
        }
    }

    // The same cells in every row.
    bool operator==(const RowList& other) const;

 private:
    using Block = std::vector<RowPtr>;
    using Blocks = std::vector<std::shared_ptr<const Block>>;
    std::shared_ptr<const Blocks> blocks_;  // null without rows
    std::size_t size_ = 0;
};

}  // namespace lacewright
