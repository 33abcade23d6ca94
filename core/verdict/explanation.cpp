#include "core/verdict/explanation.h"

#include <algorithm>

#include "core/stitch/catalogue.h"
#include "core/words/stitch_words.h"

namespace lacewright {
namespace {

std::string inWords(const RowStitch& stitch, Side side) {
    const StitchCatalogue& stitches = *builtInStitches();
    const auto index = stitch.own ? std::nullopt : stitches.find(stitch.id);
    if (!index) return stitch.id;
    const Stitch& known = stitches[*index];
    const SideWording& wording = side == Side::Wrong ? known.wrongSide : known.rightSide;
    return wording.abbreviation.empty() ? stitch.id : wording.abbreviation;
}

// "k12 (14)", "k2tog 3 times"
std::string countInWords(const std::string& term, const Figure& count) {
    const std::string figure = figureText(count.bySize);
    return term == "k" || term == "p" ? term + figure : term + " " + figure + " times";
}

bool repeats(const PlacedRow& row) {
    return std::any_of(row.parts.begin(), row.parts.end(),
                       [](const PlacedRow::Part& part) { return part.repeats; });
}

std::string restInWords(const Explanation& explanation) {
    const std::string count = figureText(explanation.figure.bySize);
    const std::string stitches = count + (count == "1" ? " st" : " sts");
    if (explanation.to != Landmark::None)
        return "work to " + (count == "0" ? "the marker" : stitches + " before the marker");
    const std::string verb = repeats(explanation.meant) ? "repeat" : "work";
    if (count == "0") return verb + " to the end";
    return verb + " to the last " + (count == "1" ? "st" : stitches);
}

}  // namespace

std::size_t placeOfRest(const PlacedRow& meant) {
    for (std::size_t part = 0; part + 1 < meant.parts.size(); ++part) {
        if (meant.parts[part].repeats) return meant.parts[part + 1].first;
    }
    return meant.stitches.size() - 1;
}

PlacedRow withoutNew(const PlacedRow& row) {
    PlacedRow without;
    for (const PlacedRow::Part& part : row.parts) {
        PlacedRow::Part left = part;
        left.first = without.stitches.size();
        for (std::size_t i = part.first; i < part.first + part.length; ++i) {
            if (row.stitches[i].place != kNewPlace) without.stitches.push_back(row.stitches[i]);
        }
        left.length = without.stitches.size() - left.first;
        without.parts.push_back(left);
    }
    return without;
}

std::vector<std::size_t> placesOfNew(const PlacedRow& row) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < row.stitches.size(); ++i) {
        if (row.stitches[i].place == kNewPlace) places.push_back(i);
    }
    return places;
}

std::vector<std::size_t> placesLeftOut(const PlacedRow& written, const PlacedRow& meant) {
    // A row that does not fit may be written out shorter: its end tells.
    if (written.stitches.size() <= meant.stitches.size()) {
        const auto parted = std::mismatch(
            written.stitches.rbegin(), written.stitches.rend(), meant.stitches.rbegin(),
            [](const RowStitch& a, const RowStitch& b) { return a.id == b.id; });
        return {static_cast<std::size_t>(meant.stitches.rend() - parted.second)};
    }
    std::vector<std::size_t> places;
    const auto compare = [&](const PlacedRow::Part& before, const PlacedRow::Part& after) {
        std::size_t next = after.first;
        for (std::size_t i = before.first; i < before.first + before.length; ++i) {
            const bool stays = next < after.first + after.length &&
                               written.stitches[i].id == meant.stitches[next].id;
            if (stays) {
                ++next;
            } else {
                places.push_back(i);
            }
        }
    };
    if (written.parts.size() == meant.parts.size()) {
        for (std::size_t part = 0; part < written.parts.size(); ++part)
            compare(written.parts[part], meant.parts[part]);
    } else {
        compare({0, written.stitches.size(), false, {}}, {0, meant.stitches.size(), false, {}});
    }
    return places;
}

Mend mendOf(const WrittenRow& row, const std::optional<PlacedRow>& written,
            const Explanation& explanation) {
    const std::size_t at = explanation.places.front();
    const auto meantThere = [&] { return inWords(explanation.meant.stitches[at], row.side); };
    // A row that does not fit may be written out shorter than with the slip undone.
    const auto writtenThere = [&] {
        return written && at < written->stitches.size() ? inWords(written->stitches[at], row.side)
                                                        : std::string("what stands there");
    };
    const std::size_t writtenStitches =
        written && written->stitches.size() > explanation.meant.stitches.size()
            ? written->stitches.size()
            : 0;
    const std::string place =
        written ? written->placeInWords(at) : "stitch " + std::to_string(at + 1);
    Mend mend;
    mend.label = row.label + ": ";
    switch (explanation.kind) {
        case SlipUndone::Kind::PutIn:
            mend.label += "put in " + meantThere() + " as " + explanation.meant.placeInWords(at);
            break;
        case SlipUndone::Kind::LeftOut:
            mend.label += "leave out " + explanation.term + ", " +
                          (at < writtenStitches ? place : "stitch " + std::to_string(at + 1));
            break;
        case SlipUndone::Kind::Reworked:
            mend.label += "work " + meantThere() + " instead of " + writtenThere() + ", " + place;
            break;
        case SlipUndone::Kind::Rest:
            mend.label += restInWords(explanation);
            break;
        case SlipUndone::Kind::Count:
            mend.label += "work " + countInWords(explanation.term, explanation.figure) +
                          " instead of " + countInWords(explanation.term, explanation.written) +
                          ", from " + explanation.meant.placeInWords(at) + " on";
            break;
        case SlipUndone::Kind::Brackets:
            mend.label += "work the " + explanation.term + " " +
                          figureText(explanation.figure.bySize) + " times instead of " +
                          figureText(explanation.written.bySize) + ", from " +
                          explanation.meant.placeInWords(at) + " on";
            break;
    }
    const bool stitches = explanation.kind == SlipUndone::Kind::PutIn ||
                          explanation.kind == SlipUndone::Kind::Reworked;
    if (explanation.places.size() > 1 &&
        (stitches || explanation.kind == SlipUndone::Kind::LeftOut))
        mend.label += ", each time";
    if (stitches) {
        for (const std::size_t other : explanation.places) {
            mend.redrawn.push_back(
                {row.number, static_cast<int>(other) + 1, explanation.meant.stitches[other].id});
        }
    }
    mend.reworked.push_back({row.number, explanation.meant.ids()});
    return mend;
}

}  // namespace lacewright
