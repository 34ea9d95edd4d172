// The table of rooms: who may include whom. DEVELOPERS.md shows the same table, line for line,
// and a test holds the two together. Arrows go down only, so a room names rooms above its line.

#pragma once

#include <array>
#include <string_view>

namespace treadle::architecture {

struct Room {
    std::string_view name;
    std::string_view folder;
    std::string_view may_include; ///< names, a blank between two; itself always
};

/// Folders hold their subfolders too, unless a longer folder has a room of its own.
inline constexpr std::array k_rooms{
    Room{"base", "core/base", ""},
    Room{"cutting", "core/cutting", "base"},
    Room{"quantity", "core/quantity", "base"},
    Room{"geometry", "core/geometry", "base quantity"},
    Room{"material", "core/material", "base quantity"},
    Room{"section", "core/section", "base quantity geometry"},
    Room{"process", "core/process", "base quantity geometry material section"},
    Room{"supply", "core/supply", "base quantity"},
    Room{"equipment", "core/equipment", "base quantity geometry material section"},
    Room{"job", "core/job", "base quantity geometry material section equipment"},
    Room{"layout", "core/layout", "base quantity geometry material section"},
    Room{"calc", "core/calc", "base quantity geometry material section process supply layout"},
    Room{"assembly",
         "core/assembly",
         "base quantity geometry material section process job layout calc"},
    Room{"plan",
         "core/plan",
         "base cutting quantity geometry material section process supply equipment job"},
    Room{"lesson",
         "core/lesson",
         "base quantity geometry material section equipment job calc plan"},
    Room{"sheet",
         "core/sheet",
         "base quantity geometry material section process equipment job layout assembly plan "
         "lesson"},
    Room{"assets", "assets", ""},
    Room{"archive",
         "core/archive",
         "base cutting quantity geometry material section equipment job calc plan lesson assets"},
    Room{"edit",
         "core/edit",
         "base quantity geometry material section process equipment job layout assembly plan "
         "sheet"},
    Room{"cli",
         "core/cli",
         "base cutting quantity geometry material section process equipment job layout calc "
         "assembly plan lesson sheet assets archive edit"},
    Room{"theme", "web/ui/theme", "base quantity"},
    Room{"platform", "web/platform", "base"},
    Room{"widgets", "web/ui/widgets", "base quantity theme platform"},
    Room{"bare", "web/bare", ""},
    Room{"cutter", "web/cutter", "base cutting"},
    Room{"views",
         "web/ui/views",
         "base quantity geometry material section equipment job plan sheet edit theme widgets "
         "platform"},
    Room{"web",
         "web",
         "base cutting quantity geometry material section process equipment job calc plan "
         "lesson sheet assets archive edit theme platform widgets views"},
};

/// A header of a library belongs to these rooms and to no other.
struct Library {
    std::string_view header_begins;
    std::string_view rooms;
};
inline constexpr std::array k_libraries{
    Library{"nlohmann/", "archive"},
    Library{"zlib", "archive"},
    Library{"qrcodegen", "sheet"},
    Library{"imgui", "theme widgets views platform web bare"},
    Library{"backends/imgui", "platform web bare"},
    Library{"emscripten", "platform web bare cutter"},
    Library{"GLES", "platform bare"},
    Library{"doctest/", ""},
};

} // namespace treadle::architecture
