#include "app/document/edit_command.h"

#include <utility>

#include "app/document/document.h"

namespace lacewright::app {

EditCommand::EditCommand(Document& document, const QString& label, Chart after, int stroke)
    : QUndoCommand(label),
      document_(document),
      before_(document.chart()),
      after_(std::move(after)),
      stroke_(stroke) {}

void EditCommand::undo() {
    document_.show(before_);
}

void EditCommand::redo() {
    document_.show(after_);
}

bool EditCommand::mergeWith(const QUndoCommand* later) {
    // Every command on the stack is an EditCommand: the document is the only one who pushes.
    const auto* next = static_cast<const EditCommand*>(later);
    if (stroke_ == 0 || next->stroke_ != stroke_) return false;
    after_ = next->after_;
    // A stroke that ends where it began leaves no step behind.
    setObsolete(after_ == before_);
    return true;
}

}  // namespace lacewright::app
