// Pages at full size: holes to lay on a plate, wraps for a saddle, gauges for a bend.
//
// A picture larger than the paper goes over several pages with an overlap and marks that register
// them. Every page carries bars to measure in both directions, because a printer that shrinks does
// so without a word; figures stand beside every line, so that the paper is never the only source.
//
// Symbols   f  factor: wanted length over the length that a printer made of it
// Valid     f from 0.90 to 1.10; a picture of at most 60 pages
// Source    geometry: the plan's places, layout/saddle.h; the bars are common practice, no source
// Rounding  coordinates to 0.001 mm

#pragma once

#include "sheet/worksheet.h"

#include <string>
#include <vector>

#include "layout/saddle.h"

namespace treadle::sheet {

inline constexpr int k_most_template_pages = 60;

/// What measuring a printer's bars has shown.
struct PrinterFactors {
    std::string printer; ///< as its owner calls it
    double x = 1.0;
    double y = 1.0;
};
[[nodiscard]] bool is_print_factor(double value);
/// Factor from a bar as printed; refuses what no sound printer does.
[[nodiscard]] base::Result<double>
print_factor(Length wanted, Length measured, const char* field = "measured");

struct TemplateOptions {
    Paper paper = Paper::letter;
    SheetUnits units = SheetUnits::as_job;
    PrinterFactors factors = {};
    Length wrap_paper = millimetres(0.1); ///< thickness: a wrap lies on the pipe's outside
    std::string style_address = {};
    std::string date = {};
    std::string program = {};
    std::string code = {};
};

/// A joint that a layout wants a wrap for.
struct SaddleWrap {
    std::string key; ///< "wrap/layout-1/rail"
    std::string mark;
    layout::SaddleJoint joint;
};

/// Those of the job's layouts, made again from their values.
[[nodiscard]] std::vector<SaddleWrap> layout_wraps(const job::Job& job,
                                                   const job::Catalog& catalog);

/// A template that can be printed for this job.
struct TemplateInfo {
    std::string key;   ///< "holes/p1", "wrap/p4/0", "gauge/p2/3"
    std::string title; ///< "BP1: holes of the plate"
    int pages = 0;
    std::string refusal; ///< why not, in place of pages
};
struct TemplateInputs {
    const plan::Plan& plan;
    const job::Job& job;
    std::vector<SaddleWrap> wraps;
    const TemplateOptions& options;
};
[[nodiscard]] std::vector<TemplateInfo> template_list(const TemplateInputs& in);

/// The templates with these keys, in the order of the list. Refuses "key" that is none of them or
/// has no pages, "factor" outside its range.
[[nodiscard]] base::Result<std::string> templates_html(const TemplateInputs& in,
                                                       const std::vector<std::string>& keys);

} // namespace treadle::sheet
