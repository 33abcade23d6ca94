#pragma once

#include <QDialog>
#include <QTimer>
#include <optional>
#include <vector>

#include "app/window/plan_model.h"
#include "core/plan/planner.h"

class QLabel;
class QPushButton;
class QTableView;

namespace lacewright::app {

class PlanFields;

// Plans all sizes at once: what is asked above, what comes out in a table that follows at once.
class PlanDialog : public QDialog {
    Q_OBJECT

 public:
    PlanDialog(const Chart& chart, QWidget* parent);
    // The plan on show. Requires: the dialog was accepted.
    Plan plan() const { return *plan_; }

    void accept() override;

 private:
    void buildTable();
    void takeSource();
    void planNow();
    void showPlan(const Chart& used, std::vector<PlanLine>& lines) const;
    void showProblem(const QString& sentence);
    void explain();  // the size of the current line

    const Chart& chart_;
    PlanFields* fields_;
    PlanModel* model_;
    QTableView* table_;
    QLabel* about_;
    QLabel* problem_;
    QPushButton* use_;
    QTimer soon_;
    std::vector<bool> included_;  // by size of the source
    std::vector<std::optional<double>> typed_;
    std::optional<Plan> plan_;
};

}  // namespace lacewright::app
