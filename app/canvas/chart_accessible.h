#pragma once

class QAccessibleInterface;
class QObject;
class QString;

namespace lacewright::app {

class ChartView;

// The chart as a table to assistive software, rows from the top and columns from the left as they
// are seen. To be given to QAccessible::installFactory; makes nothing of other objects.
QAccessibleInterface* makeChartAccessible(const QString& className, QObject* object);

// Tells assistive software that the cursor stands on another cell.
void announceCursor(ChartView& view);

}  // namespace lacewright::app
