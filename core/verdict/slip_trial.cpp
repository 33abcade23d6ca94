#include "core/verdict/slip_trial.h"

#include <map>

#include "core/words/marker_places.h"

namespace lacewright {

SlipTrial::SlipTrial(const WrittenPattern& pattern)
    : said_(unsettled(pattern)), goesToLandmarks_(goesToLandmark(said_)), trial_(said_) {
    std::map<std::size_t, std::size_t> rowsAt;  // copies of a text keep the place where it stands
    for (std::size_t row = 0; row < said_.rows.size(); ++row) {
        const Elements& elements = said_.rows[row].elements;
        const bool stands = !elements.empty() && elements.front().place.length > 0;
        textOf_.push_back(
            stands ? rowsAt.try_emplace(elements.front().place.offset, row).first->second : row);
    }
}

void SlipTrial::word(std::size_t row, const Elements& elements) {
    for (std::size_t other = 0; other < trial_.rows.size(); ++other) {
        if (textOf_[other] == textOf_[row]) trial_.rows[other].elements = elements;
    }
    settled_.reset();
}

void SlipTrial::castOn(const WrittenCastOn& castOn, std::optional<std::size_t> piece) {
    (piece ? trial_.pieces[*piece].castOn : trial_.castOn) = castOn;
    settled_.reset();
}

void SlipTrial::state(std::size_t row, const Figure& count) {
    trial_.rows[row].statedCount = count;
    settled_.reset();
}

void SlipTrial::workAgain(std::size_t again, const Figure& times) {
    trial_.again[again].times = times;
    settled_.reset();
}

void SlipTrial::stateAgain(std::size_t again, const Figure& count) {
    trial_.again[again].stated = count;
    settled_.reset();
}

void SlipTrial::reset(std::size_t row) {
    word(row, said_.rows[row].elements);
    trial_.again = said_.again;
    trial_.castOn = said_.castOn;
    trial_.pieces = said_.pieces;
    trial_.rows[row].statedCount = said_.rows[row].statedCount;
}

const WrittenPattern& SlipTrial::worded() {
    if (!goesToLandmarks_) return trial_;
    if (!settled_) settleMarkers(settled_.emplace(trial_));
    return *settled_;
}

}  // namespace lacewright
