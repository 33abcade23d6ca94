#include "core/sheet/svg.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/base/text.h"
#include "core/sheet/path_data.h"

namespace lacewright {
namespace {

constexpr int kMostElements = 32'000;  // of one path; Qt cuts it off after 32,767
constexpr double kMmPerPoint = 25.4 / 72;

std::string hexColour(std::uint32_t colour) {
    constexpr char kDigits[] = "0123456789abcdef";
    std::string text = "#";
    for (int shift = 20; shift >= 0; shift -= 4) text += kDigits[(colour >> shift) & 0xFU];
    return text;
}

// At most two decimals, none that are zero.
std::string shortNumber(double value) {
    const auto hundredths = static_cast<long long>(std::llround(value * 100));
    std::string text = std::to_string(hundredths / 100);
    if (hundredths % 100 == 0) return text;
    text += hundredths % 100 < 10 ? ".0" : ".";
    text += std::to_string(hundredths % 100);
    if (text.back() == '0') text.pop_back();
    return text;
}

bool isText(Role role) {
    return role >= Role::Title;
}

std::string styleRule(Role role) {
    const Look& look = lookOf(role);
    std::string rule = std::string(".") + look.name + "{";
    if (isText(role)) {
        rule += "fill:" + hexColour(look.ink) + (look.bold ? ";font-weight:bold" : "");
    } else {
        rule += "fill:" + (look.filled ? hexColour(look.filling) : std::string("none"));
        if (look.opacity < 1) rule += ";fill-opacity:" + shortNumber(look.opacity);
        if (look.pen > 0) {
            rule += ";stroke:" + hexColour(look.ink) + ";stroke-width:" + shortNumber(look.pen);
        }
        if (look.dash > 0) rule += ";stroke-dasharray:" + shortNumber(look.dash);
        if (look.pen > 0 && role == Role::Stitch) {
            rule += ";stroke-linecap:round;stroke-linejoin:round";
        } else if (look.pen > 0 && look.dash <= 0) {
            rule += ";stroke-linecap:square";
        }
    }
    return rule + "}\n";
}

class SvgWriter {
 public:
    SvgWriter(const Sheet& sheet, const Page& page) : sheet_(sheet), page_(page) {}

    std::string write() {
        prepareGlyphs();
        head();
        for (const ItemGroup& group : page_.groups) addGroup(group);
        out_ += "</svg>\n";
        return std::move(out_);
    }

 private:
    // The outlines or the filled parts of a glyph, ready to be set down.
    struct Part {
        std::string classes;
        std::vector<GlyphStroke> strokes;
        int elements = 0;
    };

    void prepareGlyphs() {
        for (const GlyphShape& glyph : sheet_.glyphs) {
            std::vector<Part> parts;
            for (const bool filled : {true, false}) {
                Part part;
                part.classes = std::string(lookOf(filled ? Role::SolidStitch : Role::Stitch).name) +
                               " " + stitchClass(glyph.stitch);
                for (const GlyphStroke& stroke : glyph.strokes) {
                    const auto steps = parsePathTail(stroke.tail);
                    if (stroke.filled != filled || !steps) continue;
                    part.strokes.push_back(stroke);
                    part.elements += pathElements(*steps);
                }
                if (!part.strokes.empty()) parts.push_back(std::move(part));
            }
            glyphs_.push_back(std::move(parts));
        }
    }

    void head() {
        const auto mm = [&](int units) { return shortNumber(units * sheet_.unitMm) + "mm"; };
        out_ +=
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" lang=\"en\" width=\"" +
            mm(page_.width) + "\" height=\"" + mm(page_.height) + "\" viewBox=\"0 0 " +
            std::to_string(page_.width) + " " + std::to_string(page_.height) + "\" role=\"" +
            (sheet_.rowsInWords ? "graphics-document" : "img") +
            "\" aria-labelledby=\"title desc\">\n<title id=\"title\">" + escapeXml(sheet_.title) +
            "</title>\n<desc id=\"desc\">" + escapeXml(sheet_.description) + "</desc>\n<style>\n";
        const std::vector<std::string> families(std::begin(kFontFamilies), std::end(kFontFamilies));
        out_ += "text{font-family:" + join(families, ", ") + "}\n";
        for (int i = 0; i < static_cast<int>(Role::Count); ++i)
            out_ += styleRule(static_cast<Role>(i));
        out_ += "</style>\n";
    }

    void addGroup(const ItemGroup& group) {
        out_ += "<g class=\"" + group.name;
        if (group.rowNumber > 0) {
            const std::string number = std::to_string(group.rowNumber);
            out_ += " row-" + number + (group.wrongSide ? " ws" : " rs") + "\" id=\"row-" + number;
        }
        out_ += "\">\n";
        if (!group.title.empty()) out_ += "<title>" + escapeXml(group.title) + "</title>\n";
        for (const Item& item : group.items) std::visit([this](const auto& it) { add(it); }, item);
        out_ += "</g>\n";
    }

    void add(const Shape& shape) {
        out_ += std::string("<path class=\"") + lookOf(shape.role).name + "\" d=\"";
        std::size_t lineStart = out_.size();
        for (const std::vector<Spot>& run : shape.runs) {
            for (std::size_t i = 0; i < run.size(); ++i) {
                if (i == 0) {
                    move(run[0].x, run[0].y);
                } else {
                    step(run[i].x - run[i - 1].x, run[i].y - run[i - 1].y);
                }
            }
            if (shape.closed) out_ += 'z';
            if (out_.size() - lineStart < kLongLine) continue;
            out_ += '\n';
            lineStart = out_.size();
        }
        out_ += "\"/>\n";
    }

    void add(const GlyphRun& run) {
        for (const Part& part : glyphs_[static_cast<std::size_t>(run.glyph)]) {
            const std::size_t most =
                static_cast<std::size_t>(std::max(1, kMostElements / part.elements));
            for (std::size_t first = 0; first < run.xs.size(); first += most) {
                const std::size_t end = std::min(run.xs.size(), first + most);
                out_ += "<path class=\"" + part.classes + "\" d=\"";
                for (std::size_t i = first; i < end; ++i) {
                    for (const GlyphStroke& stroke : part.strokes) {
                        move(run.xs[i] + stroke.x, run.y + stroke.y);
                        out_ += stroke.tail;
                    }
                }
                out_ += "\"/>\n";
            }
        }
    }

    void add(const Text& text) {
        constexpr std::array<const char*, 3> kAnchors = {"", " text-anchor=\"middle\"",
                                                         " text-anchor=\"end\""};
        const std::string x = std::to_string(text.at.x);
        const std::string y = std::to_string(text.at.y);
        out_ += std::string("<text class=\"") + lookOf(text.role).name + "\" x=\"" + x + "\" y=\"" +
                y + "\" font-size=\"" + shortNumber(text.points * kMmPerPoint / sheet_.unitMm) +
                "\"" + kAnchors[static_cast<std::size_t>(text.anchor)];
        if (text.upward) out_ += " transform=\"rotate(-90 " + x + " " + y + ")\"";
        out_ += ">" + escapeXml(text.text) + "</text>\n";
    }

    void number(int value) {
        std::array<char, 12> digits;
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value).ptr;
        out_.append(digits.data(), end);
    }
    void move(int x, int y) {
        out_ += 'M';
        number(x);
        if (y >= 0) out_ += ' ';
        number(y);
    }
    void step(int dx, int dy) {
        if (dy == 0) {
            out_ += 'h';
            number(dx);
        } else if (dx == 0) {
            out_ += 'v';
            number(dy);
        } else {
            out_ += 'l';
            number(dx);
            if (dy >= 0) out_ += ' ';
            number(dy);
        }
    }

    static constexpr std::size_t kLongLine = 4000;  // bytes; librsvg refuses lines of 10 MB

    const Sheet& sheet_;
    const Page& page_;
    std::vector<std::vector<Part>> glyphs_;
    std::string out_;
};

}  // namespace

std::string stitchClass(const std::string& id) {
    std::string name = "stitch-";
    for (const char c : id) {
        const bool plain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') ||
                           (c >= 'A' && c <= 'Z') || c == '-' || c == '_';
        if (plain) {
            name += c;
        } else {
            name += "_" + std::to_string(static_cast<unsigned char>(c));
        }
    }
    return name;
}

std::string svgText(const Sheet& sheet, std::size_t page) {
    return SvgWriter(sheet, sheet.pages[page]).write();
}

}  // namespace lacewright
