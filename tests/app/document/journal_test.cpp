#include "app/document/journal.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "app/document/document.h"
#include "core/chart/edits.h"

namespace lacewright::app {
namespace {

class JournalTest : public testing::Test {
 protected:
    void SetUp() override { document_.replaceWith(blankChart(4, 3), "/somewhere/fern.lacewright"); }
    void change() {
        Chart changed = document_.chart();
        changed.notes += "!";
        document_.apply("Change", changed);
    }
    int entries() const {
        return static_cast<int>(QDir(folder_.path()).entryList({"*.lacewright"}).size());
    }
    bool waitForEntry() {
        return QTest::qWaitFor([this] { return entries() == 1; });
    }

    QTemporaryDir folder_;
    Document document_;
};

TEST_F(JournalTest, KeepsUnsavedWorkThatAnotherRunCanTake) {
    auto journal = std::make_unique<Journal>(document_, folder_.path(), 1);
    change();
    ASSERT_TRUE(waitForEntry());
    journal.reset();  // as if the program had stopped: nobody holds the lock any more
    ASSERT_TRUE(hasLeftBehind(folder_.path()));
    const std::vector<Recovered> found = takeLeftBehind(folder_.path());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].chart, document_.chart());
    EXPECT_EQ(found[0].path, "/somewhere/fern.lacewright");
    EXPECT_FALSE(hasLeftBehind(folder_.path()));
}

TEST_F(JournalTest, LeavesTheWorkOfARunningWindowAlone) {
    Journal journal(document_, folder_.path(), 1);
    change();
    ASSERT_TRUE(waitForEntry());
    EXPECT_FALSE(hasLeftBehind(folder_.path()));
    EXPECT_TRUE(takeLeftBehind(folder_.path()).empty());
}

TEST_F(JournalTest, ForgetsWorkThatIsSavedOrUndone) {
    Journal journal(document_, folder_.path(), 1);
    change();
    ASSERT_TRUE(waitForEntry());
    document_.markSaved(document_.path());
    EXPECT_EQ(entries(), 0);
    change();
    ASSERT_TRUE(waitForEntry());
    document_.undoStack().undo();
    EXPECT_EQ(entries(), 0);
}

TEST_F(JournalTest, LeavesAnEntryItCannotRead) {
    QFile file(QDir(folder_.path()).filePath("broken.lacewright"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{");
    file.close();
    EXPECT_TRUE(takeLeftBehind(folder_.path()).empty());
    EXPECT_EQ(entries(), 1);
}

}  // namespace
}  // namespace lacewright::app
