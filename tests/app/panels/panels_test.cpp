#include <QApplication>
#include <QClipboard>
#include <QDockWidget>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTableView>
#include <QTextBlock>
#include <QTextBrowser>
#include <QToolButton>
#include <QTreeWidget>
#include <QTreeWidgetItemIterator>

#include "app/panels/stitch_list_model.h"
#include "app/window/appearance.h"
#include "app/window/starters.h"
#include "core/file/chart_file.h"
#include "core/words/reader.h"
#include "tests/app/window/window_fixture.h"
#include "tests/support/source_tree.h"

namespace lacewright::app {
namespace {

class PanelTest : public WindowTest {
 protected:
    void open(const char* file) {
        for (const Starter& starter : starters()) {
            if (QString(starter.file) == file) window_->showChart(*chartOf(starter), {});
        }
        ASSERT_FALSE(chart().name.empty());
    }
    QString text(const QTableView& table, int row, int column) {
        return table.model()->index(row, column).data().toString();
    }
};

TEST_F(PanelTest, FindsAStitchByNameOrAbbreviationAndChoosesItWithEnter) {
    trigger(CommandId::FindStitch);
    auto& search = find<QLineEdit>("stitchSearch");
    EXPECT_EQ(QApplication::focusWidget(), &search);
    QTest::keyClicks(&search, "centred dou");
    auto* model = find<QListView>("stitchList").model();
    EXPECT_EQ(model->index(0, 0).data().toString(), "centred double decrease");
    QTest::keyClick(&search, Qt::Key_Return);
    EXPECT_EQ(view().stitch(), "s2kp");
    EXPECT_TRUE(search.text().isEmpty());
    EXPECT_EQ(QApplication::focusWidget(), &chartView());
}

TEST_F(PanelTest, TakesLettersTypedInTheListForASearch) {
    auto& list = find<QListView>("stitchList");
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_S);
    EXPECT_EQ(find<QLineEdit>("stitchSearch").text(), "s");
}

TEST_F(PanelTest, ChoosesTheStitchThatIsClicked) {
    auto& list = find<QListView>("stitchList");
    auto& model = dynamic_cast<StitchListModel&>(*list.model());
    const QModelIndex index = model.index(model.rowOf("ssk"));
    list.scrollTo(index);
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualRect(index).center());
    EXPECT_EQ(view().stitch(), "ssk");
}

TEST(StitchListModel, KeepsAStitchOnItsKeyWhileTheChartUsesIt) {
    Chart chart = blankChart(6, 1);
    const auto cell = [&chart](int column, const char* stitch) {
        chart = *drawStitch(chart, 0, column, *chart.stitches->find(stitch));
    };
    StitchListModel model;
    cell(1, "yo");
    model.show(chart, {}, {});
    EXPECT_EQ(model.mostUsed(), (QStringList{"k", "yo"}));
    cell(2, "ssk");
    cell(3, "ssk");
    model.show(chart, {}, {});
    EXPECT_EQ(model.mostUsed(), (QStringList{"k", "yo", "ssk"}));
    cell(1, "k");
    model.show(chart, {}, {});
    EXPECT_EQ(model.mostUsed(), (QStringList{"k", "ssk"}));
}

TEST_F(PanelTest, ListsTheCountsOfTheRowsFromTheTopDown) {
    open("leaf-scarf");
    auto& table = find<QTableView>("countsTable");
    ASSERT_EQ(table.model()->rowCount(), 4);
    EXPECT_EQ(text(table, 0, 0), "7 ←");
    EXPECT_EQ(text(table, 3, 0), "1 ←");
    EXPECT_EQ(text(table, 3, 1), "10R + 5");
    EXPECT_EQ(text(table, 3, 3), "0");
    view().chooseSize("Medium");
    EXPECT_EQ(text(table, 3, 1), "55");
}

TEST_F(PanelTest, JoinsTheCurrentRowOfCountsAndChart) {
    open("leaf-scarf");
    auto& table = find<QTableView>("countsTable");
    view().moveCursor({2, 4});
    EXPECT_EQ(table.currentIndex().row(), 1);
    table.setCurrentIndex(table.model()->index(0, 1));
    EXPECT_EQ(view().cursor(), (Cell{3, 4}));
}

TEST_F(PanelTest, ShowsSizesWithExpectedAndComputedCounts) {
    open("leaf-scarf");
    auto& table = find<QTableView>("sizesTable");
    ASSERT_EQ(table.model()->rowCount(), 4);
    EXPECT_EQ(text(table, 0, 0), "Whole chart");
    EXPECT_EQ(text(table, 2, 0), "Medium");
    EXPECT_EQ(text(table, 2, 3), "5");
    EXPECT_EQ(text(table, 2, 4), "55");
    EXPECT_EQ(text(table, 2, 5), "55");
    EXPECT_EQ(text(table, 0, 5), "10R + 5");
}

TEST_F(PanelTest, ChangesASizeInPlace) {
    open("leaf-scarf");
    auto* model = find<QTableView>("sizesTable").model();
    EXPECT_TRUE(model->setData(model->index(2, 3), "6"));
    EXPECT_EQ(chart().sizes[1].times.at("R"), 6);
    EXPECT_TRUE(model->setData(model->index(2, 4), ""));
    EXPECT_FALSE(chart().sizes[1].stitches.has_value());
    EXPECT_FALSE(model->setData(model->index(2, 1), "nowhere"));
    EXPECT_FALSE(model->setData(model->index(2, 0), "Wide"));
    view().chooseSize("Medium");
    EXPECT_TRUE(model->setData(model->index(2, 0), "Middle"));
    EXPECT_EQ(view().size(), "Middle");
}

TEST_F(PanelTest, LooksAtTheSizeThatIsChosenAndMovesIt) {
    open("leaf-scarf");
    auto& table = find<QTableView>("sizesTable");
    table.setCurrentIndex(table.model()->index(2, 0));
    EXPECT_EQ(view().size(), "Medium");
    QTest::mouseClick(&find<QToolButton>("sizeUp"), Qt::LeftButton);
    EXPECT_EQ(chart().sizes[0].name, "Medium");
    EXPECT_EQ(view().size(), "Medium");
    EXPECT_FALSE(find<QToolButton>("sizeUp").isEnabled());
}

TEST_F(PanelTest, SaysWhatIsProvenAndWhatWasAssumed) {
    open("leaf-scarf");
    EXPECT_EQ(find<QLabel>("verdict").text(), "Proven for every size and any number of repeats.");
    EXPECT_EQ(find<QLabel>("assumed").text(),
              "Assumed: a cast-on of a multiple of 10 plus 5; rows that are not drawn are purled.");
    EXPECT_EQ(find<QToolButton>("statusVerdict").text(), "Proven");
}

TEST_F(PanelTest, ListsTheSlipAndGoesThere) {
    open("leaf-scarf-with-a-slip");
    auto& tree = find<QTreeWidget>("findings");
    ASSERT_GT(tree.topLevelItemCount(), 0);
    view().moveCursor({0, 1});
    QTest::keyClick(&chartView(), Qt::Key_F4);
    ASSERT_NE(tree.currentItem(), nullptr);
    EXPECT_EQ(view().selection().firstRow, 2);
    EXPECT_EQ(find<QLabel>("verdict").text(), "This cannot be knitted as drawn.");
}

TEST_F(PanelTest, TellsTheRowOfFindingsOnceInTheTitleOfTheirGroup) {
    open("leaf-scarf-with-a-slip");
    auto& tree = find<QTreeWidget>("findings");
    int told = 0;
    for (int i = 0; i < tree.topLevelItemCount(); ++i) {
        const QTreeWidgetItem& group = *tree.topLevelItem(i);
        for (int j = 0; j < group.childCount(); ++j) {
            const QString text = group.child(j)->text(0);
            EXPECT_FALSE(text.startsWith("Row ")) << text.toStdString();
            EXPECT_TRUE(text[0].isUpper()) << text.toStdString();
            ++told;
        }
    }
    EXPECT_GT(told, 0);
    EXPECT_TRUE(QString::fromStdString(document().report().findings[0].message).startsWith("Row "));
}

TEST_F(PanelTest, NamesTheSizesOfAFindingOnce) {
    Chart scarf = *loadChart(test::inSourceTree("samples/leaf-scarf.lacewright"));
    for (Size& size : scarf.sizes) *size.stitches += 1;
    auto cells = scarf.row(0).cells();
    cells[0] = *scarf.stitches->find("yo");  // at the very edge: its sentence names no size
    scarf.rows.replace(0, makeRow(std::move(cells), *scarf.stitches));
    window_->showChart(scarf, {});
    const auto& group = *find<QTreeWidget>("findings").topLevelItem(0);
    QStringList told;
    for (int i = 0; i < group.childCount(); ++i) told.append(group.child(i)->text(0));
    const auto those = [&told](const char* part) { return told.filter(part).join("|"); };
    EXPECT_TRUE(those("than expected").endsWith("(Wide).")) << those("expected").toStdString();
    EXPECT_TRUE(those("very edge").endsWith("(Narrow, Medium and Wide)"))
        << those("very edge").toStdString();
}

TEST_F(PanelTest, FindingsTakeTheColoursOfTheWindow) {
    open("leaf-scarf-with-a-slip");
    auto& tree = find<QTreeWidget>("findings");
    const auto icons = [&tree] {
        std::vector<QImage> images;
        for (QTreeWidgetItemIterator at(&tree); *at; ++at) {
            if (!(*at)->icon(0).isNull()) images.push_back((*at)->icon(0).pixmap(16).toImage());
        }
        return images;
    };
    useAppearance(Appearance::Light);
    const auto light = icons();
    ASSERT_FALSE(light.empty());
    useAppearance(Appearance::Dark);
    QApplication::processEvents();
    const auto dark = icons();
    ASSERT_EQ(dark.size(), light.size());
    for (std::size_t i = 0; i < dark.size(); ++i) EXPECT_NE(dark[i], light[i]) << i;
    // As if the chart were opened in the dark.
    open("leaf-scarf-with-a-slip");
    EXPECT_EQ(icons(), dark);
    useAppearance(Appearance::System);
}

TEST_F(PanelTest, MendsTheSlipWithOneClick) {
    open("leaf-scarf-with-a-slip");
    QTest::keyClick(&chartView(), Qt::Key_F4);
    auto& mend = find<QPushButton>("mend1");
    EXPECT_TRUE(mend.isVisible());
    const QString label = mend.text();
    QTest::mouseClick(&mend, Qt::LeftButton);
    EXPECT_EQ(document().undoStack().undoText(), label);
    EXPECT_FALSE(document().report().hasFault());
}

TEST_F(PanelTest, HidesFindingsThatAreFilteredOut) {
    open("leaf-scarf-with-a-slip");
    auto& tree = find<QTreeWidget>("findings");
    const auto listed = [&tree] {
        int count = 0;
        for (int i = 0; i < tree.topLevelItemCount(); ++i) {
            count += tree.topLevelItem(i)->childCount();
        }
        return count;
    };
    const int before = listed();
    auto& faults = find<QToolButton>("showFault");
    ASSERT_TRUE(faults.isVisible());
    faults.click();
    EXPECT_LT(listed(), before);
    faults.click();
    EXPECT_EQ(listed(), before);
}

// A fault, a warning and notes at once, in a chart with sizes.
TEST_F(PanelTest, ShowsEveryFilterWithItsWholeWords) {
    window_->showChart(*loadChart(test::inSourceTree("samples/millpond-tee.lacewright")), {});
    view().chooseSize("S");
    view().select({0, 2, 1, chart().width});
    trigger(CommandId::EndLeft);
    QTest::qWait(1);
    for (const char* name : {"showFault", "showWarning", "showNote"}) {
        const auto& button = find<QToolButton>(name);
        ASSERT_TRUE(button.isVisible()) << name;
        EXPECT_GE(button.width(), button.sizeHint().width()) << name;
    }
}

class WrittenPanelTest : public PanelTest {
 protected:
    QTextBrowser& page() { return find<QTextBrowser>("writtenRows"); }
    void raise() {
        find<QDockWidget>("writtenDock").raise();
        ASSERT_TRUE(QTest::qWaitFor([this] { return page().isVisible(); }));
    }
    bool shows(const char* text) {
        return QTest::qWaitFor(
            [&] { return page().toPlainText().contains(QString::fromUtf8(text)); }, 3000);
    }
};

TEST_F(WrittenPanelTest, WritesTheRowsAsTheyAreDrawn) {
    open("leaf-scarf");
    raise();
    EXPECT_TRUE(shows("Row 7 (RS): "));
    draw(3, 8, "sk2p");
    EXPECT_TRUE(shows("sk2p"));
    view().chooseSize("Wide");
    EXPECT_TRUE(shows("Cast on: 75"));
    EXPECT_FALSE(page().toPlainText().contains("55"));
}

TEST_F(WrittenPanelTest, SelectsTheCellsOfAWord) {
    open("leaf-scarf");
    raise();
    ASSERT_TRUE(shows("s2kp"));
    view().moveCursor({2, 1});
    ASSERT_EQ(page().extraSelections().size(), 1);
    EXPECT_TRUE(page().extraSelections()[0].cursor.block().text().startsWith("Row 5 (RS)"));
    view().moveCursor({0, 1});
    const QString html = page().toHtml();
    const qsizetype word = html.indexOf("s2kp");
    const qsizetype start = html.lastIndexOf("href=\"", word) + 6;
    Q_EMIT page().anchorClicked(QUrl(html.mid(start, html.indexOf('"', start) - start)));
    EXPECT_EQ(view().selection().right, 8);
    EXPECT_EQ(view().selection().left, 8);
}

TEST_F(WrittenPanelTest, CopiesTextThatReadsBack) {
    open("leaf-scarf");
    raise();
    ASSERT_TRUE(shows("Row 1"));
    find<QToolButton>("copyRows").click();
    const QString text = QGuiApplication::clipboard()->text();
    EXPECT_FALSE(readWritten(text.toStdString()).hasErrors());
    find<QToolButton>("copyRowsHtml").click();
    EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith("<!DOCTYPE html>"));
}

}  // namespace
}  // namespace lacewright::app
