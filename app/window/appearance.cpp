#include "app/window/appearance.h"

#include <QApplication>
#include <QPalette>
#include <QSettings>
#include <QToolTip>

#include "app/window/outline_style.h"

namespace lacewright::app {

namespace {

const QString kKey = QStringLiteral("appearance");

struct Shades {
    QRgb window, base, alternate, text, quiet, button, highlight, highlightedText, link, line;
};
constexpr Shades kLight = {0xFFF4F4F1, 0xFFFFFFFF, 0xFFF8F8F6, 0xFF1A1A1A, 0xFF8B8B87,
                           0xFFEDEDE9, 0xFF1D5D77, 0xFFFFFFFF, 0xFF0072B2, 0xFFB9B9B4};
constexpr Shades kDark = {0xFF26282B, 0xFF1D1F21, 0xFF232528, 0xFFECECEA, 0xFF7E8286,
                          0xFF33363A, 0xFF3E8CAB, 0xFF0B0C0D, 0xFF56B4E9, 0xFF4A4E53};

QPalette paletteOf(const Shades& shades) {
    QPalette palette(QColor(shades.button), QColor(shades.window));
    const auto set = [&palette](QPalette::ColorRole role, QRgb shade) {
        palette.setColor(role, QColor(shade));
    };
    set(QPalette::Base, shades.base);
    set(QPalette::AlternateBase, shades.alternate);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::ToolTipText, QPalette::BrightText}) {
        set(role, shades.text);
    }
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, QColor(shades.quiet));
    }
    set(QPalette::PlaceholderText, shades.quiet);
    set(QPalette::ToolTipBase, shades.alternate);
    set(QPalette::Highlight, shades.highlight);
    set(QPalette::HighlightedText, shades.highlightedText);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, QColor(shades.line));
    set(QPalette::Link, shades.link);
    set(QPalette::LinkVisited, shades.link);
    set(QPalette::Mid, shades.line);
    return palette;
}

}  // namespace

Appearance rememberedAppearance() {
    const QString name = QSettings().value(kKey).toString();
    if (name == QLatin1String("light")) return Appearance::Light;
    if (name == QLatin1String("dark")) return Appearance::Dark;
    return Appearance::System;
}

void useAppearance(Appearance appearance) {
    QSettings settings;
    switch (appearance) {
        case Appearance::System:
            settings.remove(kKey);
            // A palette without any colour set gives way to that of the system.
            QApplication::setPalette(QPalette());
            return;
        case Appearance::Light:
            settings.setValue(kKey, QStringLiteral("light"));
            break;
        case Appearance::Dark:
            settings.setValue(kKey, QStringLiteral("dark"));
            break;
    }
    // Only this style paints every part with the palette it is given.
    QApplication::setStyle(new OutlineStyle);
    const QPalette palette = paletteOf(appearance == Appearance::Dark ? kDark : kLight);
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
}

}  // namespace lacewright::app
