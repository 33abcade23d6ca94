#include "app/window/written_source.h"

#include <QCheckBox>
#include <QClipboard>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

#include "app/window/user_prompts.h"
#include "core/base/disk.h"

namespace lacewright::app {

namespace {

constexpr int kPause = 200;           // milliseconds without a change
constexpr int kMostListedHigh = 150;  // device-independent pixels of the list of messages

// Places count bytes, the editor UTF-16 units.
QTextCursor selected(QPlainTextEdit& editor, const Place& place) {
    const QByteArray text = editor.toPlainText().toUtf8();
    const auto units = [&text](std::size_t bytes) {
        return static_cast<int>(QString::fromUtf8(text.left(static_cast<qsizetype>(bytes))).size());
    };
    QTextCursor cursor(editor.document());
    cursor.setPosition(units(place.offset));
    cursor.setPosition(units(place.offset + place.length), QTextCursor::KeepAnchor);
    return cursor;
}

}  // namespace

QString rowsOnClipboard() {
    const QString text = QGuiApplication::clipboard()->text();
    return readWritten(text.toStdString()).pattern.rows.empty() ? QString() : text;
}

WrittenSource::WrittenSource(UserPrompts& prompts, QWidget* parent)
    : QWidget(parent),
      prompts_(prompts),
      editor_(new QPlainTextEdit(this)),
      messages_(new QListWidget(this)),
      older_(new QCheckBox(tr("O&lder terms, m1 is a yarn over"), this)) {
    const QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    editor_->setObjectName(QStringLiteral("rowsText"));
    editor_->setAccessibleName(tr("Written rows"));
    editor_->setTabChangesFocus(true);
    editor_->setPlaceholderText(
        tr("Cast on: 7\nRow 1 (RS): k1, yo, k1, s2kp, k1, yo, k1.\nRow 2: purl."));
    messages_->setObjectName(QStringLiteral("rowsMessages"));
    messages_->setAccessibleName(tr("What cannot be read"));
    messages_->setFont(fixed);
    messages_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    messages_->setVisible(false);
    older_->setObjectName(QStringLiteral("olderTerms"));
    auto* open = new QPushButton(tr("Open &file…"), this);
    open->setObjectName(QStringLiteral("openRows"));
    open->setAutoDefault(false);

    auto* line = new QHBoxLayout;
    line->addWidget(open);
    line->addWidget(older_);
    line->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(editor_, 1);
    layout->addLayout(line);
    layout->addWidget(messages_);

    soon_.setSingleShot(true);
    soon_.setInterval(kPause);
    const auto changed = [this] {
        stale_ = true;
        soon_.start();
    };
    connect(editor_, &QPlainTextEdit::textChanged, this, changed);
    connect(older_, &QCheckBox::toggled, this, changed);
    connect(&soon_, &QTimer::timeout, this, &WrittenSource::textRead);
    connect(open, &QPushButton::clicked, this, &WrittenSource::openFile);
    const auto follow = [this](const QListWidgetItem* item) {
        if (!item) return;
        const auto index = static_cast<std::size_t>(messages_->row(item));
        if (index < read_.messages.size()) goTo(read_.messages[index].place);
    };
    connect(messages_, &QListWidget::currentItemChanged, this, follow);
    connect(messages_, &QListWidget::itemClicked, this, follow);
    setFocusProxy(editor_);
}

void WrittenSource::setText(const QString& text) {
    editor_->setPlainText(text);
}

QString WrittenSource::text() const {
    return editor_->toPlainText();
}

bool WrittenSource::isEmpty() const {
    return text().trimmed().isEmpty();
}

const ReadRows& WrittenSource::readNow() {
    if (!stale_) return read_;
    ReadOptions options;
    if (older_->isChecked()) options.wording = Wording::Older;
    read_ = readWritten(text().toStdString(), options);
    stale_ = false;
    listMessages();
    return read_;
}

void WrittenSource::listMessages() {
    const std::string text = editor_->toPlainText().toStdString();
    messages_->clear();
    if (!isEmpty()) {
        for (const ReadMessage& message : read_.messages) {
            const std::string name = message.error ? "rows" : "note, rows";
            auto* item = new QListWidgetItem(
                QString::fromStdString(rendered(message, text, name)).trimmed(), messages_);
            item->setData(Qt::AccessibleTextRole, QString::fromStdString(message.sentence()));
        }
    }
    int high = 2 * messages_->frameWidth();
    for (int i = 0; i < messages_->count(); ++i) high += messages_->sizeHintForRow(i);
    if (messages_->count() > 0) {
        high += messages_->horizontalScrollBar()->sizeHint().height();
        messages_->setFixedHeight(std::min(high, kMostListedHigh));
    }
    messages_->setVisible(messages_->count() > 0);
}

void WrittenSource::openFile() {
    const QString path = prompts_.fileToOpen(this, {}, tr("Written rows (*.txt);;All files (*)"));
    if (path.isEmpty()) return;
    const Result<std::string> text = readFile(path.toStdString());
    if (!text) {
        prompts_.tell(this, tr("The file cannot be read"),
                      QString::fromStdString(text.error().text()));
        return;
    }
    setText(QString::fromStdString(*text));
}

void WrittenSource::goTo(const Place& place) {
    editor_->setTextCursor(selected(*editor_, place));
    editor_->ensureCursorVisible();
}

}  // namespace lacewright::app
