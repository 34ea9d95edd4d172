// Private to the room: the pieces that worksheet_html is put together from.

#pragma once

#include "sheet/html.h"
#include "sheet/worksheet.h"

namespace treadle::sheet {

struct SheetInputs {
    const plan::Plan& plan;
    const job::Job& job;
    const equipment::Shop& shop;
    const job::Catalog& catalog;
    const SheetOptions& options;
};

void write_summary(Html& html, const SheetInputs& in);
void write_set_ups(Html& html, const SheetInputs& in);
void write_parts(Html& html, const SheetInputs& in);
void write_not_made(Html& html, const SheetInputs& in);
void write_shopping(Html& html, const SheetInputs& in);
void write_workings(Html& html, const SheetInputs& in);

/// A shape and a word: never by colour alone.
void write_verdict(Html& html, plan::Outcome outcome, const std::string& words);

} // namespace treadle::sheet
