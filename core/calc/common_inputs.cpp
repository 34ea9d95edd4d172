#include "calc/common_inputs.h"

#include "calc/reader.h"
#include "process/input_check.h"

namespace treadle::calc {

geometry::HoleOutline read_hole(Reader& in) {
    geometry::HoleOutline out;
    const int shape = in.choice("shape");
    if (shape < 0)
        return out;
    out.shape = static_cast<geometry::HoleShape>(shape);
    out.size = in.length("size");
    const bool two =
        out.shape == geometry::HoleShape::rectangle || out.shape == geometry::HoleShape::obround;
    if (two)
        in.require("size2");
    else
        in.refuse_if_given("size2", "This shape has one size only.");
    out.size2 = in.length("size2");
    process::InputCheck check; // beside the outline's own checks, which know one edge as a whole
    check.length(out.size, "size");
    if (two)
        check.length(out.size2, "size2");
    if (check.failed())
        in.refuse(check.refusal());
    return out;
}

} // namespace treadle::calc
