// A base plate under a post: a plate, its bolts in four corners or two rows, and the post's foot.

#include "assembly/bolted.h"
#include "assembly/kinds.h"
#include "assembly/pieces.h"
#include "assembly/rule_lines.h"

namespace treadle::assembly {

namespace {

using base::Refusal;
using base::Result;
using calc::InputKind;

constexpr calc::InputSpec k_inputs[] = {
    {"length", InputKind::length, true, "of the plate", "", "8 in"},
    {"width", InputKind::length, true, "of the plate", "", "8 in"},
    {"thickness", InputKind::length, true, "of the plate", "", "3/8 in"},
    {"bolt", InputKind::bolt, true, "anchor or bolt", "", "3/4 in"},
    {"edge_length", InputKind::length, true, "hole centre to the end of the plate", "", "1-1/2 in"},
    {"edge_width", InputKind::length, true, "hole centre to the long edge", "", "1-1/2 in"},
    {"columns", InputKind::count, false, "of bolts along the length; 2 if not given", "", "2"},
    {"rows", InputKind::count, false, "of bolts across; 2 if not given", "", "2"},
    {"edge", InputKind::word, false, "how the plate is cut", "sheared|rolled"},
    {"post", InputKind::section, false, "that stands in the middle", "", "tube 2 x 2 x 1/8 in"},
    {"count", InputKind::count, false, "of plates; 1 if not given", "", "4"},
    {"grade", InputKind::material, true, "of the plate", "", "A36"},
};

struct Plate {
    Length length, width, thickness, edge_length, edge_width;
    int columns = 2, rows = 2, count = 1;
    BoltChoice bolt;
    Section post; ///< no width: none
    std::string grade;
    [[nodiscard]] Length column_pitch() const {
        return columns > 1 ? (length - 2.0 * edge_length) / (columns - 1.0) : Length{};
    }
    [[nodiscard]] Length row_pitch() const {
        return rows > 1 ? (width - 2.0 * edge_width) / (rows - 1.0) : Length{};
    }
    /// A single row or column stands in the middle.
    [[nodiscard]] Length x() const { return columns > 1 ? edge_length : length / 2.0; }
    [[nodiscard]] Length y() const { return rows > 1 ? edge_width : width / 2.0; }
};

Plate read(Inputs& in) {
    Plate p;
    p.length = in.size("length");
    p.width = in.size("width");
    p.thickness = in.size("thickness");
    p.edge_length = in.size("edge_length");
    p.edge_width = in.size("edge_width");
    p.columns = in.count_or("columns", 1, 20, 2);
    p.rows = in.count_or("rows", 1, 20, 2);
    p.count = in.count_or("count", 1, 10000, 1);
    p.bolt = read_bolt(in, true);
    p.post = in.section("post");
    p.grade = in.grade("grade");
    if (in.failed())
        return p;
    const Length hole = p.bolt.hole.width;
    if (p.columns > 1 && !(p.column_pitch() > hole))
        in.refuse({"edge_length", "The holes run into each other along the plate.", ""});
    if (p.rows > 1 && !(p.row_pitch() > hole))
        in.refuse({"edge_width", "The holes run into each other across the plate.", ""});
    if (!(p.x() > hole / 2.0) || !(p.length - p.x() > hole / 2.0))
        in.refuse({"edge_length", "The holes run off the plate.", ""});
    if (!(p.y() > hole / 2.0) || !(p.width - p.y() > hole / 2.0))
        in.refuse({"edge_width", "The holes run off the plate.", ""});
    return p;
}

void hold_rules(Made& made, const Plate& p) {
    hold_edge(made, p.bolt, "hole to the end of the plate", p.x());
    hold_edge(made, p.bolt, "hole to the long edge", p.y());
    hold_edge_greatest(made, p.bolt, p.thickness, "hole to the end of the plate, at most", p.x());
    if (p.columns > 1)
        hold_spacing(made, p.bolt, "holes apart along the plate", p.column_pitch());
    if (p.rows > 1)
        hold_spacing(made, p.bolt, "holes apart across the plate", p.row_pitch());
    if (p.post.width == Length{})
        return;
    // Nearest hole edge to the post's side, along the plate: a socket has to find room there.
    const Length across = p.post.shape == section::Shape::angle ? p.post.height : p.post.width;
    const Length clear = p.length / 2.0 - p.x() - p.bolt.hole.width / 2.0 - across / 2.0;
    hold(made.rules,
         {"hole-to-post",
          p.bolt.bolt.diameter,
          false,
          false,
          "common-practice-layout",
          base::Evidence::common_practice,
          "One bolt diameter between hole and post for nut and weld; try the socket."},
         "hole's edge to the post",
         clear);
}

void draw(Made& made, const Plate& p, const std::string& mark) {
    Elevation& out = made.elevation;
    out.outlines.push_back(marked(box({}, p.length, p.width), mark + "-BP"));
    if (p.post.width > Length{}) {
        const Length high = p.post.height > Length{} ? p.post.height : p.post.width;
        const Spot low{(p.length - p.post.width) / 2.0, (p.width - high) / 2.0};
        if (p.post.shape == section::Shape::pipe || p.post.shape == section::Shape::round)
            out.rounds.push_back({{p.length / 2.0, p.width / 2.0}, p.post.width / 2.0, false});
        else
            out.outlines.push_back(box(low, p.post.width, high, 0.0, Shade::bar));
    }
    for (const job::HoleCentre& at :
         job::centres({p.x(), p.y(), p.columns, p.rows, p.column_pitch(), p.row_pitch()}))
        out.rounds.push_back({{at.x, at.y}, p.bolt.hole.width / 2.0, true});
    const Length off = p.width / 8.0;
    out.spans = {{{Length{}, -off}, {p.length, -off}, ""}, {{-off, Length{}}, {-off, p.width}, ""}};
    if (p.columns > 1)
        out.spans.push_back({{p.x(), p.width + off}, {p.length - p.x(), p.width + off}, ""});
    out.description = "Base plate with " + std::to_string(p.columns * p.rows) + " holes.";
}

Result<Made> make_base_plate(Inputs& in, const std::string& mark) {
    const Plate p = read(in);
    if (in.failed())
        return in.refusal();
    Made made;
    const Piece piece{"plate", "BP", "base plate"};
    const Section section{section::Shape::plate, p.width, {}, p.thickness, {}, {}, ""};
    job::Part part = straight_part(piece, mark, p.grade, section, p.length, p.count);
    cut_ends(part);
    part.operations.emplace_back(job::Cut{job::CutSide::width, {}, {}});
    part.operations.emplace_back(
        round_holes(p.bolt, {p.x(), p.y(), p.columns, p.rows, p.column_pitch(), p.row_pitch()}));
    add(made, piece, std::move(part));
    show_hole(made, p.bolt);
    if (p.columns > 1)
        made.figures.push_back({"holes apart, along", p.column_pitch()});
    if (p.rows > 1)
        made.figures.push_back({"holes apart, across", p.row_pitch()});
    hold_rules(made, p);
    made.cautions = {
        k_code_governs,
        "Anchors in concrete have edge distances of their own; their maker's tables decide."};
    draw(made, p, mark);
    return made;
}

} // namespace

const Kind k_base_plate{
    "base-plate",
    "Base plate",
    "A plate with bolts in rows, edge distances and spacing held against the rules.",
    k_inputs,
    make_base_plate};

} // namespace treadle::assembly
