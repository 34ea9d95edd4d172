// Layouts on paper: each with its elevation, the rules it was held against, and its cautions.

#include "base/text.h"
#include "sheet/drawing_layout.h"
#include "sheet/worksheet_parts.h"

#include "assembly/kind.h"
#include "assembly/words.h"

namespace treadle::sheet {

namespace {

constexpr PictureBox k_box{170.0, 80.0};

plan::Outcome outcome_of(assembly::Held held) {
    switch (held) {
    case assembly::Held::meets:
        return plan::Outcome::fits;
    case assembly::Held::at_limit:
        return plan::Outcome::fits_up_to;
    case assembly::Held::breaks:
        break;
    }
    return plan::Outcome::does_not_fit;
}

std::string source_of(const SheetInputs& in, const std::string& key) {
    const std::string title = in.options.source_title ? in.options.source_title(key) : "";
    return title.empty() ? key : title;
}

void write_rules(Html& html, const SheetInputs& in, const assembly::Made& made) {
    html.open("ul");
    for (const assembly::RuleLine& line : made.rules) {
        html.open("li");
        write_verdict(html,
                      outcome_of(line.held),
                      base::capital(assembly::rule_words(line, in.style)) + ": " +
                          assembly::answer_words(line) + ".");
        html.text(source_of(in, line.source) + " (" + base::evidence_words(line.evidence) + "). " +
                  line.remark);
        html.close();
    }
    for (const assembly::Figure& figure : made.figures)
        html.element("li",
                     base::capital(figure.words) + ": " + assembly::figure_words(figure, in.style));
    for (const assembly::Marks& marks : made.marks)
        html.element("li", base::capital(assembly::marks_words(marks, in.style)));
    for (const assembly::WrapTemplate& wrap : made.templates)
        html.element("li", assembly::template_words(wrap, in.style));
    for (const std::string& caution : made.cautions)
        html.element("li", caution);
    html.close();
}

/// Parts that were changed by hand are not as the layout has them: said by their marks.
std::string by_hand(const job::Job& job, const job::Layout& layout) {
    std::string marks;
    for (const job::MadePart& made : layout.made)
        for (const job::PartRef& part : job.parts)
            if (made.detached && part->id == made.part)
                marks += (marks.empty() ? "" : ", ") + part->mark;
    return marks;
}

void write_layout(Html& html, const SheetInputs& in, const job::Layout& layout) {
    const assembly::Kind* kind = assembly::find_kind(layout.kind);
    html.open("section", "class=\"part\"");
    html.element("h3", layout.mark + "  " + (kind != nullptr ? kind->title : layout.kind));
    const auto made = assembly::make(layout.kind,
                                     layout.mark,
                                     layout.values,
                                     {in.catalog, in.job.own_grades, in.job.style.system});
    if (!made.ok()) {
        html.element(
            "p", "It cannot be made again: " + made.refusal().field + ": " + made.refusal().reason);
    } else {
        html.markup(to_svg(draw_layout(made->elevation, quantity::one_system(in.style), k_box),
                           k_box.width_mm,
                           k_box.height_mm));
        write_rules(html, in, *made);
    }
    if (const std::string marks = by_hand(in.job, layout); !marks.empty())
        html.element("p", "Changed by hand, no longer as drawn here: " + marks);
    html.close();
}

} // namespace

void write_layouts(Html& html, const SheetInputs& in) {
    if (in.job.layouts.empty())
        return;
    html.open("section", "class=\"parts\"").element("h2", "Layouts");
    for (const job::Layout& layout : in.job.layouts)
        write_layout(html, in, layout);
    html.close();
}

} // namespace treadle::sheet
