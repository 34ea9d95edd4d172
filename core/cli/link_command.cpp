#include "cli/link_command.h"

#include "archive/archive.h"
#include "archive/link.h"
#include "calc/answer_json.h"
#include "cli/files.h"

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;

constexpr int k_answered = 0;
constexpr int k_not_said = 1;
constexpr int k_refused = 2;
constexpr const char* k_example = "treadle link FILE.json [--base https://host/path/]";

struct Asked {
    std::string file;
    std::string base;
    std::string text; ///< to read
};

Result<Asked> asked_in(const std::vector<std::string>& words) {
    Asked asked;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool option = words[i].rfind("--", 0) == 0;
        std::string* const into = words[i] == "--base"   ? &asked.base
                                  : words[i] == "--read" ? &asked.text
                                  : option               ? nullptr
                                                         : &asked.file;
        if (into == nullptr || !into->empty() || (option && i + 1 == words.size()))
            return Refusal{"command", "This word is not known here.", words[i]};
        *into = option ? words[++i] : words[i];
    }
    if (asked.file.empty() == asked.text.empty())
        return Refusal{"file", "One job file or one link to read is needed.", k_example};
    if (!asked.text.empty() && !asked.base.empty())
        return Refusal{"base", "A link that is read has its own address.", k_example};
    return asked;
}

/// The address, or the job file that is in one.
Result<std::string> answer_to(const Asked& asked) {
    if (!asked.text.empty()) {
        const auto link = archive::read_link(asked.text);
        if (!link)
            return link.refusal();
        return archive::write_file(link->file.job, link->file.shop);
    }
    const auto bytes = read_bytes(asked.file);
    if (!bytes)
        return bytes.refusal();
    const auto file = archive::read_file(*bytes);
    if (!file)
        return file.refusal();
    auto fragment = archive::write_link(file->job, file->shop);
    if (fragment && !asked.base.empty())
        fragment = archive::link_address(asked.base, *fragment);
    if (!fragment)
        return fragment.refusal();
    return *fragment + "\n";
}

} // namespace

int link_command(const std::vector<std::string>& words) {
    const auto asked = asked_in(words);
    const auto answer = asked.ok() ? answer_to(*asked) : Result<std::string>(asked.refusal());
    if (!answer)
        return say(calc::refusal_json(answer.refusal()) + "\n") ? k_refused : k_not_said;
    return say(*answer) ? k_answered : k_not_said;
}

} // namespace treadle::cli
