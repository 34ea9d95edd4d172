// Remedies that ask for other stock or leave work to other tools.

#include "base/stable_sort.h"
#include "plan/checks.h"
#include "plan/remedy_changes.h"
#include "plan/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace treadle::plan {

namespace {

using quantity::print;
using section::Shape;

// Thicknesses and bar sizes that a yard keeps: common practice, no source.
constexpr std::array k_inch_sizes{
    2.0, 1.75, 1.5, 1.25, 1.0, 0.875, 0.75, 0.625, 0.5, 0.375, 0.3125, 0.25, 0.1875, 0.125};
constexpr std::array k_metric_sizes{
    50.0, 40.0, 35.0, 30.0, 25.0, 20.0, 16.0, 15.0, 12.0, 10.0, 8.0, 6.0, 5.0, 4.0, 3.0};

std::string length_words(Length value, PrintStyle style) {
    return print(value, {style.system, 64, style.both}, Rounding::nearest);
}

std::vector<Length> usual_sizes(UnitSystem system) {
    std::vector<Length> sizes;
    if (system == UnitSystem::inch)
        for (const double size : k_inch_sizes)
            sizes.push_back(inches(size));
    else
        for (const double size : k_metric_sizes)
            sizes.push_back(millimetres(size));
    return sizes;
}

/// The size that makes a section of this shape lighter to cut: thickness, or a bar's own size.
Length governing(const Section& section) {
    const bool bar = section.shape == Shape::round || section.shape == Shape::square;
    return bar ? section.width : section.thickness;
}

/// Lighter stock of the same kind, the nearest first. Plates, flats and bars in usual sizes; rolled
/// shapes and tube only as the catalogue has them, with the outside as it is.
std::vector<Section> lighter(const Trouble& trouble) {
    const Section& now = trouble.part().section;
    std::vector<Section> found;
    switch (now.shape) {
    case Shape::flat:
    case Shape::plate:
    case Shape::round:
    case Shape::square:
        for (const Length size : usual_sizes(trouble.job.style.system)) {
            Section next = now;
            next.designation.clear();
            const bool bar = now.shape == Shape::round || now.shape == Shape::square;
            (bar ? next.width : next.thickness) = size;
            if (size < governing(now))
                found.push_back(next);
        }
        break;
    case Shape::angle:
    case Shape::pipe:
    case Shape::square_tube:
        for (const section::CatalogSection& row : trouble.catalog.sections.rows)
            if (row.section.shape == now.shape && row.section.width == now.width &&
                row.section.height == now.height && row.section.thickness < now.thickness)
                found.push_back(row.section);
        break;
    case Shape::channel: // a lighter web comes with another flange
        break;
    }
    base::stable_sort(
        found, [](const Section& a, const Section& b) { return governing(a) > governing(b); });
    return found;
}

bool is_hollow(Shape shape) { return shape == Shape::pipe || shape == Shape::square_tube; }

/// Steel of the part's own world: tube grades are not rolled as plate, and a yard that sells by
/// inch lists does not keep EN grades. Other families are listed under both.
bool is_sold_as(const Grade& grade, const job::Part& part, UnitSystem system) {
    const auto has = [&](const char* word) {
        return grade.standard.find(word) != std::string::npos;
    };
    if (grade.family != material::Family::carbon_steel || grade.standard.empty())
        return true;
    if ((has("A500") || has("A53")) != is_hollow(part.section.shape))
        return false;
    return system == UnitSystem::inch ? has("ASTM") || has("SAE") : has("EN ");
}

struct Candidate {
    const Grade* grade;
    Stress upper;
};

std::vector<Candidate> weaker(const Trouble& trouble, const Grade& now) {
    const job::Part& part = trouble.part();
    const Length thickness = section::governing_thickness(part.section);
    const auto own = material::upper_tensile(now, thickness);
    const bool refused = now.refusal.cutting || now.refusal.bending;
    std::vector<Candidate> found;
    for (const auto* rows : {&trouble.job.own_grades, &trouble.catalog.grades.rows}) {
        for (const Grade& grade : *rows) {
            const auto upper = material::upper_tensile(grade, thickness);
            if (!upper || grade.family != now.family || grade.id == now.id ||
                job::find_grade(trouble.job, trouble.catalog, grade.id) != &grade ||
                !is_sold_as(grade, part, trouble.job.style.system))
                continue;
            if (refused || (own && upper->value < own->value))
                found.push_back({&grade, upper->value});
        }
    }
    // Instead of refused metal the catalogue's first, commonest one; else the nearest in strength.
    if (!refused)
        base::stable_sort(found, [](const auto& a, const auto& b) { return a.upper > b.upper; });
    return found;
}

std::string mitre_words(const job::Cut& cut, PrintStyle style) {
    std::string words;
    if (cut.start_mitre != Angle{})
        words += print(cut.start_mitre, style) + " at the start";
    if (cut.finish_mitre != Angle{})
        words += (words.empty() ? "" : ", ") + print(cut.finish_mitre, style) + " at the finish";
    return words;
}

/// Where the holes are, in the words of the part's own dimensions.
std::string place_words(const job::Punch& punch, const job::Part& part, PrintStyle style) {
    const job::HolePattern& at = punch.at;
    std::string words = " at " + length_words(at.x, style) + " along, " +
                        length_words(at.y, style) + " from the edge";
    if (punch.face != section::Face::flat)
        words += std::string(" in ") + section::face_word(punch.face);
    if (!part.legs.empty())
        words += ", leg " + std::to_string(punch.leg + 1);
    if (at.columns > 1)
        words += ", " + std::to_string(at.columns) + " along every " +
                 length_words(at.column_pitch, style);
    if (at.rows > 1)
        words +=
            ", " + std::to_string(at.rows) + " across every " + length_words(at.row_pitch, style);
    return words;
}

/// What another tool does instead, as the note on the part says it; empty when no common one does.
struct Instead {
    std::string words;
    std::string note;
};

Instead instead_of(const job::Part& part, std::size_t operation, PrintStyle style) {
    const job::Operation& op = part.operations[operation];
    if (const auto* punch = std::get_if<job::Punch>(&op)) {
        const std::string hole = hole_words(punch->hole, style);
        if (punch->hole.shape != geometry::HoleShape::round)
            return {};
        return {"Drill it: " + hole, "Drill " + hole + place_words(*punch, part, style)};
    }
    if (const auto* cut = std::get_if<job::Cut>(&op)) {
        if (cut->side == job::CutSide::width)
            return {"Saw it to width",
                    "Saw to " + length_words(part.section.width, style) + " wide"};
        const std::string mitre = mitre_words(*cut, style);
        const std::string length =
            part.legs.empty() ? length_words(part.length, style) : std::string("blank length");
        return {"Saw it to length", "Saw to " + length + (mitre.empty() ? "" : ", mitre " + mitre)};
    }
    if (std::holds_alternative<job::Notch>(op)) {
        const std::string title = operation_title(part, operation, style);
        return {"Saw it out: " + title, "Saw out: " + title};
    }
    return {};
}

} // namespace

void try_square_cut(const Trouble& trouble, const Offer& offer) {
    const auto* cut = std::get_if<job::Cut>(&trouble.part().operations[trouble.operation]);
    if (cut == nullptr || (cut->start_mitre == Angle{} && cut->finish_mitre == Angle{}))
        return;
    Change change{Remedy::Kind::square_cut, 0, "Cut square, saw the mitre", trouble.part()};
    auto& square = std::get<job::Cut>(change.part.operations[trouble.operation]);
    square.start_mitre = square.finish_mitre = Angle{};
    add_note(change.part, "Saw the mitre: " + mitre_words(*cut, trouble.job.style));
    (void)offer(std::move(change));
}

void try_thinner(const Trouble& trouble, const Offer& offer) {
    const PrintStyle style = trouble.job.style;
    for (const Section& section : lighter(trouble)) {
        Change change{Remedy::Kind::thickness, 0, "", trouble.part()};
        change.part.section = section;
        change.part.certified_tensile = Stress{}; // the certificate was another piece's
        change.words = "Use " + section_title(section, style) + " instead of " +
                       section_title(trouble.part().section, style);
        if (offer(std::move(change)))
            return;
    }
}

void try_grades(const Trouble& trouble, const Offer& offer) {
    const Grade* now = job::find_grade(trouble.job, trouble.catalog, trouble.part().grade);
    if (now == nullptr)
        return;
    for (const Candidate& candidate : weaker(trouble, *now)) {
        Change change{Remedy::Kind::grade, 0, "", trouble.part()};
        change.part.grade = candidate.grade->id;
        change.part.certified_tensile = Stress{};
        change.words = "Make it of " + candidate.grade->name + " instead of " + now->name;
        if (offer(std::move(change)))
            return;
    }
}

void try_elsewhere(const Trouble& trouble, const Offer& offer) {
    const job::Part& part = trouble.part();
    // A hole off the metal, in another hole or there twice is wrong whatever makes it.
    for (const Check& check : trouble.planned().checks)
        if (!check.warning && (check.rule == Rule::on_metal || check.rule == Rule::hole_web ||
                               check.rule == Rule::cut_web || check.rule == Rule::doubled_stroke))
            return;
    const Instead instead = instead_of(part, trouble.operation, trouble.job.style);
    if (instead.words.empty())
        return;
    Change change{Remedy::Kind::elsewhere, 0, instead.words, part};
    change.part.operations.erase(change.part.operations.begin() +
                                 static_cast<std::ptrdiff_t>(trouble.operation));
    add_note(change.part, instead.note);
    (void)offer(std::move(change));
}

} // namespace treadle::plan
