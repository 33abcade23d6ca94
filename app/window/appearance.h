#pragma once

namespace lacewright::app {

enum class Appearance { System, Light, Dark };

// The colours of the whole program; remembered in the settings.
Appearance rememberedAppearance();
void useAppearance(Appearance appearance);

}  // namespace lacewright::app
