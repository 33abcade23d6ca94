#include "app/window/rows_dialog.h"

#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/window/written_source.h"
#include "core/base/disk.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

const QString kGood =
    QStringLiteral("Cast on: 7\nRow 1 (RS): k1, yo, k1, s2kp, k1, yo, k1.\nRow 2: purl.\n");

class RowsDialogTest : public testing::Test {
 protected:
    void open(const QString& text) {
        dialog_ = std::make_unique<RowsDialog>(prompts_, text, nullptr);
        dialog_->show();
        dialog_->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(dialog_.get()));
    }
    template <class Widget>
    Widget& in(const char* name) {
        auto* widget = dialog_->findChild<Widget*>(QString::fromLatin1(name));
        if (!widget) throw std::runtime_error(std::string("no widget ") + name);
        return *widget;
    }
    bool usable() { return in<QPushButton>("accept").isEnabled(); }
    bool becomes(bool wanted) {
        return QTest::qWaitFor([&] { return usable() == wanted; }, 3000);
    }
    QString outcome() { return in<QLabel>("problem").text(); }

    ScriptedPrompts prompts_;
    std::unique_ptr<RowsDialog> dialog_;
};

TEST_F(RowsDialogTest, ReadsRowsAsTheyAreTyped) {
    open({});
    EXPECT_FALSE(usable());
    EXPECT_TRUE(outcome().isEmpty());
    auto& editor = in<QPlainTextEdit>("rowsText");
    EXPECT_EQ(QApplication::focusWidget(), &editor);
    QTest::keyClicks(&editor, "Row 1: k1, yo, k2tog.");
    ASSERT_TRUE(becomes(true));
    EXPECT_TRUE(outcome().contains("3 columns and 1 row"));
    in<QPushButton>("accept").click();
    EXPECT_EQ(dialog_->chart().width, 3);
}

TEST_F(RowsDialogTest, ListsEveryErrorWithItsPlaceAndACaretAndGoesThere) {
    open(QStringLiteral("Row 1: k1, yoo, k2tog.\nRow 2: p2, ssq.\n"));
    EXPECT_FALSE(usable());
    auto& messages = in<QListWidget>("rowsMessages");
    ASSERT_TRUE(messages.isVisible());
    ASSERT_EQ(messages.count(), 2);
    EXPECT_TRUE(messages.item(0)->text().startsWith("rows:1:12:"))
        << messages.item(0)->text().toStdString();
    EXPECT_TRUE(messages.item(1)->text().startsWith("rows:2:12:"));
    EXPECT_TRUE(messages.item(1)->text().endsWith("^^^"));
    messages.setFocus();
    QTest::keyClick(&messages, Qt::Key_Down);
    QTest::keyClick(&messages, Qt::Key_Down);
    EXPECT_EQ(in<QPlainTextEdit>("rowsText").textCursor().selectedText(), "ssq");
}

TEST_F(RowsDialogTest, FindsThePlaceBehindLettersOfSeveralBytes) {
    open(QStringLiteral("Row 1: k1 – yo, “ssq”.\n"));
    auto& messages = in<QListWidget>("rowsMessages");
    ASSERT_GT(messages.count(), 0);
    messages.setCurrentRow(messages.count() - 1);
    EXPECT_EQ(in<QPlainTextEdit>("rowsText").textCursor().selectedText(), "ssq");
}

TEST_F(RowsDialogTest, MendingTheTextMakesItUsable) {
    open(QStringLiteral("Row 1: k1, yo, k2tog, ssq.\n"));
    EXPECT_FALSE(usable());
    auto& editor = in<QPlainTextEdit>("rowsText");
    in<QListWidget>("rowsMessages").setCurrentRow(0);
    editor.setFocus();
    QTest::keyClicks(&editor, "k1");
    EXPECT_TRUE(becomes(true));
    EXPECT_FALSE(in<QListWidget>("rowsMessages").isVisible());
}

TEST_F(RowsDialogTest, OpensTextThatCannotBeKnittedAndSaysSo) {
    open(QStringLiteral("Cast on: 5\nRow 1: k5.\nRow 2: p3.\n"));
    EXPECT_TRUE(usable());
    EXPECT_TRUE(outcome().contains("cannot be knitted"));
}

TEST_F(RowsDialogTest, ReadsAFile) {
    QTemporaryDir folder;
    const QString path = folder.filePath("rows.txt");
    ASSERT_TRUE(writeFile(path.toStdString(), kGood.toStdString()));
    open({});
    prompts_.filesToOpen = {path};
    in<QPushButton>("openRows").click();
    EXPECT_TRUE(becomes(true));
    EXPECT_EQ(in<QPlainTextEdit>("rowsText").toPlainText(), kGood);
    prompts_.filesToOpen = {folder.filePath("absent.txt")};
    in<QPushButton>("openRows").click();
    EXPECT_EQ(prompts_.told.size(), 1);
}

TEST_F(RowsDialogTest, DrawsOneSizeWhenAskedTo) {
    open(QStringLiteral("Sizes: S (M)\nCast on: 7 (9)\nRow 1: k7 (9).\n"));
    auto& size = in<QComboBox>("rowsSize");
    ASSERT_TRUE(size.isVisible());
    ASSERT_EQ(size.count(), 3);
    size.setFocus();
    QTest::keyClick(&size, Qt::Key_End);
    ASSERT_TRUE(usable());
    EXPECT_TRUE(outcome().contains("9 columns")) << outcome().toStdString();
}

TEST_F(WindowTest, OpensRowsOfTheClipboardAsAChart) {
    QGuiApplication::clipboard()->setText(kGood);
    QString offered;
    prompts_.rowsRead = [&offered](const QString& text) {
        offered = text;
        return std::optional(blankChart(5, 3));
    };
    trigger(CommandId::ChartFromRows);
    EXPECT_EQ(offered, kGood);
    EXPECT_EQ(chart().width, 5);
    QGuiApplication::clipboard()->setText("https://example.org/");
    prompts_.rowsRead = [&offered](const QString& text) {
        offered = text;
        return std::optional<Chart>();
    };
    trigger(CommandId::ChartFromRows);
    EXPECT_TRUE(offered.isEmpty());
    EXPECT_EQ(chart().width, 5);
}

}  // namespace
}  // namespace lacewright::app
