// A check whose answer nobody looks at is no check.
#include "geometry/hole.h"

void look(const treadle::geometry::HoleOutline& hole) {
#ifdef MISTAKE
    treadle::geometry::checked(hole);
#else
    (void)treadle::geometry::checked(hole);
#endif
}
