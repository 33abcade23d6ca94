#include "app/window/window_set.h"

#include <gtest/gtest.h>

#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "app/document/journal.h"
#include "app/window/file_controller.h"
#include "app/window/main_window.h"
#include "app/window/start_page.h"
#include "core/file/chart_file.h"
#include "tests/app/window/scripted_prompts.h"

namespace lacewright::app {
namespace {

class WindowSetTest : public testing::Test {
 protected:
    void SetUp() override { QSettings().clear(); }
    QString unsaved() const { return folder_.filePath("unsaved"); }

    QTemporaryDir folder_;
    ScriptedPrompts prompts_;
};

TEST_F(WindowSetTest, ShowsASampleTheFirstTimeAndTheStartPageLater) {
    {
        WindowSet set(prompts_, unsaved());
        set.start({});
        ASSERT_EQ(set.windows().size(), 1U);
        EXPECT_FALSE(set.windows()[0]->showsStartPage());
        EXPECT_EQ(set.windows()[0]->document().displayName(), "Leaf scarf");
        EXPECT_FALSE(set.windows()[0]->document().isModified());
    }
    WindowSet set(prompts_, unsaved());
    set.start({});
    ASSERT_EQ(set.windows().size(), 1U);
    EXPECT_TRUE(set.windows()[0]->showsStartPage());
}

TEST_F(WindowSetTest, OpensAWindowForEachFile) {
    QStringList files;
    for (const int width : {5, 6}) {
        files << folder_.filePath(QStringLiteral("%1.lacewright").arg(width));
        ASSERT_TRUE(saveChart(blankChart(width, 3), files.back().toStdString()));
    }
    WindowSet set(prompts_, unsaved());
    set.start(files);
    ASSERT_EQ(set.windows().size(), 2U);
    EXPECT_EQ(set.windows()[0]->document().chart().width, 5);
    EXPECT_EQ(set.windows()[1]->document().chart().width, 6);
    // A third, opened from a window with a chart, gets its own window too.
    set.windows()[0]->openFile(files[1]);
    EXPECT_EQ(set.windows().size(), 3U);
}

TEST_F(WindowSetTest, TellsOfAFileThatIsNotThereAndShowsTheStartPage) {
    WindowSet set(prompts_, unsaved());
    set.start({folder_.filePath("nowhere.lacewright")});
    EXPECT_EQ(prompts_.told.size(), 1);
    ASSERT_EQ(set.windows().size(), 1U);
    EXPECT_TRUE(set.windows()[0]->showsStartPage());
}

TEST_F(WindowSetTest, OffersUnsavedWorkOfALostRun) {
    const QString file = folder_.filePath("fern.lacewright");
    ASSERT_TRUE(saveChart(blankChart(5, 3), file.toStdString()));
    {
        Document lost;
        lost.replaceWith(blankChart(5, 3), file);
        Journal journal(lost, unsaved(), 1);
        Chart changed = lost.chart();
        changed.notes = "half a thought";
        lost.apply("Change", changed);
        ASSERT_TRUE(QTest::qWaitFor(
            [this] { return !QDir(unsaved()).entryList({"*.lacewright"}).isEmpty(); }));
    }
    prompts_.confirmations = {false, true};
    {
        WindowSet set(prompts_, unsaved());
        set.start({});
        EXPECT_EQ(set.windows().size(), 1U);
        EXPECT_NE(set.windows()[0]->document().chart().notes, "half a thought");
    }
    WindowSet set(prompts_, unsaved());
    set.start({});
    ASSERT_EQ(set.windows().size(), 1U);
    Document& document = set.windows()[0]->document();
    EXPECT_EQ(document.chart().notes, "half a thought");
    EXPECT_EQ(document.path(), file);
    EXPECT_TRUE(document.isModified());
    document.undoStack().undo();
    EXPECT_EQ(document.chart(), blankChart(5, 3));
}

TEST_F(WindowSetTest, QuitsUntilSomebodyWouldRatherStay) {
    WindowSet set(prompts_, unsaved());
    set.start({});
    MainWindow& window = *set.windows()[0];
    Chart changed = window.document().chart();
    changed.notes = "!";
    window.document().apply("Change", changed);
    prompts_.unsaved = {UserPrompts::Unsaved::Cancel, UserPrompts::Unsaved::Discard};
    window.actions()[CommandId::Quit].trigger();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    ASSERT_EQ(set.windows().size(), 1U);
    window.actions()[CommandId::Quit].trigger();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(set.windows().empty());
}

}  // namespace
}  // namespace lacewright::app
