// The words of the file format for the choices of the rooms' types: private to this room.
//
// Reading and writing use the same lists, so that they cannot come apart.

#pragma once

#include "base/contracts.h"
#include "base/formula_card.h"
#include "equipment/caution.h"
#include "equipment/shop.h"
#include "job/job.h"

namespace treadle::archive {

template <class E>
struct Word {
    const char* text;
    E value;
};

template <class E>
struct Words; ///< k_list, for each choice below

template <>
struct Words<quantity::UnitSystem> {
    static constexpr Word<quantity::UnitSystem> k_list[] = {
        {"inch", quantity::UnitSystem::inch},
        {"metric", quantity::UnitSystem::metric},
    };
};

template <>
struct Words<section::Shape> {
    static constexpr Word<section::Shape> k_list[] = {
        {"flat", section::Shape::flat},
        {"plate", section::Shape::plate},
        {"angle", section::Shape::angle},
        {"channel", section::Shape::channel},
        {"round", section::Shape::round},
        {"square", section::Shape::square},
        {"pipe", section::Shape::pipe},
        {"square_tube", section::Shape::square_tube},
    };
};

template <>
struct Words<section::Face> {
    static constexpr Word<section::Face> k_list[] = {
        {"flat", section::Face::flat},
        {"leg_a", section::Face::leg_a},
        {"leg_b", section::Face::leg_b},
        {"web", section::Face::web},
        {"flange_top", section::Face::flange_top},
        {"flange_bottom", section::Face::flange_bottom},
    };
};

template <>
struct Words<geometry::HoleShape> {
    static constexpr Word<geometry::HoleShape> k_list[] = {
        {"round", geometry::HoleShape::round},
        {"square", geometry::HoleShape::square},
        {"rectangle", geometry::HoleShape::rectangle},
        {"obround", geometry::HoleShape::obround},
        {"hexagon", geometry::HoleShape::hexagon},
        {"perimeter", geometry::HoleShape::perimeter},
    };
};

template <>
struct Words<geometry::NotchShape> {
    static constexpr Word<geometry::NotchShape> k_list[] = {
        {"rectangle", geometry::NotchShape::rectangle},
        {"vee", geometry::NotchShape::vee},
    };
};

template <>
struct Words<job::NotchEdge> {
    static constexpr Word<job::NotchEdge> k_list[] = {
        {"near_edge", job::NotchEdge::near_edge},
        {"far_edge", job::NotchEdge::far_edge},
        {"start_end", job::NotchEdge::start_end},
        {"finish_end", job::NotchEdge::finish_end},
        {"start_near", job::NotchEdge::start_near},
        {"start_far", job::NotchEdge::start_far},
        {"finish_near", job::NotchEdge::finish_near},
        {"finish_far", job::NotchEdge::finish_far},
    };
};

template <>
struct Words<job::CutSide> {
    static constexpr Word<job::CutSide> k_list[] = {
        {"length", job::CutSide::length},
        {"width", job::CutSide::width},
    };
};

template <>
struct Words<job::End> {
    static constexpr Word<job::End> k_list[] = {
        {"start", job::End::start},
        {"finish", job::End::finish},
        {"both", job::End::both},
    };
};

/// "do" of an operation: which alternative of job::Operation follows.
enum class Doing { cut, punch, notch, bend, saddle };
template <>
struct Words<Doing> {
    static constexpr Word<Doing> k_list[] = {
        {"cut", Doing::cut},
        {"punch", Doing::punch},
        {"notch", Doing::notch},
        {"bend", Doing::bend},
        {"saddle", Doing::saddle},
    };
};

enum class Direction { up, down };
template <>
struct Words<Direction> {
    static constexpr Word<Direction> k_list[] = {
        {"up", Direction::up},
        {"down", Direction::down},
    };
};

template <>
struct Words<material::Grain> {
    static constexpr Word<material::Grain> k_list[] = {
        {"unknown", material::Grain::unknown},
        {"across", material::Grain::across},
        {"along", material::Grain::along},
    };
};

template <>
struct Words<material::Family> {
    static constexpr Word<material::Family> k_list[] = {
        {"carbon-steel", material::Family::carbon_steel},
        {"stainless-steel", material::Family::stainless_steel},
        {"aluminium", material::Family::aluminium},
        {"copper-alloy", material::Family::copper_alloy},
    };
};

template <>
struct Words<base::Evidence> {
    static constexpr Word<base::Evidence> k_list[] = {
        {"published", base::Evidence::published},
        {"common-practice", base::Evidence::common_practice},
        {"from-memory", base::Evidence::from_memory},
        {"derived", base::Evidence::derived},
        {"invented", base::Evidence::invented},
    };
};

template <>
struct Words<equipment::StationKind> {
    static constexpr Word<equipment::StationKind> k_list[] = {
        {"punch", equipment::StationKind::punch},
        {"flat_shear", equipment::StationKind::flat_shear},
        {"angle_shear", equipment::StationKind::angle_shear},
        {"bar_shear", equipment::StationKind::bar_shear},
        {"notcher", equipment::StationKind::notcher},
        {"table", equipment::StationKind::table},
    };
};

template <>
struct Words<equipment::Work> {
    static constexpr Word<equipment::Work> k_list[] = {
        {"cut", equipment::Work::cut},
        {"punch", equipment::Work::punch},
        {"notch", equipment::Work::notch},
        {"bend", equipment::Work::bend},
        {"saddle", equipment::Work::saddle},
    };
};

template <>
struct Words<equipment::AttachmentKind> {
    static constexpr Word<equipment::AttachmentKind> k_list[] = {
        {"brake", equipment::AttachmentKind::brake},
        {"vee_notcher", equipment::AttachmentKind::vee_notcher},
        {"rectangular_notcher", equipment::AttachmentKind::rectangular_notcher},
        {"saddle_notcher", equipment::AttachmentKind::saddle_notcher},
    };
};

template <>
struct Words<job::ToleranceClass> {
    static constexpr Word<job::ToleranceClass> k_list[] = {
        {"f", job::ToleranceClass::fine},
        {"m", job::ToleranceClass::medium},
        {"c", job::ToleranceClass::coarse},
        {"v", job::ToleranceClass::very_coarse},
    };
};

template <class E>
[[nodiscard]] const char* word_for(E value) {
    for (const auto& word : Words<E>::k_list)
        if (word.value == value)
            return word.text;
    base::fault("a choice without a word in the file format", __FILE__, __LINE__);
}

} // namespace treadle::archive
