#pragma once

#include <QObject>

class QWidget;

namespace lacewright::app {

class ActionSet;

// The list of keys, and what this program is. Both in windows that do not hold up the work.
class HelpController : public QObject {
    Q_OBJECT

 public:
    HelpController(ActionSet& actions, QWidget& window);

    // Every command with a key, and every stitch with one, as rich text.
    static QString keyList();

 private:
    void show(const QString& name, const QString& title, const QString& richText);

    QWidget& window_;
};

}  // namespace lacewright::app
