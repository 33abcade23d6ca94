#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

using testing::HasSubstr;

TEST(Cli, HelpNamesEveryVerb) {
    for (const auto& args : {std::vector<std::string>{"--help"}, {"-h"}, {}}) {
        const Ran ran = run(args);
        EXPECT_EQ(ran.code, kDone);
        for (const Verb& verb : verbs()) {
            EXPECT_THAT(ran.out, HasSubstr("  " + std::string(verb.name) + " "));
        }
    }
}

TEST(Cli, EveryVerbExplainsEveryOption) {
    for (const Verb& verb : verbs()) {
        const Ran ran = run({std::string(verb.name), "--help"});
        EXPECT_EQ(ran.code, kDone);
        EXPECT_THAT(ran.out, HasSubstr("usage: lacewright " + std::string(verb.name)));
        for (const Option& option : verb.options) {
            EXPECT_THAT(ran.out, HasSubstr(std::string(option.name)));
            EXPECT_FALSE(option.help.empty());
        }
    }
}

TEST(Cli, VersionIsTheProjects) {
    EXPECT_EQ(run({"--version"}).out, "lacewright " PROJECT_VERSION "\n");
}

TEST(Cli, AnUnknownVerbSuggestsTheNearest) {
    expectMisuse(run({"chekc", "a.lacewright"}), "did you mean \"check\"?");
    expectMisuse(run({"drwa"}), "did you mean \"draw\"?");
    const Ran far = run({"zzzzzzzz"});
    expectMisuse(far, "no verb \"zzzzzzzz\"");
    EXPECT_THAT(far.err, testing::Not(HasSubstr("did you mean")));
}

TEST(Cli, AnUnknownOptionSuggestsTheNearest) {
    expectMisuse(run({"check", "--jsn", "a.lacewright"}), "did you mean \"--json\"?");
    expectMisuse(run({"draw", "--sise=M", "a.lacewright"}), "did you mean \"--size\"?");
}

TEST(Cli, MisuseIsOneSentence) {
    expectMisuse(run({"check"}), "check needs FILE...");
    expectMisuse(run({"check", "a", "--size"}), "--size must be followed by NAME");
    expectMisuse(run({"check", "--json", "--json", "a"}), "--json is given twice");
    expectMisuse(run({"check", "--json=yes", "a"}), "--json takes no argument");
}

TEST(Cli, WordsThatNameNoFileAreForTheCommandLine) {
    EXPECT_FALSE(isForCli({}));
    EXPECT_FALSE(isForCli({"my.lacewright"}));
    EXPECT_FALSE(isForCli({"./charts/a", "b.lacewright"}));
    EXPECT_TRUE(isForCli({"check", "a.lacewright"}));
    EXPECT_TRUE(isForCli({"--version"}));
    EXPECT_TRUE(isForCli({"chekc"}));
}

}  // namespace
}  // namespace lacewright::cli
