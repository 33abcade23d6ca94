#pragma once

#include <QWidget>

#include "app/window/starters.h"

class QLabel;
class QVBoxLayout;

namespace lacewright::app {

// What one sees without a chart: recent files, and charts to begin with.
class StartPage : public QWidget {
    Q_OBJECT

 public:
    explicit StartPage(QWidget* parent = nullptr);

    void showRecent(const QStringList& files);

 Q_SIGNALS:
    void newWanted();
    void openWanted();
    void fileChosen(const QString& path);
    void starterChosen(const lacewright::app::Starter& starter);

 private:
    void buildStarters(QVBoxLayout& column);

    QVBoxLayout* recent_;
    QLabel* none_;
};

}  // namespace lacewright::app
