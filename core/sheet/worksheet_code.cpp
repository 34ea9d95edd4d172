// The way from the paper back to the screen.

#include "sheet/qr.h"
#include "sheet/worksheet_parts.h"

namespace treadle::sheet {

void write_code(Html& html, const SheetInputs& in) {
    if (in.options.link_page.empty())
        return;
    const auto code = in.options.link.empty() ? std::nullopt : qr_code(in.options.link);
    if (!code) {
        html.element("p",
                     "This job is too long for a code to scan; keep its file with this sheet.",
                     "class=\"small\"");
        return;
    }
    html.open("figure", "class=\"code\"");
    html.markup(qr_svg(*code, "QR code that opens this job"));
    html.open("figcaption").text("Scan to open this job at " + in.options.link_page).close();
    html.close();
}

} // namespace treadle::sheet
