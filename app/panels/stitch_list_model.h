#pragma once

#include <QAbstractListModel>
#include <QString>
#include <QStringList>
#include <vector>

#include "core/stitch/catalogue.h"

namespace lacewright {
struct Chart;
}

namespace lacewright::app {

// The stitches of a catalogue under headings: the most used of the chart, those chosen lately, then
// all by kind. With a search text: those that match, best first, without headings.
class StitchListModel : public QAbstractListModel {
    Q_OBJECT

 public:
    enum Role { kId = Qt::UserRole, kIsHeading, kAbbreviation, kKey };
    static constexpr int kKeys = 9;  // stitches with a number key

    using QAbstractListModel::QAbstractListModel;

    void show(const Chart& chart, const QStringList& lately, const QString& search);
    // Plain knit, then the most used others. A stitch keeps its place as long as the chart uses it,
    // so that a number key means the same while one draws.
    const QStringList& mostUsed() const { return mostUsed_; }
    void forgetKeys() { mostUsed_.clear(); }
    // The first row that shows the stitch; -1 when it is not listed.
    int rowOf(const QString& id) const;
    const Stitch* stitchAt(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

 private:
    struct Entry {
        QString heading;  // empty for a stitch
        StitchIndex stitch = kCovered;
        int key = 0;  // 1..kKeys; 0 for none
    };
    void giveKeys(const Chart& chart);
    void addKinds();
    void addMatches(const QString& search);

    StitchCataloguePtr stitches_ = builtInStitches();
    std::vector<Entry> entries_;
    QStringList mostUsed_;
};

// Ids of the stitches a chart uses, most used first, without the ground of plain knit.
QStringList stitchesByUse(const Chart& chart);

}  // namespace lacewright::app
