// Private to the room: a picture at full size, and its pages.

#pragma once

#include "sheet/drafting.h"
#include "sheet/html.h"
#include "sheet/template.h"

#include <string>
#include <vector>

namespace treadle::sheet {

enum class FullPen { edge, thin, dashed };
struct FullPath {
    std::vector<Spot> points; ///< straight from one to the next
    bool closed = false;
    FullPen pen = FullPen::edge;
    const char* name = ""; ///< class in the SVG, so that a test finds it
};
struct FullCircle {
    Spot centre;
    double radius = 0.0;
    const char* name = "";
};
struct FullText {
    Spot at;
    std::string text;
    Anchor anchor = Anchor::start;
    double size = 3.2; ///< millimetres; 3.175 is 9 pt
    bool bold = false;
    Spot beside{};        ///< from there, on the page, however the picture lies
    bool upright = false; ///< read from the right
};

/// Millimetres, y up, as large as the piece itself.
struct FullPicture {
    std::string key;
    std::string title;
    std::vector<std::string> notes; ///< three lines at most, at the head of each page
    std::vector<FullPath> paths;
    std::vector<FullCircle> circles;
    std::vector<FullText> texts;
    double width = 0.0; ///< from 0, 0
    double height = 0.0;
    std::string refusal; ///< in place of a picture
};

/// How a picture is laid over pages.
struct Tiling {
    bool turned = false; ///< a quarter, where that takes fewer pages
    int columns = 1;
    int rows = 1;
    double step_x = 0.0; ///< from one page's picture to the next one's
    double step_y = 0.0;
    double area_x = 0.0; ///< what one page shows
    double area_y = 0.0;
    [[nodiscard]] int pages() const { return columns * rows; }
};
[[nodiscard]] Tiling tiling_of(const FullPicture& picture, const TemplateOptions& options);

/// All pages of a picture, numbered on from `first` of `all`.
void write_pages(Html& html,
                 const FullPicture& picture,
                 const TemplateOptions& options,
                 const std::string& job_name,
                 int first,
                 int all);

// The pictures of a part.
[[nodiscard]] std::vector<FullPicture> hole_pictures(const plan::PartPlan& part, PrintStyle style);
[[nodiscard]] FullPicture wrap_picture(const SaddleWrap& wrap, PrintStyle style, Length paper);
[[nodiscard]] FullPicture
gauge_picture(const plan::PartPlan& part, int operation, PrintStyle style);

} // namespace treadle::sheet
