// How each kind of figure is read while it is being typed, for the number pad and the echo.

#pragma once

#include "quantity/print.h"
#include "quantity/quantity.h"

#include "ui/widgets/entry.h"

namespace treadle::views {

// By the type of the value that the field holds.
[[nodiscard]] ui::FigureKind figure_kind(const Length*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const Force*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const Stress*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const Mass*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const Density*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const Angle*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const double*, UnitSystem system);
[[nodiscard]] ui::FigureKind figure_kind(const int*, UnitSystem system);

} // namespace treadle::views
