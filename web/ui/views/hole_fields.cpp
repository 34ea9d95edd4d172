#include "ui/views/hole_fields.h"

#include "plan/words.h"

#include <array>

namespace treadle::views {

namespace {

using geometry::HoleShape;

const std::array<std::string, 5> k_shapes = {"Round", "Square", "Rectangle", "Obround", "Hexagon"};

struct Labels {
    const char* size;
    const char* size2; ///< null: one size says it
};

Labels labels_of(HoleShape shape) {
    switch (shape) {
    case HoleShape::round:
        return {"Hole diameter", nullptr};
    case HoleShape::square:
        return {"Hole side", nullptr};
    case HoleShape::rectangle:
        return {"Hole width", "Hole length"};
    case HoleShape::obround:
        return {"Hole width", "Hole length, overall"};
    case HoleShape::hexagon:
        return {"Hole across flats", nullptr};
    case HoleShape::perimeter:
        return {"Length of its edge", nullptr};
    }
    return {"Hole size", nullptr};
}

} // namespace

std::optional<geometry::HoleOutline>
hole_fields(Form& form, const std::string& path, const geometry::HoleOutline& hole) {
    std::optional<geometry::HoleOutline> changed;
    if (const auto chosen =
            form.choice("Hole shape", path + ".shape", k_shapes, static_cast<int>(hole.shape))) {
        changed = hole;
        changed->shape = static_cast<HoleShape>(*chosen);
        // A second size of nothing would be refused before it could be typed.
        changed->size2 = labels_of(changed->shape).size2 ? hole.size + hole.size : Length{};
    }
    const Labels labels = labels_of(hole.shape);
    if (const auto typed = form.length(labels.size, path + ".size", hole.size)) {
        changed = hole;
        changed->size = *typed;
    }
    if (labels.size2) {
        if (const auto typed = form.length(labels.size2, path + ".size2", hole.size2)) {
            changed = hole;
            changed->size2 = *typed;
        }
    }
    return changed;
}

std::optional<geometry::HoleOutline>
crib_choice(Desk& desk, Form& form, const std::string& key, const geometry::HoleOutline& hole) {
    const auto& punches = desk.session.shop().crib.punches;
    std::vector<std::string> names = {"Size as typed"};
    int selected = 0;
    for (std::size_t i = 0; i < punches.size(); ++i) {
        const geometry::HoleOutline& has = punches[i].hole;
        names.push_back(plan::hole_words(has, desk.style()));
        if (has.shape == hole.shape && has.size == hole.size && has.size2 == hole.size2)
            selected = static_cast<int>(i) + 1;
    }
    const auto chosen = form.choice("Punch in the crib", key, names, selected);
    if (!chosen || *chosen == 0)
        return std::nullopt;
    return punches[static_cast<std::size_t>(*chosen) - 1].hole;
}

} // namespace treadle::views
