#include "app/document/view_state.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "app/document/document.h"

namespace lacewright::app {
namespace {

TEST(ViewState, GrowsTheSelectionFromItsAnchor) {
    Document document;
    document.replaceWith(blankChart(10, 10), {});
    ViewState view(document);
    view.moveCursor({5, 6});
    view.moveCursor({2, 8}, true);
    EXPECT_EQ(view.selection(), (CellArea{2, 5, 6, 8}));
    EXPECT_TRUE(view.hasSelection());
    view.moveCursor({2, 8});
    EXPECT_FALSE(view.hasSelection());
}

TEST(ViewState, KeepsTheCursorInsideTheChart) {
    Document document;
    document.replaceWith(blankChart(10, 10), {});
    ViewState view(document);
    view.moveCursor({50, -3});
    EXPECT_EQ(view.cursor(), (Cell{9, 1}));
    view.moveCursor({9, 10});
    document.apply("Shrink", blankChart(4, 3));
    EXPECT_EQ(view.cursor(), (Cell{2, 4}));
}

TEST(ViewState, TellsOnlyRealMoves) {
    Document document;
    ViewState view(document);
    QSignalSpy moves(&view, &ViewState::cursorMoved);
    view.moveCursor({0, 1});
    EXPECT_EQ(moves.count(), 0);
    view.moveCursor({0, 2});
    EXPECT_EQ(moves.count(), 1);
}

TEST(ViewState, ForgetsASizeThatIsNoMore) {
    Document document;
    Chart chart = blankChart(10, 2);
    Size small;
    small.name = "Small";
    small.reach = {1, 10};
    chart.sizes.push_back(small);
    document.replaceWith(chart, {});
    ViewState view(document);
    view.chooseSize("Small");
    chart.sizes.clear();
    document.apply("Remove size", chart);
    EXPECT_EQ(view.size(), QString());
}

TEST(ViewState, BoundsTheZoom) {
    Document document;
    ViewState view(document);
    view.zoomTo(1000);
    EXPECT_EQ(view.cellSize(), ViewState::kLargestCell);
    view.zoomTo(1);
    EXPECT_EQ(view.cellSize(), ViewState::kSmallestCell);
}

}  // namespace
}  // namespace lacewright::app
