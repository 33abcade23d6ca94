#include "app/window/compare_window.h"

#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QTextBrowser>
#include <QUrl>

#include "app/window/starters.h"
#include "core/words/writer.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

class CompareTest : public WindowTest {
 protected:
    void SetUp() override {
        WindowTest::SetUp();
        QGuiApplication::clipboard()->clear();
        for (const Starter& starter : starters()) {
            if (QString(starter.file) == "leaf-scarf") window_->showChart(*chartOf(starter), {});
        }
        ASSERT_EQ(chart().sizes.size(), 3U);
        trigger(CommandId::CompareRows);
        find<CompareWindow>("compareWindow").activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&find<CompareWindow>("compareWindow")));
    }
    QPlainTextEdit& editor() {
        return *find<CompareWindow>("compareWindow").findChild<QPlainTextEdit*>("rowsText");
    }
    QTextBrowser& page() { return find<QTextBrowser>("differences"); }
    QString verdict() { return find<QLabel>("comparison").text(); }
    bool tells(const char* words) {
        return QTest::qWaitFor([&] { return verdict().contains(QString::fromUtf8(words)); }, 3000);
    }
    QString rows() { return QString::fromStdString(writeRows(chart())->text()); }
    void clickFirst(const QString& word) {
        const QString html = page().toHtml();
        const auto at = html.indexOf(word);
        ASSERT_GE(at, 0) << html.toStdString();
        const auto start = html.lastIndexOf("href=\"", at) + 6;
        Q_EMIT page().anchorClicked(QUrl(html.mid(start, html.indexOf('"', start) - start)));
    }
};

TEST_F(CompareTest, AsksForATextFirst) {
    EXPECT_TRUE(verdict().startsWith("Paste or open"));
    EXPECT_FALSE(page().isVisible());
    EXPECT_TRUE(find<QPlainTextEdit>("chartRows").toPlainText().contains("Row 1 (RS):"));
    EXPECT_TRUE(QTest::qWaitFor([this] { return QApplication::focusWidget() == &editor(); }, 3000));
}

TEST_F(CompareTest, ProvesTheRowsOfTheChartTheSameForEverySize) {
    editor().setPlainText(rows());
    EXPECT_TRUE(tells("The same knitting, proven for every size."));
    EXPECT_TRUE(find<QPlainTextEdit>("chartRows").extraSelections().isEmpty());
    auto& size = find<QComboBox>("compareSize");
    size.setFocus();
    QTest::keyClick(&size, Qt::Key_Down);
    EXPECT_FALSE(tells("proven for every size"));
    EXPECT_FALSE(verdict().isEmpty());
}

TEST_F(CompareTest, ShowsWhereTheyPartAndLeadsToCellAndWord) {
    const QString right = rows();
    const auto at = right.indexOf("s2kp", right.indexOf("Row 3"));
    ASSERT_GT(at, 0);
    QString wrong = right;
    editor().setPlainText(wrong.replace(at, 4, "sk2p"));
    ASSERT_TRUE(tells("1 row differs."));
    EXPECT_TRUE(page().toPlainText().contains("the chart has s2kp"));
    EXPECT_EQ(find<QPlainTextEdit>("chartRows").extraSelections().size(), 1);
    view().moveCursor({0, 1});
    clickFirst("in the text write");
    EXPECT_EQ(view().cursor().row, 1);
    EXPECT_EQ(stitchAt(1, view().cursor().column), "s2kp");
    EXPECT_EQ(editor().textCursor().selectedText(), "sk2p");
    QTest::keyClicks(&editor(), "s2kp");
    EXPECT_TRUE(tells("The same knitting"));
}

TEST_F(CompareTest, FollowsTheChart) {
    editor().setPlainText(rows());
    ASSERT_TRUE(tells("The same knitting"));
    draw(1, 8, "sk2p");
    EXPECT_TRUE(tells("1 row differs."));
    trigger(CommandId::Undo);
    EXPECT_TRUE(tells("The same knitting"));
}

TEST_F(CompareTest, TellsTextThatDoesNotReadOrHasOtherSizes) {
    editor().setPlainText("Row 1: ssq.");
    EXPECT_TRUE(tells("cannot be compared before it reads"));
    editor().setPlainText("Sizes: A (B)\nCast on: 5 (7)\nRow 1: k5 (7).");
    EXPECT_TRUE(tells("size"));
    EXPECT_FALSE(verdict().contains("same knitting"));
}

TEST_F(CompareTest, BringsTheRowsOfTheClipboardAlong) {
    find<CompareWindow>("compareWindow").hide();
    QGuiApplication::clipboard()->setText(rows());
    trigger(CommandId::CompareRows);
    EXPECT_TRUE(tells("The same knitting"));
}

}  // namespace
}  // namespace lacewright::app
