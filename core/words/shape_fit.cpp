#include "core/words/shape_fit.h"

#include <algorithm>
#include <set>

namespace lacewright {

namespace {

class ShapeFitter {
 public:
    ShapeFitter(const Phrases& shape, std::span<const WordIndex> run, const WordNumbers& numbers)
        : shape_(shape), run_(run), numbers_(numbers) {}

    std::optional<Phrases> fit() {
        if (!from(0, 0)) return {};
        Phrases fitted = shape_;
        std::size_t at = 0;
        for (std::size_t i = 0; i < fitted.size(); ++i) {
            const std::size_t once = spelledOnce(shape_[i]).size();
            fitted[i].times = {times_[i]};
            place(fitted[i], at, once * static_cast<std::size_t>(times_[i]));
            at += fitted[i].length;
        }
        return fitted;
    }

 private:
    // The words of one phrase worked once.
    static std::vector<WordIndex> spelledOnce(const Phrase& phrase) {
        Phrase once = phrase;
        once.times = {1};
        return spelledOut({once});
    }

    // The phrases of a bracket stand for the stitches of its first time.
    static void place(Phrase& phrase, std::size_t first, std::size_t length) {
        phrase.first = first;
        phrase.length = length;
        std::size_t at = first;
        for (Phrase& part : phrase.body) {
            place(part, at, part.length);
            at += part.length;
        }
    }

    // How often the phrase may stand.
    std::pair<int, int> limits(const Phrase& phrase, int most) const {
        if (phrase.isBracket()) return {0, most};
        const int least = numbers_.mayBeNone(phrase.word) ? 0 : 1;
        return {least, numbers_.countable(phrase.word) ? most : std::min(most, 1)};
    }

    // Phrases from `index` on say the run from `at` on.
    bool from(std::size_t index, std::size_t at) {
        if (index == shape_.size()) return at == run_.size();
        if (failed_.contains({index, at})) return false;
        const std::vector<WordIndex> once = spelledOnce(shape_[index]);
        int most = 0;
        std::size_t end = at;
        while (
            !once.empty() && end + once.size() <= run_.size() &&
            std::equal(once.begin(), once.end(), run_.begin() + static_cast<std::ptrdiff_t>(end))) {
            ++most;
            end += once.size();
        }
        const auto [least, limit] = limits(shape_[index], most);
        times_.resize(std::max(times_.size(), index + 1));
        for (int times = limit; times >= least; --times) {
            if (!from(index + 1, at + once.size() * static_cast<std::size_t>(times))) continue;
            times_[index] = times;
            return true;
        }
        failed_.insert({index, at});
        return false;
    }

    const Phrases& shape_;
    std::span<const WordIndex> run_;
    const WordNumbers& numbers_;
    std::vector<int> times_;
    std::set<std::pair<std::size_t, std::size_t>> failed_;
};

}  // namespace

std::optional<Phrases> fittedTo(const Phrases& shape, std::span<const WordIndex> run,
                                const WordNumbers& numbers) {
    return ShapeFitter(shape, run, numbers).fit();
}

}  // namespace lacewright
