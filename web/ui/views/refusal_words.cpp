#include "ui/views/refusal_words.h"

#include "base/text.h"

namespace treadle::views {

std::string refusal_words(const base::Refusal& refusal) {
    if (refusal.detail.empty())
        return refusal.reason;
    // A detail is a range ("at most 100"), or a sentence of its own.
    const char first = refusal.detail.front();
    if (first >= 'A' && first <= 'Z')
        return refusal.reason + " " + refusal.detail;
    return refusal.reason + " Allowed: " + refusal.detail + ".";
}

std::string field_words(std::string_view path) {
    const std::size_t dot = path.rfind('.');
    std::string words(dot == std::string_view::npos ? path : path.substr(dot + 1));
    words = words.substr(0, words.find('['));
    if (words == "size2")
        words = "second size";
    for (char& c : words)
        c = c == '_' ? ' ' : c;
    return base::capital(std::move(words));
}

std::string mend_words(std::string_view kept) {
    std::string words = "Type it again: ";
    if (kept.empty())
        return words + "until then nothing is entered.";
    return words.append("until then it is ").append(kept).append(".");
}

} // namespace treadle::views
