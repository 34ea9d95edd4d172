#include "archive/short_words.h"

#include "assets/embedded.h"

#include <optional>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;

/// JSON text holds no control characters, and UTF-8 no bytes from 0xF5 on.
constexpr std::size_t k_low_codes = 32;
constexpr unsigned k_first_high_code = 0xF5;
constexpr std::size_t k_most_words = k_low_codes + 0x100 - k_first_high_code;

char code_of(std::size_t word) {
    return static_cast<char>(word < k_low_codes ? word : word - k_low_codes + k_first_high_code);
}

/// Which word a byte stands for; none when it is itself.
std::optional<std::size_t> word_of(char byte) {
    const auto code = static_cast<unsigned char>(byte);
    if (code < k_low_codes)
        return code;
    if (code >= k_first_high_code)
        return code - k_first_high_code + k_low_codes;
    return std::nullopt;
}

LinkDictionary read_dictionary(std::string_view bytes) {
    LinkDictionary dictionary;
    std::string text;
    bool words = true;
    while (!bytes.empty()) {
        const std::size_t end = bytes.find('\n');
        TREADLE_EXPECT(end != std::string_view::npos);
        const std::string_view line = bytes.substr(0, end);
        if (words && !line.empty())
            dictionary.words.emplace_back(line);
        else
            text += line;
        words = words && !line.empty();
        bytes.remove_prefix(end + 1);
    }
    TREADLE_EXPECT(dictionary.words.size() <= k_most_words && !text.empty());
    dictionary.text = shortened(text, dictionary.words).value();
    return dictionary;
}

} // namespace

const LinkDictionary& link_dictionary() {
    static const LinkDictionary dictionary =
        read_dictionary(assets::embedded("link/dictionary-1.txt").value_or(""));
    return dictionary;
}

Result<std::string> shortened(std::string_view json, const std::vector<std::string>& words) {
    std::string text;
    text.reserve(json.size());
    while (!json.empty()) {
        if (word_of(json.front()))
            return Refusal{"link", "There is text in this job that no link can carry.", ""};
        std::size_t longest = 1;
        char put = json.front();
        for (std::size_t i = 0; i < words.size(); ++i)
            if (words[i].size() > longest && json.substr(0, words[i].size()) == words[i]) {
                longest = words[i].size();
                put = code_of(i);
            }
        text += put;
        json.remove_prefix(longest);
    }
    return text;
}

Result<std::string>
lengthened(std::string_view text, const std::vector<std::string>& words, std::size_t most) {
    std::string json;
    for (const char byte : text) {
        const auto word = word_of(byte);
        if (!word)
            json += byte;
        else if (*word < words.size())
            json += words[*word];
        else
            return Refusal{"packed", "This was not made by Treadle.", ""};
        if (json.size() > most)
            return Refusal{"packed",
                           "What is packed in this is larger than anything that is sent this way.",
                           "at most " + std::to_string(most) + " bytes"};
    }
    return json;
}

} // namespace treadle::archive
