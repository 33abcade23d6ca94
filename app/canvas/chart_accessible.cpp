#include "app/canvas/chart_accessible.h"

#include <QAccessibleWidget>
#include <QHash>
#include <QPointer>

#include "app/canvas/cell_description.h"
#include "app/canvas/chart_view.h"

namespace lacewright::app {
namespace {

bool selectionHolds(const ViewScene& scene, Cell cell) {
    const CellArea& area = scene.selection;
    return cell.row >= area.firstRow && cell.row <= area.lastRow && cell.column >= area.right &&
           cell.column <= area.left;
}

// One cell, made when it is asked for; the table owns it through Qt's registry.
class CellAccessible : public QAccessibleInterface, public QAccessibleTableCellInterface {
 public:
    CellAccessible(ChartView* view, Cell cell) : view_(view), cell_(cell) {}

    bool isValid() const override {
        return view_ && cell_.row < view_->shownChart().height() &&
               cell_.column <= view_->shownChart().width;
    }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override { return view_ ? view_->window()->windowHandle() : nullptr; }
    QAccessibleInterface* parent() const override {
        return QAccessible::queryAccessibleInterface(view_.data());
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::Cell; }

    QRect rect() const override {
        if (!isValid()) return {};
        const QRect inView = view_->cellRect(cell_);
        return {view_->viewport()->mapToGlobal(inView.topLeft()), inView.size()};
    }
    QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        const ViewScene scene = view_->scene();
        state.focusable = true;
        state.selectable = true;
        state.focused = scene.hasFocus && scene.cursor == cell_;
        state.selected = selectionHolds(scene, cell_);
        return state;
    }
    QString text(QAccessible::Text which) const override {
        if (!isValid()) return {};
        const ViewScene scene = view_->scene();
        if (which == QAccessible::Name) return nameOfCell(scene.chart, cell_);
        if (which == QAccessible::Description) {
            return describeCell(scene.chart, scene.report, cell_);
        }
        return {};
    }
    void setText(QAccessible::Text, const QString&) override {}
    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type != QAccessible::TableCellInterface) return nullptr;
        return static_cast<QAccessibleTableCellInterface*>(this);
    }

    bool isSelected() const override { return state().selected; }
    QList<QAccessibleInterface*> columnHeaderCells() const override { return {}; }
    QList<QAccessibleInterface*> rowHeaderCells() const override { return {}; }
    int columnIndex() const override { return view_->shownChart().width - cell_.column; }
    int rowIndex() const override { return view_->shownChart().height() - 1 - cell_.row; }
    int columnExtent() const override { return 1; }
    int rowExtent() const override { return 1; }
    QAccessibleInterface* table() const override { return parent(); }

 private:
    QPointer<ChartView> view_;
    Cell cell_;
};

class ChartAccessible : public QAccessibleWidget, public QAccessibleTableInterface {
 public:
    explicit ChartAccessible(ChartView* view)
        : QAccessibleWidget(view, QAccessible::Table), view_(view) {}
    ~ChartAccessible() override {
        for (const QAccessible::Id id : cells_) QAccessible::deleteAccessibleInterface(id);
    }

    void* interface_cast(QAccessible::InterfaceType type) override {
        if (type == QAccessible::TableInterface) {
            return static_cast<QAccessibleTableInterface*>(this);
        }
        return QAccessibleWidget::interface_cast(type);
    }
    int childCount() const override { return rowCount() * columnCount(); }
    QAccessibleInterface* child(int index) const override {
        return cellAt(index / columnCount(), index % columnCount());
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        if (child == nullptr || child->role() != QAccessible::Cell) return -1;
        const auto* cell = static_cast<const CellAccessible*>(child);
        return cell->rowIndex() * columnCount() + cell->columnIndex();
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        const auto cell = view_->cellAt(view_->viewport()->mapFromGlobal(QPoint(x, y)));
        return cell ? of(*cell) : nullptr;
    }
    QAccessibleInterface* focusChild() const override {
        return view_->hasFocus() ? of(view_->scene().cursor) : nullptr;
    }

    QAccessibleInterface* cellAt(int row, int column) const override {
        if (row < 0 || row >= rowCount() || column < 0 || column >= columnCount()) return nullptr;
        return of({rowCount() - 1 - row, columnCount() - column});
    }
    int rowCount() const override { return view_->shownChart().height(); }
    int columnCount() const override { return view_->shownChart().width; }
    QString rowDescription(int row) const override {
        return QString::number(view_->shownChart().rowNumber(rowCount() - 1 - row));
    }
    QString columnDescription(int column) const override {
        return QString::number(columnCount() - column);
    }
    int selectedCellCount() const override {
        const CellArea area = view_->scene().selection;
        return (area.lastRow - area.firstRow + 1) * (area.left - area.right + 1);
    }
    QList<QAccessibleInterface*> selectedCells() const override {
        const CellArea area = view_->scene().selection;
        QList<QAccessibleInterface*> cells;
        for (int row = area.lastRow; row >= area.firstRow; --row) {
            for (int column = area.left; column >= area.right; --column) {
                cells << of({row, column});
            }
        }
        return cells;
    }
    bool isRowSelected(int row) const override {
        const CellArea area = view_->scene().selection;
        const int index = rowCount() - 1 - row;
        return index >= area.firstRow && index <= area.lastRow && area.right == 1 &&
               area.left == columnCount();
    }
    bool isColumnSelected(int column) const override {
        const CellArea area = view_->scene().selection;
        const int number = columnCount() - column;
        return number >= area.right && number <= area.left && area.firstRow == 0 &&
               area.lastRow == rowCount() - 1;
    }
    int selectedRowCount() const override { return static_cast<int>(selectedRows().size()); }
    int selectedColumnCount() const override { return static_cast<int>(selectedColumns().size()); }
    QList<int> selectedRows() const override {
        QList<int> rows;
        for (int row = 0; row < rowCount(); ++row) {
            if (isRowSelected(row)) rows << row;
        }
        return rows;
    }
    QList<int> selectedColumns() const override {
        QList<int> columns;
        for (int column = 0; column < columnCount(); ++column) {
            if (isColumnSelected(column)) columns << column;
        }
        return columns;
    }
    // Selecting is done by moving the cursor; assistive software cannot do it on its own.
    bool selectRow(int) override { return false; }
    bool selectColumn(int) override { return false; }
    bool unselectRow(int) override { return false; }
    bool unselectColumn(int) override { return false; }
    QAccessibleInterface* caption() const override { return nullptr; }
    QAccessibleInterface* summary() const override { return nullptr; }
    void modelChange(QAccessibleTableModelChangeEvent*) override {}

 private:
    QAccessibleInterface* of(Cell cell) const {
        const auto known = cells_.constFind({cell.row, cell.column});
        if (known != cells_.cend()) return QAccessible::accessibleInterface(*known);
        auto* made = new CellAccessible(view_, cell);
        cells_.insert({cell.row, cell.column}, QAccessible::registerAccessibleInterface(made));
        return made;
    }

    ChartView* view_;
    mutable QHash<std::pair<int, int>, QAccessible::Id> cells_;
};

}  // namespace

QAccessibleInterface* makeChartAccessible(const QString&, QObject* object) {
    auto* view = qobject_cast<ChartView*>(object);
    return view != nullptr ? new ChartAccessible(view) : nullptr;
}

void announceCursor(ChartView& view) {
    if (!QAccessible::isActive() || !view.hasFocus()) return;
    const ViewScene scene = view.scene();
    const int row = scene.chart.height() - 1 - scene.cursor.row;
    QAccessibleEvent event(&view, QAccessible::Focus);
    event.setChild(row * scene.chart.width + scene.chart.width - scene.cursor.column);
    QAccessible::updateAccessibility(&event);
}

}  // namespace lacewright::app
