#include "app/window/file_controller.h"

#include <QFile>
#include <QSignalSpy>

#include "core/file/chart_file.h"
#include "tests/app/window/window_fixture.h"

namespace lacewright::app {
namespace {

using FileTest = WindowTest;

TEST_F(FileTest, SavesUnderANameOnceAndThenToThatFile) {
    draw(0, 1, "yo");
    prompts_.filesToSave = {fileIn("fern.lacewright")};
    trigger(CommandId::Save);
    EXPECT_FALSE(document().isModified());
    EXPECT_EQ(*loadChart(fileIn("fern.lacewright").toStdString()), chart());
    draw(0, 2, "k2tog");
    trigger(CommandId::Save);
    EXPECT_EQ(*loadChart(fileIn("fern.lacewright").toStdString()), chart());
}

TEST_F(FileTest, MarksUnsavedChangesInTheTitle) {
    EXPECT_FALSE(window_->isWindowModified());
    draw(0, 1, "yo");
    EXPECT_TRUE(window_->isWindowModified());
    EXPECT_TRUE(window_->windowTitle().contains("[*]"));
    trigger(CommandId::Undo);
    EXPECT_FALSE(window_->isWindowModified());
}

TEST_F(FileTest, TellsWhenAFileCannotBeWritten) {
    prompts_.filesToSave = {fileIn("no/such/folder/fern.lacewright")};
    draw(0, 1, "yo");
    trigger(CommandId::Save);
    EXPECT_EQ(prompts_.told.size(), 1);
    EXPECT_TRUE(document().isModified());
}

TEST_F(FileTest, OpensHereWhenThereIsNothingToLose) {
    ASSERT_TRUE(saveChart(blankChart(5, 4), fileIn("small.lacewright").toStdString()));
    prompts_.filesToOpen = {fileIn("small.lacewright")};
    trigger(CommandId::OpenChart);
    EXPECT_EQ(chart().width, 5);
    EXPECT_EQ(window_->windowTitle(), "small.lacewright[*] – Lacewright");
    EXPECT_EQ(FileController::recentFiles(), QStringList{fileIn("small.lacewright")});
}

TEST_F(FileTest, OpensElsewhereWhenThisChartIsWorkedOn) {
    ASSERT_TRUE(saveChart(blankChart(5, 4), fileIn("small.lacewright").toStdString()));
    draw(0, 1, "yo");
    QSignalSpy elsewhere(window_.get(), &MainWindow::elsewhere);
    window_->openFile(fileIn("small.lacewright"));
    EXPECT_EQ(elsewhere.count(), 1);
    EXPECT_EQ(chart().width, 8);
}

TEST_F(FileTest, TellsWhenAFileIsNoChartAndKeepsTheOpenOne) {
    QFile file(fileIn("broken.lacewright"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{\"format\": ");
    file.close();
    window_->openFile(fileIn("broken.lacewright"));
    EXPECT_EQ(prompts_.told.size(), 1);
    EXPECT_EQ(chart().width, 8);
    EXPECT_TRUE(FileController::recentFiles().isEmpty());
}

TEST_F(FileTest, RevertsToTheSavedChartAfterAQuestion) {
    EXPECT_FALSE(action(CommandId::Revert).isEnabled());
    prompts_.filesToSave = {fileIn("fern.lacewright")};
    trigger(CommandId::SaveAs);
    draw(0, 1, "yo");
    prompts_.confirmations = {false, true};
    trigger(CommandId::Revert);
    EXPECT_EQ(stitchAt(0, 1), "yo");
    trigger(CommandId::Revert);
    EXPECT_EQ(stitchAt(0, 1), "k");
}

TEST_F(FileTest, WritesDrawingsByTheEndingOfTheirFile) {
    for (const auto& [name, begin] :
         {std::pair{"chart.svg", "<?xml"}, std::pair{"chart.pdf", "%PDF"},
          std::pair{"chart.png", "\x89PNG"}}) {
        prompts_.filesToSave = {fileIn(name)};
        trigger(CommandId::ExportDrawing);
        QFile file(fileIn(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        EXPECT_TRUE(file.readAll().startsWith(begin)) << name;
    }
    EXPECT_TRUE(prompts_.told.isEmpty());
    prompts_.filesToSave = {fileIn("chart.txt")};
    trigger(CommandId::ExportDrawing);
    EXPECT_EQ(prompts_.told.size(), 1);
}

TEST_F(FileTest, AsksBeforeUnsavedWorkIsClosed) {
    draw(0, 1, "yo");
    prompts_.unsaved = {UserPrompts::Unsaved::Cancel};
    EXPECT_FALSE(window_->close());
    prompts_.unsaved = {UserPrompts::Unsaved::Save};
    prompts_.filesToSave = {fileIn("fern.lacewright")};
    EXPECT_TRUE(window_->close());
    EXPECT_TRUE(QFile::exists(fileIn("fern.lacewright")));
}

TEST_F(FileTest, StaysOpenWhenSavingOnClosingIsTurnedAway) {
    draw(0, 1, "yo");
    prompts_.unsaved = {UserPrompts::Unsaved::Save};
    prompts_.filesToSave = {QString()};
    EXPECT_FALSE(window_->close());
    prompts_.unsaved = {UserPrompts::Unsaved::Discard};
    EXPECT_TRUE(window_->close());
}

TEST_F(FileTest, ClosesWithoutAQuestionWhenNothingChanged) {
    EXPECT_TRUE(window_->close());
}

}  // namespace
}  // namespace lacewright::app
