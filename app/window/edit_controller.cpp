#include "app/window/edit_controller.h"

#include <QWidget>

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

#include "app/document/cell_text.h"
#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/window/action_set.h"
#include "app/window/user_prompts.h"
#include "core/base/text.h"

namespace lacewright::app {

namespace {

const QString kCellsMime = QStringLiteral("application/x-lacewright-cells");

QString rows(int count) {
    return QString::fromStdString(counted(count, "row", "rows"));
}
QString columns(int count) {
    return QString::fromStdString(counted(count, "column", "columns"));
}
int heightOf(const CellArea& area) {
    return area.lastRow - area.firstRow + 1;
}
int widthOf(const CellArea& area) {
    return area.left - area.right + 1;
}

}  // namespace

EditController::EditController(Document& document, ViewState& view, ActionSet& actions,
                               UserPrompts& prompts, QWidget& window)
    : QObject(&window),
      document_(document),
      view_(view),
      actions_(actions),
      prompts_(prompts),
      window_(window) {
    connectUndo();
    connectClipboard();
    connectSelection();
    connectRowsAndColumns();
    connectChart();
}

void EditController::connectUndo() {
    QUndoStack& stack = document_.undoStack();
    actions_.on(CommandId::Undo, [&stack] { stack.undo(); });
    actions_.on(CommandId::Redo, [&stack] { stack.redo(); });
    const auto follow = [this](CommandId id, const QString& word, bool possible,
                               const QString& step) {
        actions_[id].setEnabled(possible);
        actions_[id].setText(step.isEmpty() ? word : tr("%1: %2").arg(word, step));
    };
    const auto refresh = [&stack, follow] {
        follow(CommandId::Undo, tr("&Undo"), stack.canUndo(), stack.undoText());
        follow(CommandId::Redo, tr("&Redo"), stack.canRedo(), stack.redoText());
    };
    connect(&stack, &QUndoStack::indexChanged, this, refresh);
    // A merged stroke changes the text without moving the index.
    connect(&stack, &QUndoStack::undoTextChanged, this, refresh);
    refresh();
}

void EditController::connectClipboard() {
    actions_.on(CommandId::Copy, [this] { copy(); });
    actions_.on(CommandId::Cut, [this] {
        copy();
        const auto knit = document_.chart().stitches->find("k");
        if (knit) {
            document_.apply(tr("Cut cells"),
                            fillCells(document_.chart(), view_.selection(), *knit));
        }
    });
    actions_.on(CommandId::Paste, [this] { paste(); });
    connect(QGuiApplication::clipboard(), &QClipboard::dataChanged, this,
            &EditController::refreshPaste);
    refreshPaste();
}

void EditController::copy() {
    const CellBlock block = copyCells(document_.chart(), view_.selection());
    const QString text = textOf(block, *document_.chart().stitches);
    auto* data = new QMimeData;
    data->setText(text);
    data->setData(kCellsMime, text.toUtf8());
    QGuiApplication::clipboard()->setMimeData(data);
}

void EditController::paste() {
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    if (!data) return;
    const QString text =
        data->hasFormat(kCellsMime) ? QString::fromUtf8(data->data(kCellsMime)) : data->text();
    const Chart& chart = document_.chart();
    const CellArea at = view_.selection();
    const Result<CellBlock> block = cellsFrom(text, *chart.stitches);
    if (!block) {
        document_.apply(tr("Paste cells"), block.error());
        return;
    }
    if (document_.apply(tr("Paste cells"), pasteCells(chart, at.firstRow, at.right, *block))) {
        view_.select({at.firstRow, at.firstRow + block->height() - 1, at.right,
                      at.right + block->width() - 1});
    }
}

void EditController::refreshPaste() {
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    actions_.setEnabled({CommandId::Paste}, data && data->hasText());
}

void EditController::connectSelection() {
    actions_.on(CommandId::Clear, [this] {
        const auto knit = document_.chart().stitches->find("k");
        if (knit) {
            document_.apply(tr("Clear cells"),
                            fillCells(document_.chart(), view_.selection(), *knit));
        }
    });
    actions_.on(CommandId::Mirror, [this] {
        const Chart& chart = document_.chart();
        const CellArea area = view_.selection();
        document_.apply(tr("Mirror cells"),
                        pasteCells(chart, area.firstRow, area.right,
                                   mirrored(copyCells(chart, area), *chart.stitches)));
    });
    actions_.on(CommandId::SelectAll, [this] {
        const Chart& chart = document_.chart();
        view_.select({0, chart.height() - 1, 1, chart.width});
    });
    actions_.on(CommandId::SelectRows, [this] {
        const CellArea area = view_.selection();
        view_.select({area.firstRow, area.lastRow, 1, document_.chart().width});
    });
    actions_.on(CommandId::SelectColumns, [this] {
        const CellArea area = view_.selection();
        view_.select({0, document_.chart().height() - 1, area.right, area.left});
    });
}

void EditController::connectRowsAndColumns() {
    actions_.on(CommandId::InsertRowsAbove, [this] { insertRows(view_.selection().lastRow + 1); });
    actions_.on(CommandId::InsertRowsBelow, [this] { insertRows(view_.selection().firstRow); });
    actions_.on(CommandId::InsertColumnsLeft,
                [this] { insertColumns(view_.selection().left + 1); });
    actions_.on(CommandId::InsertColumnsRight, [this] { insertColumns(view_.selection().right); });
    actions_.on(CommandId::RemoveRows, [this] {
        const CellArea area = view_.selection();
        document_.apply(tr("Remove %1").arg(rows(heightOf(area))),
                        removeRows(document_.chart(), area.firstRow, heightOf(area)));
    });
    actions_.on(CommandId::RemoveColumns, [this] {
        const CellArea area = view_.selection();
        document_.apply(tr("Remove %1").arg(columns(widthOf(area))),
                        removeColumns(document_.chart(), area.right, widthOf(area)));
    });
}

void EditController::insertRows(int beforeRow) {
    const CellArea area = view_.selection();
    const int count = heightOf(area);
    if (document_.apply(tr("Insert %1").arg(rows(count)),
                        lacewright::insertRows(document_.chart(), beforeRow, count))) {
        view_.select({beforeRow, beforeRow + count - 1, area.right, area.left});
    }
}

void EditController::insertColumns(int beforeColumn) {
    const CellArea area = view_.selection();
    const int count = widthOf(area);
    if (document_.apply(tr("Insert %1").arg(columns(count)),
                        lacewright::insertColumns(document_.chart(), beforeColumn, count))) {
        view_.select({area.firstRow, area.lastRow, beforeColumn, beforeColumn + count - 1});
    }
}

void EditController::connectChart() {
    actions_.on(CommandId::ChartProperties, [this] {
        const auto properties = prompts_.chartProperties(&window_, propertiesOf(document_.chart()));
        if (properties) {
            document_.apply(tr("Change chart properties"),
                            setProperties(document_.chart(), *properties));
        }
    });
    actions_.on(CommandId::DefineStitch, [this] {
        const auto stitch = prompts_.stitch(&window_, document_.chart());
        if (!stitch) return;
        const QString name = QString::fromStdString(stitch->name);
        if (document_.apply(tr("Define stitch “%1”").arg(name),
                            defineStitch(document_.chart(), *stitch))) {
            view_.chooseStitch(QString::fromStdString(stitch->id));
        }
    });
}

}  // namespace lacewright::app
