#include "sheet/qr.h"

#include "base/text.h"

#include <qrcodegen.h>

#include <algorithm>
#include <array>
#include <cstdint>

namespace treadle::sheet {

std::optional<QrCode> qr_code(std::string_view text) {
    std::array<std::uint8_t, qrcodegen_BUFFER_LEN_FOR_VERSION(k_largest_qr_version)> data;
    std::array<std::uint8_t, data.size()> made;
    if (text.size() > data.size())
        return std::nullopt;
    std::copy(text.begin(), text.end(), data.begin());
    if (!qrcodegen_encodeBinary(data.data(),
                                text.size(),
                                made.data(),
                                qrcodegen_Ecc_MEDIUM,
                                qrcodegen_VERSION_MIN,
                                k_largest_qr_version,
                                qrcodegen_Mask_AUTO,
                                true))
        return std::nullopt;
    QrCode code;
    code.side = qrcodegen_getSize(made.data());
    for (int row = 0; row < code.side; ++row)
        for (int column = 0; column < code.side; ++column)
            code.dark.push_back(qrcodegen_getModule(made.data(), column, row));
    return code;
}

double module_mm(const QrCode& code) {
    return std::max(k_least_module_mm, k_usual_code_mm / (code.side + 2 * k_quiet_modules));
}

std::string qr_svg(const QrCode& code, std::string_view name) {
    const std::string side = std::to_string(code.side + 2 * k_quiet_modules);
    const std::string size =
        base::write_short(module_mm(code) * (code.side + 2 * k_quiet_modules), 3) + "mm";
    std::string svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + size +
                      "\" height=\"" + size + "\" viewBox=\"0 0 " + side + " " + side +
                      "\" shape-rendering=\"crispEdges\"><title>" + base::escape_markup(name) +
                      "</title><rect width=\"" + side + "\" height=\"" + side +
                      "\" fill=\"#fff\"/><path fill=\"#000\" d=\"";
    for (int row = 0; row < code.side; ++row) {
        int column = 0;
        while (column < code.side) {
            int end = column;
            while (end < code.side && code.at(end, row))
                ++end;
            if (end > column)
                svg += "M" + std::to_string(column + k_quiet_modules) + " " +
                       std::to_string(row + k_quiet_modules) + "h" + std::to_string(end - column) +
                       "v1h-" + std::to_string(end - column) + "z";
            column = end + 1;
        }
    }
    return svg + "\"/></svg>";
}

} // namespace treadle::sheet
