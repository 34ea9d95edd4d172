#include "base/formula_card.h"

namespace treadle::base {

const char* evidence_words(Evidence evidence) {
    switch (evidence) {
    case Evidence::published:
        return "published";
    case Evidence::common_practice:
        return "common practice, no source";
    case Evidence::from_memory:
        return "from memory";
    case Evidence::derived:
        return "derived from mechanics or geometry";
    case Evidence::invented:
        return "invented";
    }
    return "";
}

} // namespace treadle::base
