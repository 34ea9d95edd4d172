// The outline of a hole, wherever one is typed: in a part, a punch, a die.

#pragma once

#include "ui/views/form.h"

#include <optional>

namespace treadle::views {

std::optional<geometry::HoleOutline>
hole_fields(Form& form, const std::string& path, const geometry::HoleOutline& hole);

/// A punch of the crib instead of typed sizes.
std::optional<geometry::HoleOutline>
crib_choice(Desk& desk, Form& form, const std::string& key, const geometry::HoleOutline& hole);

} // namespace treadle::views
