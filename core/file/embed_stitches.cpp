// Build tool: reads resources/stitches.json and writes it out as C++, so that the program carries
// its stitches and a slip in the file stops the build.
// usage: embed_stitches stitches.json out.cpp

#include <fstream>
#include <iostream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

namespace {

using nlohmann::json;

const std::map<std::string, std::string> kKinds = {
    {"plain", "Plain"},     {"yarn over", "YarnOver"}, {"increase", "Increase"},
    {"decrease", "Decrease"}, {"gather", "Gather"},    {"cross", "Cross"},
    {"slip", "Slip"},       {"texture", "Texture"},    {"bind off", "BindOff"},
    {"cast on", "CastOn"},  {"no stitch", "NoStitch"}};
const std::map<std::string, std::string> kLeans = {
    {"none", "None"}, {"right", "Right"}, {"left", "Left"}, {"centred", "Centred"}};

std::string quoted(const json& text) { return "R\"~(" + text.get<std::string>() + ")~\""; }

std::string strokes(const json& glyph) {
    std::ostringstream out;
    out << "{";
    for (const json& stroke : glyph) {
        out << "{" << stroke.at("at").at(0).get<int>() << "," << stroke.at("at").at(1).get<int>() << ","
            << quoted(stroke.at("tail")) << "," << (stroke.value("filled", false) ? "true" : "false")
            << "},";
    }
    out << "}";
    return out.str();
}

std::string wording(const json& side) {
    return "{" + quoted(side.at("abbreviation")) + "," + quoted(side.at("instruction")) + "}";
}

std::string stitch(const json& s) {
    std::ostringstream out;
    out << "    {" << quoted(s.at("id")) << "," << quoted(s.at("name")) << "," << s.at("takes").get<int>()
        << "," << s.at("makes").get<int>() << "," << s.at("span").get<int>() << ",Lean::"
        << kLeans.at(s.at("lean")) << ",StitchKind::" << kKinds.at(s.at("kind")) << ","
        << quoted(s.at("mirror")) << "," << wording(s.at("right")) << "," << wording(s.at("wrong")) << ","
        << strokes(s.at("glyph")) << "," << (s.value("shaded", false) ? "true" : "false") << ","
        << quoted(s.at("source")) << "},\n";
    return out.str();
}

}  // namespace

int main(int argc, char** argv) try {
    if (argc != 3) {
        std::cerr << "usage: embed_stitches stitches.json out.cpp\n";
        return 2;
    }
    std::ifstream in(argv[1]);
    const json catalogue = json::parse(in);
    std::ofstream out(argv[2]);
    out << "#include \"core/stitch/catalogue.h\"\n\nnamespace lacewright {\n\n"
           "const StitchCataloguePtr& builtInStitches() {\n"
           "    static const StitchCataloguePtr catalogue =\n"
           "        std::make_shared<StitchCatalogue>(std::vector<Stitch>{\n";
    std::set<std::string> ids;
    for (const json& s : catalogue.at("stitches")) {
        if (!ids.insert(s.at("id").get<std::string>()).second) {
            throw std::runtime_error("two stitches are called " + s.at("id").dump());
        }
        out << stitch(s);
    }
    out << "        });\n    return catalogue;\n}\n\n}  // namespace lacewright\n";
    return out.flush() ? 0 : 2;
} catch (const std::exception& error) {
    std::cerr << argv[1] << ": " << error.what() << "\n";
    return 2;
}
