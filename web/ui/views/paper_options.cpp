#include "ui/views/paper_options.h"

namespace treadle::views {

sheet::SheetKinds sheet_kinds(const PaperWishes& wishes) {
    sheet::SheetKinds kinds;
    kinds.summary = wants(wishes, SheetKind::summary);
    kinds.tools = wants(wishes, SheetKind::tools);
    kinds.set_ups = wants(wishes, SheetKind::set_ups);
    kinds.cutting = wants(wishes, SheetKind::cutting);
    kinds.parts = wants(wishes, SheetKind::parts);
    kinds.workings = wants(wishes, SheetKind::workings);
    return kinds;
}

sheet::Paper paper_of(const PaperWishes& wishes) {
    return wishes.letter ? sheet::Paper::letter : sheet::Paper::a4;
}

sheet::SheetUnits units_of(const PaperWishes& wishes) {
    return static_cast<sheet::SheetUnits>(wishes.units);
}

sheet::TemplateOptions template_options(const PaperWishes& wishes) {
    sheet::TemplateOptions options;
    options.paper = paper_of(wishes);
    options.units = units_of(wishes);
    if (wishes.printer >= 0 && wishes.printer < static_cast<int>(wishes.printers.size())) {
        const MeasuredPrinter& printer = wishes.printers[static_cast<std::size_t>(wishes.printer)];
        options.factors = {printer.name, printer.x, printer.y};
    }
    return options;
}

} // namespace treadle::views
