#include <gtest/gtest.h>

#include <QFile>
#include <QKeySequence>
#include <set>
#include <string>

#include "app/window/help_controller.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

TEST(CommandTable, GivesEveryCommandOneRowWithNameTextAndTip) {
    std::set<CommandId> ids;
    std::set<std::string> names;
    for (const Command& command : commandTable()) {
        EXPECT_TRUE(ids.insert(command.id).second) << command.name;
        EXPECT_TRUE(names.insert(command.name).second) << command.name;
        EXPECT_STRNE(command.text, "") << command.name;
        EXPECT_STRNE(command.tip, "") << command.name;
    }
    EXPECT_EQ(ids.size(), static_cast<std::size_t>(CommandId::Stitch9) + 1);
}

TEST(CommandTable, HasNoTwoCommandsOnOneKey) {
    std::map<std::string, std::string> owners;
    for (const Command& command : commandTable()) {
        const QKeySequence key(QString::fromLatin1(command.shortcut));
        EXPECT_EQ(key.isEmpty(), *command.shortcut == '\0') << command.name;
        if (key.isEmpty()) continue;
        const auto [owner, added] = owners.emplace(key.toString().toStdString(), command.name);
        EXPECT_TRUE(added) << command.name << " and " << owner->second << " share "
                           << command.shortcut;
    }
    EXPECT_GT(owners.size(), 20U);
}

TEST(CommandTable, MarksDifferentLettersWithinAMenu) {
    std::map<Menu, std::map<QChar, std::string>> letters;
    for (const Command& command : commandTable()) {
        if (command.menu == Menu::None) continue;
        const QString text = QString::fromUtf8(command.text);
        const auto mark = text.indexOf('&');
        if (mark < 0) continue;
        const auto [owner, added] =
            letters[command.menu].emplace(text[mark + 1].toLower(), command.name);
        EXPECT_TRUE(added) << command.name << " and " << owner->second;
    }
    EXPECT_EQ(letters.size(), 7U);
}

TEST(CommandTable, NamesOnlyIconsThatExist) {
    for (const Command& command : commandTable()) {
        if (*command.icon == '\0') continue;
        EXPECT_TRUE(QFile::exists(QStringLiteral(":/icons/%1.svg").arg(command.icon)))
            << command.icon;
    }
}

TEST_F(WindowTest, KnowsWhatEveryCommandDoes) {
    for (const Command& command : commandTable()) {
        EXPECT_TRUE(window_->actions().hasHandler(command.id)) << command.name;
    }
}

TEST(HelpController, ListsEveryKey) {
    const QString list = HelpController::keyList();
    EXPECT_TRUE(list.contains("Ctrl+S"));
    EXPECT_TRUE(list.contains("yarn over"));
}

}  // namespace
}  // namespace lacewright::app
