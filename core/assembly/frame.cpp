// A frame of angle or flat bar: mitred, butted, notched and folded, or bent as a hoop.

#include "layout/frame.h"

#include "assembly/folded.h"
#include "assembly/inputs.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;
using layout::FrameFigure;
using section::Shape;

enum class Corner { mitre, butt, notch, hoop };
enum class Closing { mitre, butt };

constexpr calc::InputSpec k_inputs[] = {
    {"corner", InputKind::word, true, "how the corners are made", "mitre|butt|notch-and-fold|hoop"},
    {"width", InputKind::length, true, "outside, or heel to heel", "", "24 in"},
    {"height", InputKind::length, true, "outside, or heel to heel", "", "18 in"},
    {"bar", InputKind::section, true, "angle, or flat bar", "", "angle 2 x 2 x 1/4 in"},
    {"heel", InputKind::word, false, "of an angle: the standing leg", "outside|inside"},
    {"closing", InputKind::word, false, "last corner of a folded frame or hoop", "mitre|butt"},
    {"k", InputKind::ratio, false, "neutral line of folded corners; 0.5 if not given", "", "0.33"},
    {"radius",
     InputKind::length,
     false,
     "inside, of folded corners or a hoop's bends",
     "",
     "1/4 in"},
    {"count", InputKind::count, false, "of frames; 1 if not given", "", "2"},
    {"grade", InputKind::material, true, "of the bar", "", "A36"},
};

struct Question {
    Corner corner = Corner::mitre;
    Closing closing = Closing::mitre;
    layout::Frame frame;
    Section bar;
    double k = 0.5;
    Length radius;
    int count = 1;
    std::string grade;
    [[nodiscard]] bool angle() const { return bar.shape == Shape::angle; }
};

void check(Inputs& in, const Question& q) {
    if (q.bar.shape != Shape::angle && q.bar.shape != Shape::flat)
        in.refuse({"bar", "Frames are of angle or flat bar here.", "angle 2 x 2 x 1/4 in"});
    if (q.corner == Corner::notch && !q.angle())
        in.refuse(
            {"bar", "Only an angle is notched and folded; a flat is bent as a hoop.", "angle"});
    if (q.corner == Corner::hoop && q.angle())
        in.refuse({"bar", "An angle is notched and folded; no V bends it as it is.", "flat"});
    if (in.has("heel") && !q.angle())
        in.refuse({"heel", "A flat bar has no heel.", ""});
    if (q.corner != Corner::mitre && q.frame.heel == layout::Heel::inside)
        in.refuse({"heel", "Only mitred frames are here with the heel inside.", "outside"});
    const bool folded = q.corner == Corner::notch || q.corner == Corner::hoop;
    for (const char* name : {"closing", "radius"})
        if (in.has(name) && !folded)
            in.refuse({name, "Only a folded frame or a hoop asks for this.", ""});
    if (in.has("k") && q.corner != Corner::notch)
        in.refuse({"k", "A hoop's bends get their K from the plan.", "notch-and-fold"});
}

Question read(Inputs& in) {
    Question q;
    q.corner = in.word<Corner>("corner");
    q.closing = in.word<Closing>("closing");
    q.bar = in.section("bar");
    q.frame.width = in.size("width");
    q.frame.height = in.size("height");
    q.frame.heel = in.word<layout::Heel>("heel");
    q.k = in.ratio_or("k", 0.5);
    q.radius = in.place_or("radius", Length{});
    q.count = in.count_or("count", 1, 1000, 1);
    q.grade = in.grade("grade");
    q.frame.leg = q.bar.width;
    q.frame.thickness = q.bar.shape == Shape::angle ? q.bar.thickness : Length{};
    if (!in.failed())
        check(in, q);
    return q;
}

Refusal renamed(Refusal refusal) { return renamed_for_frame(std::move(refusal), "width"); }

void add_pieces(Made& made,
                const Question& q,
                const layout::FramePieces& sizes,
                const std::string& mark) {
    // Long points at the datum edge, the heel; with the heel inside at the far edge, the toes.
    const double side = q.frame.heel == layout::Heel::inside ? -1.0 : 1.0;
    const Angle mitre = q.corner == Corner::mitre ? degrees(45.0) * side : Angle{};
    const std::pair<Piece, Length> rows[] = {
        {{"width", "W", "frame side, width"}, sizes.width_piece},
        {{"height", "H", "frame side, height"}, sizes.height_piece}};
    for (const auto& [piece, length] : rows) {
        job::Part part = straight_part(piece, mark, q.grade, q.bar, length, 2 * q.count);
        cut_ends(part, mitre, mitre);
        if (q.corner == Corner::mitre)
            add_note(part, "long point to long point");
        add(made, piece, std::move(part));
    }
    if (q.corner != Corner::butt || !q.angle())
        return;
    const auto notch = layout::corner_notch({q.frame.leg, q.frame.thickness});
    if (!notch.ok())
        return;
    job::Part& between = made.parts.back().part;
    for (const job::NotchEdge edge : {job::NotchEdge::start_far, job::NotchEdge::finish_far}) {
        job::Notch cut;
        cut.edge = edge;
        cut.along = notch->depth;
        cut.depth = notch->depth;
        cut.face = section::Face::leg_a;
        between.operations.emplace_back(cut);
    }
    add_note(between, "flat leg notched to clear the through piece; leave its root fillet clear");
}

Result<layout::FramePieces> sizes_of(const Question& q) {
    if (q.corner != Corner::butt || q.angle())
        return q.corner == Corner::butt ? layout::butted_frame(q.frame)
                                        : layout::mitred_frame(q.frame);
    // Flat bar: the between pieces end at the through pieces' inner edges.
    layout::Frame flat = q.frame;
    flat.thickness = q.frame.leg;
    return layout::butted_frame(flat);
}

std::optional<Refusal> make_cut(Made& made, const Question& q, const std::string& mark) {
    const auto sizes = sizes_of(q);
    if (!sizes.ok())
        return renamed(sizes.refusal());
    add_pieces(made, q, *sizes, mark);
    made.figures = {{"opening, width", sizes->opening_width},
                    {"opening, height", sizes->opening_height}};
    const bool butt = q.corner == Corner::butt;
    if (butt && !q.angle())
        return std::nullopt;
    for (const FrameFigure figure : {FrameFigure::width_piece,
                                     FrameFigure::height_piece,
                                     FrameFigure::opening_width,
                                     FrameFigure::opening_height})
        if (const auto working = butt ? layout::butted_working(q.frame, figure)
                                      : layout::mitred_working(q.frame, figure);
            working.ok())
            made.workings.push_back(*working);
    if (q.angle())
        return std::nullopt;
    const auto bar = layout::flat_frame_bar_working(q.frame);
    if (bar.ok()) {
        made.workings.push_back(*bar);
        made.figures.push_back(
            {"bar for one frame, shared 45 degree cuts", std::get<Length>(bar->result.value)});
    }
    return std::nullopt;
}

std::vector<Length> legs_of(const Question& q, Length closing_thickness) {
    const Length last =
        q.closing == Closing::butt ? q.frame.height - closing_thickness : q.frame.height;
    return {q.frame.width, q.frame.height, q.frame.width, last};
}

/// One bar of angle: a notch for each of three corners, and the fourth closes.
std::optional<Refusal> make_notched(Made& made, const Question& q, const std::string& mark) {
    if (const auto sizes = layout::mitred_frame(q.frame); !sizes.ok())
        return renamed(sizes.refusal());
    const Angle mitre = q.closing == Closing::mitre ? degrees(45.0) : Angle{};
    const auto bar = add_folded(
        made,
        {q.bar, q.grade, legs_of(q, q.bar.thickness), degrees(90.0), mitre, q.radius, q.k, q.count},
        mark);
    if (!bar.ok())
        return renamed(bar.refusal());
    for (std::size_t i = 0; i < bar->middles.size(); ++i)
        made.figures.push_back(
            {"notch " + std::to_string(i + 1) + " from the start", bar->middles[i]});
    return std::nullopt;
}

/// A flat bent on its wide face, on the brake: the plan makes its blank.
std::optional<Refusal> make_hoop(Made& made, const Question& q, const std::string& mark) {
    const Piece piece{"bar", "B", "hoop"};
    job::Part part = straight_part(piece, mark, q.grade, q.bar, Length{}, q.count);
    part.legs = legs_of(q, q.bar.thickness);
    for (const Length leg : part.legs)
        if (!(leg > q.bar.thickness * 2.0))
            return Refusal{"width", "A side so short is used up by its bends.", ""};
    cut_ends(part);
    for (int i = 0; i < 3; ++i)
        part.operations.emplace_back(job::Bend{degrees(90.0), q.radius, true});
    add_note(part, "the last corner is closed by a weld");
    add(made, piece, std::move(part));
    made.figures = {{"inside, width", q.frame.width - 2.0 * q.bar.thickness},
                    {"inside, height", q.frame.height - 2.0 * q.bar.thickness}};
    made.cautions.emplace_back(
        "A hoop closes round the tools: look at the order of its bends in the plan.");
    return std::nullopt;
}

void draw(Made& made, const Question& q) {
    const Length face = q.corner == Corner::hoop ? q.bar.thickness : q.frame.leg;
    const bool inside = q.frame.heel == layout::Heel::inside;
    const Length low = inside ? -face : Length{};
    const Length w = inside ? q.frame.width + face : q.frame.width;
    const Length h = inside ? q.frame.height + face : q.frame.height;
    Elevation& out = made.elevation;
    const Spot outer[] = {{low, low}, {w, low}, {w, h}, {low, h}};
    const Spot inner[] = {{low + face, low + face},
                          {w - face, low + face},
                          {w - face, h - face},
                          {low + face, h - face}};
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t next = (i + 1) % 4;
        if (q.corner == Corner::butt) {
            const bool through = i % 2 == 0;
            const Length y = i == 0 ? low : h - face;
            const Length x = i == 1 ? w - face : low;
            out.outlines.push_back(through ? box({low, y}, w - low, face)
                                           : box({x, low + face}, face, h - low - 2.0 * face));
        } else {
            out.outlines.push_back(
                {{outer[i], outer[next], inner[next], inner[i]}, Shade::steel, ""});
        }
    }
    const Length off = q.frame.height / 8.0;
    out.spans = {{{Length{}, low - off}, {q.frame.width, low - off}, ""},
                 {{low - off, Length{}}, {low - off, q.frame.height}, ""}};
    out.description = q.angle() ? "Frame of angle, seen on its flat legs." : "Frame of flat bar.";
}

Result<Made> make_frame(Inputs& in, const std::string& mark) {
    const Question q = read(in);
    if (in.failed())
        return in.refusal();
    Made made;
    auto fault = q.corner == Corner::notch  ? make_notched(made, q, mark)
                 : q.corner == Corner::hoop ? make_hoop(made, q, mark)
                                            : make_cut(made, q, mark);
    if (fault)
        return *fault;
    made.cautions.emplace_back(
        "Check the first frame for square by its diagonals before the others are cut.");
    draw(made, q);
    return made;
}

} // namespace

const Kind k_frame{"frame",
                   "Frame of angle or flat bar",
                   "Four sides: mitred, butted, notched and folded from one bar, or a bent hoop.",
                   k_inputs,
                   make_frame};

} // namespace treadle::assembly
