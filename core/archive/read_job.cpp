#include "archive/archive.h"
#include "archive/readers.h"

#include <algorithm>
#include <iterator>
#include <memory>
#include <utility>

namespace treadle::archive {

// Not in the unnamed namespace: Members finds it by its argument, and such a look-up does not see
// into one.
static void read_value(const Place& at, job::HolePattern& out) {
    Members members(at);
    members.need("x", out.x).need("y", out.y);
    members.may("columns", out.columns).may("rows", out.rows);
    members.may("column_pitch", out.column_pitch).may("row_pitch", out.row_pitch);
    members.finish();
}

static void read_value(const Place& at, job::LayoutValue& out) {
    Members members(at);
    members.need("name", out.name).need("text", out.text);
    members.finish();
}

static void read_value(const Place& at, job::MadePart& out) {
    Members members(at);
    members.need("role", out.role).may("part", out.part).may("detached", out.detached);
    members.finish();
}

static void read_value(const Place& at, job::Layout& out) {
    Members members(at);
    members.need("id", out.id).need("kind", out.kind).need("mark", out.mark);
    members.may("values", out.values).may("made", out.made);
    members.finish();
}

namespace {

using base::Refusal;

job::Cut read_cut(Members& members) {
    job::Cut cut;
    members.may("side", cut.side);
    members.may("start_mitre", cut.start_mitre).may("finish_mitre", cut.finish_mitre);
    return cut;
}

job::Punch read_punch(Members& members) {
    job::Punch punch;
    members.need("hole", punch.hole).may("turned", punch.turned).need("at", punch.at);
    members.may("face", punch.face).may("leg", punch.leg);
    return punch;
}

job::Notch read_notch(Members& members) {
    job::Notch notch;
    members.need("shape", notch.shape).need("edge", notch.edge);
    members.may("at", notch.at).may("along", notch.along).need("depth", notch.depth);
    members.may("included", notch.included).may("face", notch.face);
    return notch;
}

job::Bend read_bend(Members& members) {
    job::Bend bend;
    auto direction = Direction::up;
    members.need("angle", bend.angle).may("radius", bend.radius).may("direction", direction);
    bend.up = direction == Direction::up;
    return bend;
}

job::Saddle read_saddle(Members& members) {
    job::Saddle saddle;
    members.may("end", saddle.end).need("run_diameter", saddle.run_diameter);
    return saddle;
}

job::Operation read_operation(Members& members, Doing doing) {
    switch (doing) {
    case Doing::cut:
        return read_cut(members);
    case Doing::punch:
        return read_punch(members);
    case Doing::notch:
        return read_notch(members);
    case Doing::bend:
        return read_bend(members);
    case Doing::saddle:
        return read_saddle(members);
    }
    return job::Cut{};
}

void read_contents(Members& members, File& out) {
    read_header(members, out.job);
    members.need("parts", out.job.parts).may("shop", out.shop);
    members.finish();
}

/// Version 2: layouts beside the parts.
void read_with_layouts(Members& members, File& out) {
    read_layouts(members, out.job);
    read_contents(members, out);
}

/// Readers by the first version that they read. A version that says anything otherwise keeps these
/// and adds its own below: a file is read by the last reader that is not newer than it, into
/// today's values, and written as today's version.
struct VersionReader {
    int from;
    void (*read)(Members& members, File& out);
};
constexpr VersionReader k_readers[] = {{k_oldest_version, read_contents}, {2, read_with_layouts}};

void read_versioned(const Place& root, File& out) {
    Members members(root);
    std::string format;
    int version = 0;
    members.need("format", format);
    if (!root.failed() && format != "treadle-job")
        root.refuse("This is not a job of Treadle.", "\"treadle-job\"", "format");
    members.need("version", version);
    if (root.failed())
        return;
    const auto newer =
        std::find_if(std::begin(k_readers), std::end(k_readers), [&](const VersionReader& reader) {
            return reader.from > version;
        });
    if (version <= k_format_version && newer != std::begin(k_readers))
        return std::prev(newer)->read(members, out);
    if (version > k_format_version)
        root.refuse(
            "This file was made by a newer Treadle; it was not read and nothing was changed.",
            "this one reads up to version " + std::to_string(k_format_version),
            "version");
    else
        root.refuse("There was never such a version of the format.", "", "version");
}

/// The job names its fields as its types do; a few are named otherwise in a file.
Refusal named_as_in_file(Refusal refusal) {
    constexpr std::pair<std::string_view, std::string_view> k_names[] = {
        {"own_grades[", "grades["},
        {"style.denominator", "denominator"},
        {"hole.size2", "hole.length"},
    };
    for (const auto& [inside, in_file] : k_names)
        if (const std::size_t at = refusal.field.find(inside); at != std::string::npos)
            refusal.field.replace(at, inside.size(), in_file);
    return refusal;
}

} // namespace

void read_header(Members& members, job::Job& out) {
    members.need("units", out.style.system).may("denominator", out.style.denominator);
    members.may("name", out.name).may("note", out.note).may("due", out.due);
    members.may("invented", out.invented).may("tolerance", out.tolerance);
    members.may("grades", out.own_grades);
}

void read_layouts(Members& members, job::Job& out) { members.may("layouts", out.layouts); }

void read_value(const Place& at, job::Operation& out) {
    Members members(at);
    auto doing = Doing::cut;
    members.need("do", doing);
    if (at.failed())
        return;
    out = read_operation(members, doing);
    members.finish();
}

void read_value(const Place& at, job::Part& out) {
    Members members(at);
    members.need("id", out.id).need("mark", out.mark).may("note", out.note);
    members.need("grade", out.grade).need("section", out.section);
    members.may("length", out.length).may("legs", out.legs).may("count", out.count);
    members.may("grain", out.grain).may("certified_tensile", out.certified_tensile);
    members.may("operations", out.operations);
    members.finish();
}

void read_value(const Place& at, job::PartRef& out) {
    // Checked with the whole job, once.
    auto part = std::make_shared<job::Part>();
    read_value(at, *part);
    out = std::move(part);
}

base::Result<File> read_file(std::string_view bytes) {
    const base::Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    File file;
    read_versioned(Place(reading, 0), file);
    if (reading.refusal)
        return std::move(*reading.refusal);
    auto job = job::checked(std::move(file.job));
    if (!job.ok())
        return named_as_in_file(job.refusal());
    file.job = std::move(job).value();
    return file;
}

} // namespace treadle::archive
