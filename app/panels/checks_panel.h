#pragma once

#include <QWidget>
#include <map>

#include "core/check/finding.h"

class QComboBox;
class QLabel;
class QToolButton;

namespace lacewright::app {

class Document;
class FindingsTree;
class MendButtons;
class ViewState;

// What the check found: the verdict, the findings row by row, and the mends of the chosen one.
class ChecksPanel : public QWidget {
    Q_OBJECT

 public:
    ChecksPanel(Document& document, ViewState& view, QWidget* parent = nullptr);

    // Chooses the next finding after the chosen one (or the previous one), around the end.
    void step(int direction);
    // Does the first mend of the chosen finding; nothing when it has none.
    void doFirstMend();

    QSize sizeHint() const override { return {380, 460}; }

 protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

 private:
    void buildFilters();
    void refresh();
    void showVerdict();
    void offerSizes();
    void fill();
    bool isWanted(const Finding& finding) const;
    void chosen();
    // Works out what would mend the finding, which is too slow to do for every one.
    void showMends(const Finding* finding);
    void goTo(const Finding& finding);

    Document& document_;
    ViewState& view_;
    QLabel* verdictIcon_;
    QLabel* verdict_;
    QLabel* assumed_;
    std::map<Severity, QToolButton*> severities_;
    QComboBox* sizes_;
    QLabel* empty_;
    FindingsTree* tree_;
    MendButtons* mends_;
    bool filling_ = false;  // the sizes are listed anew: none is chosen by a person
};

}  // namespace lacewright::app
