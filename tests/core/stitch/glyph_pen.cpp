#include "tests/core/stitch/glyph_pen.h"

#include <cmath>
#include <numbers>
#include <regex>
#include <string>

namespace lacewright {
namespace {

constexpr int kStepsPerCurve = 48;

std::optional<std::size_t> numbersPer(char command) {
    switch (command) {
        case 'h':
        case 'v':
            return 1;
        case 'l':
            return 2;
        case 'q':
            return 4;
        case 'c':
            return 6;
        case 'a':
            return 7;
        case 'z':
            return 0;
        default:
            return std::nullopt;
    }
}

// Coordinates i, i + 1 of a command as a point seen from where the command began.
PenPoint away(PenPoint from, const double* numbers) {
    return {from.x + numbers[0], from.y + numbers[1]};
}

void curve(std::vector<PenPoint>& points, const std::vector<PenPoint>& control) {
    for (int step = 1; step <= kStepsPerCurve; ++step) {
        const double t = static_cast<double>(step) / kStepsPerCurve;
        std::vector<PenPoint> left = control;  // de Casteljau
        for (std::size_t n = left.size() - 1; n > 0; --n) {
            for (std::size_t i = 0; i < n; ++i) {
                left[i] = {left[i].x + t * (left[i + 1].x - left[i].x),
                           left[i].y + t * (left[i + 1].y - left[i].y)};
            }
        }
        points.push_back(left.front());
    }
}

// Circular arcs only: SVG 1.1, appendix F.6.5, with both radii alike and no rotation.
bool arc(std::vector<PenPoint>& points, const double* n) {
    const PenPoint from = points.back();
    const PenPoint to = away(from, n + 5);
    const double r = n[0];
    const double half = std::hypot(to.x - from.x, to.y - from.y) / 2;
    if (n[1] != r || n[2] != 0 || half == 0 || r < half - 0.01) return false;
    const bool large = n[3] != 0;
    const bool sweep = n[4] != 0;
    const double rise = std::sqrt(std::max(0.0, r * r - half * half)) * (large == sweep ? -1 : 1);
    const PenPoint middle{(from.x + to.x) / 2, (from.y + to.y) / 2};
    const PenPoint centre{middle.x - rise * (to.y - from.y) / (2 * half),
                          middle.y + rise * (to.x - from.x) / (2 * half)};
    const double start = std::atan2(from.y - centre.y, from.x - centre.x);
    double turn = std::atan2(to.y - centre.y, to.x - centre.x) - start;
    if (sweep && turn < 0) turn += 2 * std::numbers::pi;
    if (!sweep && turn > 0) turn -= 2 * std::numbers::pi;
    for (int step = 1; step <= kStepsPerCurve; ++step) {
        const double angle = start + turn * step / kStepsPerCurve;
        points.push_back({centre.x + r * std::cos(angle), centre.y + r * std::sin(angle)});
    }
    return true;
}

bool follow(std::vector<PenPoint>& points, char command, const double* n) {
    const PenPoint from = points.back();
    switch (command) {
        case 'h':
            points.push_back({from.x + n[0], from.y});
            return true;
        case 'v':
            points.push_back({from.x, from.y + n[0]});
            return true;
        case 'l':
            points.push_back(away(from, n));
            return true;
        case 'q':
            curve(points, {from, away(from, n), away(from, n + 2)});
            return true;
        case 'c':
            curve(points, {from, away(from, n), away(from, n + 2), away(from, n + 4)});
            return true;
        case 'a':
            return arc(points, n);
        default:
            return false;
    }
}

}  // namespace

std::optional<std::vector<PenPoint>> pointsAlong(const GlyphStroke& stroke) {
    static const std::regex kWhole("([lhvcqaz][-0-9. ]*)+");
    static const std::regex kCommand("([a-z])([-0-9. ]*)");
    static const std::regex kNumber(R"(-?(\d+(\.\d+)?|\.\d+))");
    if (!std::regex_match(stroke.tail, kWhole)) return std::nullopt;
    std::vector<PenPoint> points{{static_cast<double>(stroke.x), static_cast<double>(stroke.y)}};
    const std::sregex_iterator none;
    for (std::sregex_iterator it(stroke.tail.begin(), stroke.tail.end(), kCommand); it != none;
         ++it) {
        const char command = (*it)[1].str().front();
        const std::string text = (*it)[2];
        std::vector<double> numbers;
        for (std::sregex_iterator n(text.begin(), text.end(), kNumber); n != none; ++n) {
            numbers.push_back(std::stod(n->str()));
        }
        const std::size_t per = numbersPer(command).value_or(0);
        if (command == 'z') {
            if (!numbers.empty()) return std::nullopt;
            points.push_back(points.front());
            continue;
        }
        if (numbers.empty() || numbers.size() % per != 0) return std::nullopt;
        for (std::size_t i = 0; i < numbers.size(); i += per) {
            if (!follow(points, command, numbers.data() + i)) return std::nullopt;
        }
    }
    return points;
}

}  // namespace lacewright
