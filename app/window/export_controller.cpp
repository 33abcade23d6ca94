#include "app/window/export_controller.h"

#include <QWidget>

#include <QDir>
#include <QFileInfo>
#include <QPageLayout>
#include <QPrinter>

#include "app/document/document.h"
#include "app/document/view_state.h"
#include "app/print/write_sheet.h"
#include "app/window/action_set.h"
#include "app/window/user_prompts.h"
#include "core/base/disk.h"
#include "core/sheet/lay_out.h"
#include "core/sheet/svg.h"

namespace lacewright::app {

namespace {

Paper paperOf(const QPrinter& printer) {
    const QSizeF size = printer.pageLayout().pageSize().size(QPageSize::Millimeter);
    Paper paper = kA4;
    paper.widthMm = size.width();
    paper.heightMm = size.height();
    return paper;
}

}  // namespace

ExportController::ExportController(Document& document, ViewState& view, ActionSet& actions,
                                   UserPrompts& prompts, QWidget& window)
    : QObject(&window), document_(document), view_(view), prompts_(prompts), window_(window) {
    actions.on(CommandId::ExportDrawing, [this] { exportDrawing(); });
    actions.on(CommandId::Print, [this] { print(); });
}

void ExportController::exportDrawing() {
    const QFileInfo file(document_.path());
    const QString name =
        file.completeBaseName().isEmpty() ? document_.displayName() : file.completeBaseName();
    const QDir folder = document_.path().isEmpty() ? QDir::home() : file.absoluteDir();
    const QString path =
        prompts_.fileToSave(&window_, folder.filePath(name + QStringLiteral(".svg")),
                            tr("SVG drawing (*.svg);;PDF pages (*.pdf);;PNG picture (*.png)"));
    if (path.isEmpty()) return;
    const Outcome outcome = write(path);
    if (!outcome) {
        prompts_.tell(&window_, tr("The drawing is not written"),
                      QString::fromStdString(outcome.error().text()));
    }
}

Outcome ExportController::write(const QString& path) const {
    const QString ending = QFileInfo(path).suffix().toLower();
    SheetOptions options;
    options.size = view_.size().toStdString();
    if (ending == QLatin1String("pdf")) {
        options.paper = kA4;
        return writePdf(layOut(document_.chart(), options), path.toStdString());
    }
    const Sheet sheet = layOut(document_.chart(), options);
    if (ending == QLatin1String("png")) return writePng(sheet, path.toStdString());
    if (ending == QLatin1String("svg")) return writeFile(path.toStdString(), svgText(sheet));
    return Error{ErrorCode::Unsupported, "A drawing ends in .svg, .pdf or .png.",
                 path.toStdString()};
}

void ExportController::print() {
    QPrinter printer(QPrinter::HighResolution);
    if (!prompts_.choosePrinter(&window_, printer)) return;
    SheetOptions options;
    options.size = view_.size().toStdString();
    options.paper = paperOf(printer);
    const Outcome outcome = printSheet(layOut(document_.chart(), options), printer);
    if (!outcome) {
        prompts_.tell(&window_, tr("The chart is not printed"),
                      QString::fromStdString(outcome.error().text()));
    }
}

}  // namespace lacewright::app
