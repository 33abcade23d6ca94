#pragma once

#include <array>
#include <span>
#include <string_view>

#include "core/chart/chart.h"
#include "core/file/fields.h"

// How the choices of a chart are spelt in its file; the first of each list is what a missing member
// stands for.
namespace lacewright {

inline constexpr std::array<Spelling<Worked>, 2> kWorked = {
    {{Worked::Flat, "flat"}, {Worked::InTheRound, "in the round"}}};

inline constexpr std::array<Spelling<Side>, 2> kSides = {
    {{Side::Right, "right"}, {Side::Wrong, "wrong"}}};

inline constexpr std::array<Spelling<Uncharted>, 4> kUncharted = {
    {{Uncharted::None, "none"},
     {Uncharted::AsTheyPresent, "as they present"},
     {Uncharted::Purl, "purl"},
     {Uncharted::Knit, "knit"}}};

inline constexpr std::array<Spelling<Edge>, 2> kEdges = {
    {{Edge::Start, "start"}, {Edge::End, "end"}}};

inline constexpr std::array<Spelling<Lean>, 4> kLeans = {{{Lean::None, "none"},
                                                          {Lean::Right, "right"},
                                                          {Lean::Left, "left"},
                                                          {Lean::Centred, "centred"}}};

// A stitch of kind Unknown is defined nowhere, so it has no spelling.
inline constexpr std::array<Spelling<StitchKind>, 11> kStitchKinds = {
    {{StitchKind::Plain, "plain"},
     {StitchKind::YarnOver, "yarn over"},
     {StitchKind::Increase, "increase"},
     {StitchKind::Decrease, "decrease"},
     {StitchKind::Gather, "gather"},
     {StitchKind::Cross, "cross"},
     {StitchKind::Slip, "slip"},
     {StitchKind::Texture, "texture"},
     {StitchKind::BindOff, "bind off"},
     {StitchKind::CastOn, "cast on"},
     {StitchKind::NoStitch, "no stitch"}}};

// Requires: the choice has a spelling.
template <class Choice, std::size_t N>
std::string_view spelt(const std::array<Spelling<Choice>, N>& spellings, Choice choice) {
    for (const Spelling<Choice>& spelling : spellings) {
        if (spelling.choice == choice) return spelling.text;
    }
    return {};
}

}  // namespace lacewright
