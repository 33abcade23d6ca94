#pragma once

#include <time.h>

#include <algorithm>

namespace lacewright::test {

// Processor time of this thread alone: other programs on the machine do not count.
inline double threadSeconds() {
    timespec now = {};
    ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

// The fastest of several runs that take turns with others, because a shared machine drifts.
class Fastest {
 public:
    void run(const auto& work) {
        const double start = threadSeconds();
        work();
        best_ = std::min(best_, threadSeconds() - start);
    }
    double seconds() const { return best_; }

 private:
    double best_ = 1e9;
};

}  // namespace lacewright::test
