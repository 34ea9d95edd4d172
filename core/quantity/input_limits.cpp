#include "quantity/input_limits.h"

#include "base/text.h"

namespace treadle::quantity {

namespace {

constexpr const char* k_below_limit = "above 0 and below 100 m (328 ft)";

std::size_t character_count(std::string_view text) {
    std::size_t count = 0;
    for (const char c : text)
        if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U)
            ++count;
    return count;
}

} // namespace

Fault size_fault(Length value, const char* field) {
    if (!(value > Length{}) || !is_finite(value))
        return base::Refusal{field, "This has to be above zero.", k_below_limit};
    if (!(value < k_longest_length))
        return base::Refusal{field, "This is too long.", k_below_limit};
    return std::nullopt;
}

Fault place_fault(Length value, const char* field) {
    if (!(value >= Length{}) || !is_finite(value))
        return base::Refusal{
            field, "This cannot be below zero.", "0 or more, below 100 m (328 ft)"};
    if (!(value < k_longest_length))
        return base::Refusal{field, "This is too far.", "below 100 m (328 ft)"};
    return std::nullopt;
}

Fault count_fault(int value, int least, int most, const char* field) {
    if (value >= least && value <= most)
        return std::nullopt;
    return base::Refusal{
        field, "This is out of range.", std::to_string(least) + " to " + std::to_string(most)};
}

Fault denominator_fault(int value, const char* field) {
    for (const int known : {2, 4, 8, 16, 32, 64})
        if (value == known)
            return std::nullopt;
    return base::Refusal{field, "This is no fraction of an inch in use.", "2, 4, 8, 16, 32 or 64"};
}

Fault text_fault(std::string_view text, const char* field, Presence presence, std::size_t most) {
    if (presence == Presence::required && base::trim(text).empty())
        return base::Refusal{field, "This is missing.", "one letter or figure at least"};
    if (character_count(text) > most)
        return base::Refusal{
            field, "This is too long.", "at most " + std::to_string(most) + " characters"};
    if (!base::is_clean_text(text))
        return base::Refusal{
            field, "This holds characters that cannot be shown.", "letters, figures and signs"};
    return std::nullopt;
}

base::Refusal inside(std::string_view at, base::Refusal refusal) {
    refusal.field = std::string(at) + '.' + refusal.field;
    return refusal;
}

base::Refusal inside(std::string_view list, std::size_t index, base::Refusal refusal) {
    return inside(item(list, index), std::move(refusal));
}

std::string item(std::string_view list, std::size_t index) {
    return std::string(list) + '[' + std::to_string(index) + ']';
}

} // namespace treadle::quantity
