// A text as a QR code (ISO/IEC 18004) on paper. The library that makes it is at home in qr.cpp.

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::sheet {

/// Larger codes are still codes, but with modules of half a millimetre they are wider than 63 mm,
/// and no phone reads finer ones surely from a sheet that lies beside a machine.
inline constexpr int k_largest_qr_version = 25;
/// Light modules around the code, as the standard asks.
inline constexpr int k_quiet_modules = 4;
inline constexpr double k_least_module_mm = 0.5;
inline constexpr double k_usual_code_mm = 50.0;

struct QrCode {
    int side = 0;           ///< modules, without the quiet zone
    std::vector<bool> dark; ///< row by row from the top left
    [[nodiscard]] bool at(int column, int row) const {
        return dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(side) +
                    static_cast<std::size_t>(column)];
    }
};

/// In byte mode, error correction M or better. None when it needs a larger version.
[[nodiscard]] std::optional<QrCode> qr_code(std::string_view text);
/// As large as usual, or as much larger as its modules ask for.
[[nodiscard]] double module_mm(const QrCode& code);
/// Black on white with its quiet zone; `name` is what a screen reader says.
[[nodiscard]] std::string qr_svg(const QrCode& code, std::string_view name);

} // namespace treadle::sheet
