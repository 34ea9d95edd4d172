#include "sheet/template.h"

#include "base/text.h"
#include "sheet/template_page.h"

#include <algorithm>

#include "assembly/kind.h"

namespace treadle::sheet {

namespace {

constexpr double k_least_factor = 0.90;
constexpr double k_most_factor = 1.10;

SaddleWrap wrap_of(const job::Part& part, int operation) {
    const auto& saddle =
        std::get<job::Saddle>(part.operations[static_cast<std::size_t>(operation)]);
    SaddleWrap wrap;
    wrap.key = "wrap/" + part.id + "/" + std::to_string(operation);
    wrap.mark = part.mark + ", " + std::to_string(operation + 1);
    wrap.joint.branch_od = part.section.width;
    wrap.joint.branch_wall = part.section.thickness;
    wrap.joint.run_od = saddle.run_diameter;
    return wrap;
}

/// One pair of cards does for all bends of a part to the same angle.
bool is_first_of_its_angle(const job::Part& part, int operation) {
    const auto* bend =
        std::get_if<job::Bend>(&part.operations[static_cast<std::size_t>(operation)]);
    if (bend == nullptr)
        return false;
    return std::none_of(part.operations.begin(),
                        part.operations.begin() + operation,
                        [&](const job::Operation& other) {
                            const auto* before = std::get_if<job::Bend>(&other);
                            return before != nullptr && before->angle == bend->angle;
                        });
}

void add_operations(std::vector<FullPicture>& list,
                    const plan::PartPlan& part,
                    PrintStyle style,
                    Length paper) {
    for (std::size_t i = 0; i < part.part->operations.size(); ++i) {
        const job::Operation& operation = part.part->operations[i];
        const int index = static_cast<int>(i);
        if (std::holds_alternative<job::Saddle>(operation))
            list.push_back(wrap_picture(wrap_of(*part.part, index), style, paper));
        else if (is_first_of_its_angle(*part.part, index))
            list.push_back(gauge_picture(part, index, style));
    }
}

std::vector<FullPicture> pictures_of(const TemplateInputs& in) {
    const PrintStyle style = sheet_style(in.job.style, in.options.units);
    std::vector<FullPicture> list;
    for (const auto& part : in.plan.parts) {
        for (FullPicture& picture : hole_pictures(*part, style))
            list.push_back(std::move(picture));
        add_operations(list, *part, style, in.options.wrap_paper);
    }
    for (const SaddleWrap& wrap : in.wraps)
        list.push_back(wrap_picture(wrap, style, in.options.wrap_paper));
    for (FullPicture& picture : list) {
        if (!picture.refusal.empty())
            continue;
        const int pages = tiling_of(picture, in.options).pages();
        if (pages > k_most_template_pages)
            picture.refusal = "It would take more than " + std::to_string(k_most_template_pages) +
                              " pages: set it out by its running dimensions.";
    }
    return list;
}

void write_head(Html& html, const TemplateOptions& options, const std::string& job_name) {
    html.open("head");
    html.empty("meta", "charset=\"utf-8\"");
    html.title("Templates: " + job_name);
    if (options.style_address.empty())
        html.open("style").markup(worksheet_style()).close();
    else
        html.empty("link",
                   "rel=\"stylesheet\" href=\"" + base::escape_markup(options.style_address) +
                       "\"");
    html.close();
}

} // namespace

bool is_print_factor(double value) { return value >= k_least_factor && value <= k_most_factor; }

base::Result<double> print_factor(Length wanted, Length measured, const char* field) {
    if (!(measured > Length{}) || !(wanted > Length{}))
        return base::Refusal{field, "A bar has a length.", "100 mm, 4 in"};
    const double factor = quantity::to_millimetres(wanted) / quantity::to_millimetres(measured);
    if (!is_print_factor(factor))
        return base::Refusal{field,
                             "No sound printer is off by more than a tenth: look at its setting "
                             "for 100 %, actual size, first.",
                             "between 91 and 111 mm for a bar of 100 mm"};
    return factor;
}

std::vector<SaddleWrap> layout_wraps(const job::Job& job, const job::Catalog& catalog) {
    std::vector<SaddleWrap> wraps;
    for (const job::Layout& layout : job.layouts) {
        const auto made = assembly::make(
            layout.kind, layout.mark, layout.values, {catalog, job.own_grades, job.style.system});
        if (!made.ok())
            continue; // the layout itself says why
        int number = 0;
        for (const assembly::WrapTemplate& wrap : made->templates)
            wraps.push_back({"wrap/" + layout.id + "/" + std::to_string(number++),
                             wrap.mark + ", " + wrap.end,
                             wrap.joint});
    }
    return wraps;
}

std::vector<TemplateInfo> template_list(const TemplateInputs& in) {
    std::vector<TemplateInfo> list;
    for (FullPicture& picture : pictures_of(in)) {
        const int pages = picture.refusal.empty() ? tiling_of(picture, in.options).pages() : 0;
        list.push_back(
            {std::move(picture.key), std::move(picture.title), pages, std::move(picture.refusal)});
    }
    return list;
}

base::Result<std::string> templates_html(const TemplateInputs& in,
                                         const std::vector<std::string>& keys) {
    if (!is_print_factor(in.options.factors.x) || !is_print_factor(in.options.factors.y))
        return base::Refusal{"factor", "A factor lies between 0.90 and 1.10.", ""};
    std::vector<FullPicture> chosen;
    int all = 0;
    std::vector<FullPicture> pictures = pictures_of(in);
    for (const std::string& key : keys) {
        const auto found = std::find_if(pictures.begin(),
                                        pictures.end(),
                                        [&](const FullPicture& one) { return one.key == key; });
        if (found == pictures.end())
            return base::Refusal{"key", "This job has no such template.", key};
        if (!found->refusal.empty())
            return base::Refusal{"key", found->refusal, found->title};
    }
    for (FullPicture& picture : pictures)
        if (std::find(keys.begin(), keys.end(), picture.key) != keys.end()) {
            all += tiling_of(picture, in.options).pages();
            chosen.push_back(std::move(picture));
        }
    if (chosen.empty())
        return base::Refusal{"key", "No template was chosen.", ""};
    Html html;
    html.markup("<!DOCTYPE html>\n").open("html", "lang=\"en\"");
    write_head(html, in.options, in.job.name);
    html.open("body",
              in.options.paper == Paper::letter ? "class=\"full full-letter\""
                                                : "class=\"full full-a4\"");
    int page = 1;
    for (const FullPicture& picture : chosen) {
        write_pages(html, picture, in.options, in.job.name, page, all);
        page += tiling_of(picture, in.options).pages();
    }
    html.close().close();
    return html.take();
}

} // namespace treadle::sheet
