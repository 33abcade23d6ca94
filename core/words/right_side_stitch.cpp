#include "core/words/right_side_stitch.h"

#include <algorithm>
#include <map>

#include "core/words/reader.h"

namespace lacewright {

namespace {

// The terms of a wording one after the other, "sl k psso": what names a joined stitch.
std::string keyOf(const std::vector<TermWorked>& terms) {
    std::string key;
    for (const TermWorked& term : terms) key += (key.empty() ? "" : " ") + term.term;
    return key;
}

std::string intoKey(const std::vector<TermWorked>& body, int takes) {
    return "into " + std::to_string(takes) + ": " + keyOf(body);
}

// Terms of a wording without open stretches, groups written out.
void collect(const Elements& elements, std::vector<TermWorked>& out) {
    for (const Element& element : elements) {
        if (const auto* work = std::get_if<Working>(&element.what)) {
            for (int i = 0; i < work->count.of(0); ++i) {
                out.push_back({work->term, work->takes, work->makes, {}, {}, {}});
            }
        } else if (const auto* group = std::get_if<Group>(&element.what)) {
            for (int i = 0; i < group->times.of(0); ++i) collect(group->body, out);
        }
    }
}

using Wordings = std::map<std::string, std::string>;  // key to id

// Adds the wording of a catalogue stitch when it is more than one term.
void addWording(const std::string& wording, const std::string& id, Wordings& wordings) {
    const ReadRows read = readWritten("Row 1: " + wording);
    if (wording.empty() || read.hasErrors() || read.pattern.rows.empty()) return;
    const Elements& elements = read.pattern.rows.front().elements;
    std::vector<TermWorked> terms;
    if (elements.size() == 1) {
        if (const auto* one = std::get_if<IntoOne>(&elements.front().what)) {
            collect(one->body, terms);
            wordings.emplace(intoKey(terms, one->takes), id);
            return;
        }
        const auto* group = std::get_if<Group>(&elements.front().what);
        if (group && group->body.size() == 1) {
            if (const auto* one = std::get_if<IntoOne>(&group->body.front().what)) {
                collect(one->body, terms);
                wordings.emplace(intoKey(terms, one->takes), id);
                return;
            }
        }
    }
    collect(elements, terms);
    if (terms.size() > 1) wordings.emplace(keyOf(terms), id);
}

const Wordings& wordingsOf(Side side) {
    static const auto build = [](Side of) {
        Wordings wordings;
        const bool right = of == Side::Right;
        // Decreases spelled out; what they show on the other side is common practice, no source.
        const auto put = [&](const char* wording, const char* rightId, const char* wrongId) {
            addWording(wording, right ? rightId : wrongId, wordings);
        };
        put("sl 1, k1, psso", "skp", "ssp");
        put("sl 1, k2tog, psso", "sk2p", "sssp");
        put("sl 1, p1, psso", "ssp", "ssk");
        put("sl 1, p2tog, psso", "sssp", "sssk");
        put("sl 2, k1, p2sso", "s2kp", "sspp2");
        const StitchCatalogue& stitches = *builtInStitches();
        for (std::size_t i = 1; i <= stitches.size(); ++i) {
            const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
            addWording((right ? stitch.rightSide : stitch.wrongSide).abbreviation, stitch.id,
                       wordings);
        }
        return wordings;
    };
    static const Wordings right = build(Side::Right);
    static const Wordings wrong = build(Side::Wrong);
    return side == Side::Right ? right : wrong;
}

std::string knownId(const std::string& key, int takes, int makes, Side side) {
    const auto at = wordingsOf(side).find(key);
    if (at == wordingsOf(side).end()) return {};
    const Stitch& stitch = (*builtInStitches())[builtInStitches()->find(at->second).value()];
    return stitch.takes == takes && stitch.makes == makes ? at->second : std::string();
}

// Where the stitches begin that the last term passes over or puts back: a decrease by passing
// over begins at its slipped stitches.
std::size_t startOfJoined(const std::vector<TermWorked>& terms, std::size_t last) {
    const int passed = std::max(1, -terms[last].makes);
    const auto slips = [&](std::size_t at) {
        int run = 0;
        while (run < passed && at + static_cast<std::size_t>(run) < last &&
               terms[at + static_cast<std::size_t>(run)].term.starts_with("sl"))
            ++run;
        return run == passed;
    };
    if (terms[last].makes < 0 && terms[last].takes == 0) {
        for (std::size_t at = last; at-- > 0;) {
            if (slips(at)) return at;
        }
    }
    // Without a slipped stitch: as far back as it needs to take and make a whole number.
    int takes = terms[last].takes;
    int makes = terms[last].makes;
    std::size_t at = last;
    while (at > 0 && (makes < 1 || takes < 0 || at == last)) {
        --at;
        takes += terms[at].takes;
        makes += terms[at].makes;
    }
    return at;
}

TermWorked joined(std::vector<TermWorked> terms, Side side) {
    TermWorked one;
    one.takes = one.makes = 0;
    for (const TermWorked& term : terms) {
        one.takes += term.takes;
        one.makes += term.makes;
    }
    one.term = keyOf(terms);
    one.place = spanning(terms.front().place, terms.back().place);
    const std::string id = knownId(one.term, one.takes, one.makes, side);
    (side == Side::Right ? one.rightId : one.wrongId) = id;
    return one;
}

std::string nameOf(const TermWorked& term, Side side, const std::vector<std::string>& ownNames) {
    std::string name;
    for (const char c : term.term) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        name += plain ? c : '-';
    }
    constexpr std::size_t kLongest = 40;
    if (name.size() > kLongest) name.resize(kLongest);
    const bool own = std::find(ownNames.begin(), ownNames.end(), term.term) != ownNames.end();
    if (side == Side::Wrong && !own) name += "-ws";
    if (builtInStitches()->find(name)) {
        name += "-" + std::to_string(term.takes) + "-" + std::to_string(term.makes);
    }
    return name;
}

}  // namespace

TermWorked intoOneStitch(const std::vector<TermWorked>& body, int takes, Side side,
                         const Place& place) {
    TermWorked one;
    one.takes = takes;
    one.makes = 0;
    for (const TermWorked& term : body) one.makes += term.makes;
    const std::string key = intoKey(body, takes);
    one.term = keyOf(body) + " in " + std::to_string(takes);
    one.place = place;
    (side == Side::Right ? one.rightId : one.wrongId) = knownId(key, one.takes, one.makes, side);
    return one;
}

Result<std::vector<RowStitch>> rightSideStitches(std::vector<TermWorked> terms, Side side,
                                                 const std::vector<std::string>& ownNames) {
    std::vector<TermWorked> whole;
    for (TermWorked& term : terms) {
        whole.push_back(std::move(term));
        if (whole.back().takes >= 0 && whole.back().makes >= 0 &&
            whole.back().term != "pass next st over") {
            continue;
        }
        const std::size_t start = startOfJoined(whole, whole.size() - 1);
        const auto from = whole.begin() + static_cast<std::ptrdiff_t>(start);
        TermWorked one = joined({from, whole.end()}, side);
        whole.erase(from, whole.end());
        whole.push_back(std::move(one));
    }
    std::vector<RowStitch> stitches;
    for (const TermWorked& term : whole) {
        if (term.takes == 0 && term.makes == 0) continue;  // only moves the yarn
        if (term.takes < 0 || term.makes < 0 || term.takes > kMaxLoops || term.makes > kMaxLoops) {
            return Error{ErrorCode::Refused,
                         "\"" + term.term +
                             "\" takes or makes a number of stitches that no one "
                             "symbol can show.",
                         {}};
        }
        RowStitch stitch;
        stitch.takes = term.takes;
        stitch.makes = term.makes;
        stitch.place = term.place;
        stitch.id = side == Side::Right ? term.rightId : term.wrongId;
        if (term.term == "garter st") stitch.id = side == Side::Right ? "k" : "p";
        if (term.term == "st st") stitch.id = "k";
        if (term.term == "rev st st") stitch.id = "p";
        stitch.presents =
            term.term == "asis" || term.term == "rib" || term.term == "double moss st";
        stitch.moss = term.term == "moss st";
        if (stitch.presents || stitch.moss) stitch.id = "k";
        if (stitch.id.empty() && term.takes == 0 && term.makes == 1) stitch.id = "yo";
        if (stitch.id.empty()) {
            stitch.id = nameOf(term, side, ownNames);
            stitch.own = true;
        }
        stitches.push_back(std::move(stitch));
    }
    return stitches;
}

}  // namespace lacewright
