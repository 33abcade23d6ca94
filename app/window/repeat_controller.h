#pragma once

#include <QObject>

#include "core/chart/edits.h"

class QWidget;

namespace lacewright::app {

class ActionSet;
class Document;
class UserPrompts;
class ViewState;

// Repeats, the row repeat and sizes: made from the selection, changed at the cursor.
class RepeatController : public QObject {
    Q_OBJECT

 public:
    RepeatController(Document& document, ViewState& view, ActionSet& actions, UserPrompts& prompts,
                     QWidget& window);

 private:
    void connectRepeats();
    void connectRowRepeat();
    void connectSizes();
    void markRepeat();
    void changeRepeat();
    void shiftRepeat();
    void addSize();
    void refresh();
    // The repeat whose box on the cursor's row holds the cursor, or null.
    const Repeat* repeatAtCursor() const;
    const Size* sizeLookedAt() const;

    Document& document_;
    ViewState& view_;
    ActionSet& actions_;
    UserPrompts& prompts_;
    QWidget& window_;
};

}  // namespace lacewright::app
