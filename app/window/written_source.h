#pragma once

#include <QTimer>
#include <QWidget>

#include "core/words/reader.h"

class QCheckBox;
class QListWidget;
class QPlainTextEdit;

namespace lacewright::app {

class UserPrompts;

// Written rows that are typed, pasted or opened from a file, read while they change. Everything the
// reader says is listed with its line and a caret; choosing a message puts the cursor there.
class WrittenSource : public QWidget {
    Q_OBJECT

 public:
    WrittenSource(UserPrompts& prompts, QWidget* parent);

    void setText(const QString& text);
    QString text() const;
    // Of the text as it stands, with the messages listed.
    const ReadRows& readNow();
    bool isEmpty() const;
    // Selects a word of the text.
    void goTo(const Place& place);
    QPlainTextEdit& editor() { return *editor_; }

 Q_SIGNALS:
    void textRead();  // anew, shortly after the last change

 private:
    void openFile();
    void listMessages();

    UserPrompts& prompts_;
    QPlainTextEdit* editor_;
    QListWidget* messages_;
    QCheckBox* older_;
    QTimer soon_;
    bool stale_ = true;
    ReadRows read_;
};

// The clipboard holds text in which at least one written row can be read; else empty.
QString rowsOnClipboard();

}  // namespace lacewright::app
