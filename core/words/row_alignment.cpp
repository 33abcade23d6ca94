#include "core/words/row_alignment.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>

namespace lacewright {
namespace {

using Kind = AlignedStep::Kind;

class Aligner {
 public:
    Aligner(const std::vector<ChartedStitch>& charted, const std::vector<UnrolledStitch>& written)
        : charted_(charted), written_(written) {}

    std::vector<AlignedStep> run() {
        while (head_ < charted_.size() && head_ < written_.size() && same(head_, head_)) {
            steps_.push_back({Kind::Same, head_, head_});
            ++head_;
        }
        while (tail_ < charted_.size() - head_ && tail_ < written_.size() - head_ &&
               same(charted_.size() - 1 - tail_, written_.size() - 1 - tail_)) {
            ++tail_;
        }
        n_ = charted_.size() - head_ - tail_;
        m_ = written_.size() - head_ - tail_;
        if (n_ * m_ <= kMostAligned) {
            table();
        } else {
            placeByPlace();
        }
        for (std::size_t i = 0; i < tail_; ++i)
            steps_.push_back({Kind::Same, head_ + n_ + i, head_ + m_ + i});
        return std::move(steps_);
    }

 private:
    bool same(std::size_t i, std::size_t k) const { return charted_[i].key == written_[k].key; }

    std::int32_t replacing(std::size_t i, std::size_t k) const {
        if (same(i, k)) return 0;
        const bool counts =
            charted_[i].takes == written_[k].takes && charted_[i].makes == written_[k].makes;
        return counts ? 1 : 2;
    }

    template <typename Stitch>
    static std::int32_t alone(const Stitch& stitch) {
        return 2 + 2 * std::abs(stitch.makes - stitch.takes);
    }

    void table() {
        // cost[i][k]: of what is left when i charted and k written stitches are passed.
        const std::size_t wide = m_ + 1;
        std::vector<std::int32_t> cost((n_ + 1) * wide, 0);
        for (std::size_t k = m_; k-- > 0;)
            cost[n_ * wide + k] = cost[n_ * wide + k + 1] + alone(written_[head_ + k]);
        for (std::size_t i = n_; i-- > 0;) {
            cost[i * wide + m_] = cost[(i + 1) * wide + m_] + alone(charted_[head_ + i]);
            for (std::size_t k = m_; k-- > 0;) {
                cost[i * wide + k] =
                    std::min({cost[(i + 1) * wide + k + 1] + replacing(head_ + i, head_ + k),
                              cost[(i + 1) * wide + k] + alone(charted_[head_ + i]),
                              cost[i * wide + k + 1] + alone(written_[head_ + k])});
            }
        }
        std::size_t i = 0;
        std::size_t k = 0;
        while (i < n_ || k < m_) {
            const std::int32_t here = cost[i * wide + k];
            const AlignedStep step{Kind::Same, head_ + i, head_ + k};
            if (i < n_ && k < m_ &&
                here == cost[(i + 1) * wide + k + 1] + replacing(head_ + i, head_ + k)) {
                steps_.push_back(step);
                if (!same(head_ + i, head_ + k)) steps_.back().kind = Kind::Replaced;
                ++i;
                ++k;
            } else if (i < n_ && here == cost[(i + 1) * wide + k] + alone(charted_[head_ + i])) {
                steps_.push_back(step);
                steps_.back().kind = Kind::OnlyInChart;
                ++i;
            } else {
                steps_.push_back(step);
                steps_.back().kind = Kind::OnlyInText;
                ++k;
            }
        }
    }

    void placeByPlace() {
        for (std::size_t i = 0; i < std::max(n_, m_); ++i) {
            AlignedStep step{Kind::Replaced, head_ + std::min(i, n_), head_ + std::min(i, m_)};
            if (i >= m_) step.kind = Kind::OnlyInChart;
            if (i >= n_) step.kind = Kind::OnlyInText;
            if (step.kind == Kind::Replaced && same(head_ + i, head_ + i)) step.kind = Kind::Same;
            steps_.push_back(step);
        }
    }

    const std::vector<ChartedStitch>& charted_;
    const std::vector<UnrolledStitch>& written_;
    std::vector<AlignedStep> steps_;
    std::size_t head_ = 0;
    std::size_t tail_ = 0;
    std::size_t n_ = 0;
    std::size_t m_ = 0;
};

}  // namespace

std::vector<AlignedStep> aligned(const std::vector<ChartedStitch>& charted,
                                 const std::vector<UnrolledStitch>& written) {
    return Aligner(charted, written).run();
}

}  // namespace lacewright
