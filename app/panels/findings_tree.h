#pragma once

#include <QTreeWidget>
#include <functional>

#include "core/check/finding.h"

namespace lacewright::app {

class Document;

// The findings of the open chart, grouped by row, with what is folded under them. It is filled when
// it is told to; until then it may lag behind the report.
class FindingsTree : public QTreeWidget {
    Q_OBJECT

 public:
    explicit FindingsTree(const Document& document, QWidget* parent = nullptr);

    // Lists the findings that are wanted, the one chosen before still chosen. Gives their number.
    int list(const std::function<bool(const Finding&)>& wanted);
    // Good until the document changes; null when none is chosen.
    const Finding* chosen() const;
    // Chooses the next finding after the chosen one (or the previous one), around the end.
    void step(int direction);

 Q_SIGNALS:
    // Somebody chose a finding, or the same one again.
    void findingChosen();

 protected:
    void changeEvent(QEvent* event) override;

 private:
    QTreeWidgetItem* addGroup(int rowNumber);
    QTreeWidgetItem* addFinding(QTreeWidgetItem& parent, const Finding& finding,
                                const QString& sentence);
    void choose();

    const Document& document_;
    bool filling_ = false;  // its moves are not a person's
};

}  // namespace lacewright::app
