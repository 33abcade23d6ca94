#pragma once

#include <QUndoCommand>

#include "core/chart/chart.h"

namespace lacewright::app {

class Document;

// One undo step of any kind: the chart before and the chart after. Both share all rows that the
// edit left alone. Owned by the document's undo stack.
class EditCommand : public QUndoCommand {
 public:
    // Steps with the same stroke number (> 0) merge into one.
    EditCommand(Document& document, const QString& label, Chart after, int stroke);

    void undo() override;
    void redo() override;
    int id() const override { return 1; }
    bool mergeWith(const QUndoCommand* later) override;

 private:
    Document& document_;
    Chart before_;
    Chart after_;
    int stroke_;
};

}  // namespace lacewright::app
