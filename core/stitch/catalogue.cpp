#include "core/stitch/catalogue.h"

#include <utility>

namespace lacewright {
namespace {

std::uint8_t bitsOf(const Stitch& stitch) {
    unsigned bits = 0;
    if (stitch.span > 1) bits |= kWideBit;
    if (stitch.kind == StitchKind::Unknown) bits |= kUnknownBit;
    if (stitch.kind == StitchKind::BindOff) bits |= kBindOffBit;
    if (stitch.kind == StitchKind::NoStitch) bits |= kNoStitchBit;
    if (stitch.kind == StitchKind::YarnOver) bits |= kYarnOverBit;
    if (stitch.net() != 0) bits |= kShapingBit;
    if (stitch.kind == StitchKind::CastOn) bits |= kCastOnBit;
    return static_cast<std::uint8_t>(bits);
}

}  // namespace

StitchCatalogue::StitchCatalogue(std::vector<Stitch> stitches) : stitches_(std::move(stitches)) {
    Stitch covered;
    covered.takes = 0;
    covered.makes = 0;
    covered.span = 0;
    stitches_.insert(stitches_.begin(), std::move(covered));
    packed_.reserve(stitches_.size());
    spans_.reserve(stitches_.size());
    bits_.reserve(stitches_.size());
    for (std::size_t i = 0; i < stitches_.size(); ++i) {
        const Stitch& stitch = stitches_[i];
        packed_.push_back(static_cast<std::uint32_t>(stitch.takes) |
                          (static_cast<std::uint32_t>(stitch.makes) << 16U));
        spans_.push_back(static_cast<std::uint8_t>(stitch.span));
        bits_.push_back(i == kCovered ? std::uint8_t{kCoveredBit} : bitsOf(stitch));
        if (i > 0) byId_.emplace(stitch.id, static_cast<StitchIndex>(i));
    }
}

std::optional<StitchIndex> StitchCatalogue::find(std::string_view id) const {
    const auto found = byId_.find(id);
    if (found == byId_.end()) return std::nullopt;
    return found->second;
}

Result<StitchCataloguePtr> StitchCatalogue::with(Stitch stitch) const {
    if (auto problem = stitchProblem(stitch)) return *problem;
    if (find(stitch.id)) {
        return Error{
            ErrorCode::Refused, "A stitch named \"" + stitch.id + "\" exists already.", {}};
    }
    if (stitches_.size() > 0xFFFE) {
        return Error{ErrorCode::OutOfRange, "A chart can hold at most 65534 kinds of stitch.", {}};
    }
    std::vector<Stitch> grown(stitches_.begin() + 1, stitches_.end());
    grown.push_back(std::move(stitch));
    return StitchCataloguePtr(std::make_shared<StitchCatalogue>(std::move(grown)));
}

std::optional<Error> stitchProblem(const Stitch& stitch) {
    const auto complain = [&stitch](const std::string& what) {
        return Error{ErrorCode::OutOfRange, "Stitch \"" + stitch.id + "\" " + what, {}};
    };
    if (stitch.id.empty()) return Error{ErrorCode::Malformed, "A stitch needs an id.", {}};
    if (stitch.id.find_first_of(" \t\r\n*\"") != std::string::npos) {
        return complain("must not have blanks, quotes or * in its id.");
    }
    if (stitch.id.size() > static_cast<std::size_t>(kMaxIdLength)) {
        return complain("must have an id of at most " + std::to_string(kMaxIdLength) + " bytes.");
    }
    const auto range = [](int value, int low, int high) { return value >= low && value <= high; };
    const std::string most = std::to_string(kMaxLoops);
    if (!range(stitch.takes, 0, kMaxLoops)) return complain("must take 0 to " + most + " loops.");
    if (!range(stitch.makes, 0, kMaxLoops)) return complain("must make 0 to " + most + " loops.");
    if (!range(stitch.span, 1, kMaxSpan)) {
        return complain("must span 1 to " + std::to_string(kMaxSpan) + " cells.");
    }
    return std::nullopt;
}

}  // namespace lacewright
