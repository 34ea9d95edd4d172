#include "about.h"

namespace treadle::web {

std::vector<std::string> about_lines() {
    return {
        "Treadle plans the work of a compact hydraulic ironworker: punch, shear, notch, bend, and "
        "what of it this machine can do with this tooling.",
        "Everything is worked out on this device. Nothing is sent anywhere, and the job is kept in "
        "this browser only: save the file under Sheets to keep it elsewhere.",
        "Grades and sections come from the published standards that each working names; where a "
        "figure is common practice or from memory, its working says so. The demo job, its machine "
        "and its ratings are invented.",
        "Treadle is free software under the MIT licence. It contains: Dear ImGui (MIT licence, "
        "Omar Cornut); JSON for Modern C++ (MIT licence, Niels Lohmann); the B612 typeface (SIL "
        "Open Font License 1.1, Airbus and others); zlib (zlib licence, Jean-loup Gailly and Mark "
        "Adler); QR Code generator (MIT licence, Project Nayuki); the Emscripten runtime (MIT "
        "licence, the Emscripten authors) with musl (MIT licence, Rich Felker and others).",
        "Sources of its formulas and tables, and how each was read:",
    };
}

} // namespace treadle::web
