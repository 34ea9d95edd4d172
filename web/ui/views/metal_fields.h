// What a piece of metal is: section by sizes or from the catalogue, and grade. Parts, bars of the
// rack and trial strips ask alike.

#pragma once

#include "ui/views/form.h"

#include <functional>
#include <optional>
#include <string>

namespace treadle::views {

/// A section while it is shown; `change` gives the one to write to.
struct SectionFields {
    Desk& desk;
    Form& form;
    std::string path; ///< before "section.": "rack[0]."
    const Section& section;
    std::function<Section&()> change;

    void shape() const;
    void sizes() const;
    /// Nothing where the catalogue has none of the shape.
    void catalogue() const;
};

/// Id of another grade: own ones first, then those of the catalogue.
[[nodiscard]] std::optional<std::string> grade_choice(const Desk& desk,
                                                      Form& form,
                                                      const char* label,
                                                      const std::string& key,
                                                      const std::string& grade);
[[nodiscard]] std::string grade_name(const Desk& desk, const std::string& id);

} // namespace treadle::views
