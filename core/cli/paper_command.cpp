#include "cli/paper_command.h"

#include "archive/archive.h"
#include "archive/job_code.h"
#include "archive/link.h"
#include "base/json_writer.h"
#include "base/text.h"
#include "cli/files.h"
#include "cli/opened.h"
#include "plan/plan.h"
#include "sheet/template.h"
#include "sheet/worksheet.h"

#include "assets/embedded.h"

#include <algorithm>
#include <array>
#include <optional>

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;
using Words = std::vector<std::string>;

/// What both commands are told.
struct Asked {
    std::string path;
    std::string out;
    std::string link_base;
    std::string date;
    std::string printer;
    std::optional<sheet::Paper> paper;
    sheet::SheetUnits units = sheet::SheetUnits::as_job;
    std::optional<sheet::SheetKinds> only;
    std::vector<std::string> keys;
    double factor_x = 1.0;
    double factor_y = 1.0;
    bool list = false;
    bool all = false;
};

using Fault = std::optional<Refusal>;

Fault take_paper(Asked& asked, const std::string& word) {
    if (word != "letter" && word != "a4")
        return Refusal{"paper", "This paper is not known here.", "letter or a4"};
    asked.paper = word == "letter" ? sheet::Paper::letter : sheet::Paper::a4;
    return std::nullopt;
}

Fault take_units(Asked& asked, const std::string& word) {
    constexpr std::array k_words = {"inch", "metric", "both"};
    const auto found = std::find(k_words.begin(), k_words.end(), word);
    if (found == k_words.end())
        return Refusal{"units", "These units are not known here.", "inch, metric or both"};
    asked.units = static_cast<sheet::SheetUnits>(found - k_words.begin() + 1);
    return std::nullopt;
}

Fault take_kinds(Asked& asked, const std::string& words) {
    using Kinds = sheet::SheetKinds;
    constexpr std::array<std::pair<const char*, bool Kinds::*>, 6> k_kinds{{
        {"summary", &Kinds::summary},
        {"tools", &Kinds::tools},
        {"set-ups", &Kinds::set_ups},
        {"cutting", &Kinds::cutting},
        {"parts", &Kinds::parts},
        {"workings", &Kinds::workings},
    }};
    Kinds kinds{false, false, false, false, false, false};
    for (std::size_t from = 0; from <= words.size();) {
        const std::size_t comma = std::min(words.find(',', from), words.size());
        const std::string word = words.substr(from, comma - from);
        const auto found = std::find_if(
            k_kinds.begin(), k_kinds.end(), [&](const auto& kind) { return word == kind.first; });
        if (found == k_kinds.end())
            return Refusal{"only",
                           "There is no such sheet.",
                           "summary, tools, set-ups, cutting, parts, workings"};
        kinds.*(found->second) = true;
        from = comma + 1;
    }
    asked.only = kinds;
    return std::nullopt;
}

Fault take_factor(double& factor, const std::string& word, const char* field) {
    const auto value = base::read_number(word);
    if (!value)
        return Refusal{field, "A factor is a number.", "0.90 to 1.10"};
    factor = *value;
    return std::nullopt;
}

/// An option with one word behind it; nothing when this is none.
std::optional<Fault> take_pair(Asked& asked, const std::string& name, const std::string& word) {
    const auto keep = [&](std::string& into) -> Fault {
        into = word;
        return std::nullopt;
    };
    if (name == "--out")
        return keep(asked.out);
    if (name == "--link-base")
        return keep(asked.link_base);
    if (name == "--date")
        return keep(asked.date);
    if (name == "--printer")
        return keep(asked.printer);
    if (name == "--paper")
        return take_paper(asked, word);
    if (name == "--units")
        return take_units(asked, word);
    if (name == "--only")
        return take_kinds(asked, word);
    if (name == "--factor-x")
        return take_factor(asked.factor_x, word, "factor-x");
    if (name == "--factor-y")
        return take_factor(asked.factor_y, word, "factor-y");
    if (name == "--key") {
        asked.keys.push_back(word);
        return Fault{};
    }
    return std::nullopt;
}

Result<Asked> read_words(const Words& words, const char* example) {
    Asked asked;
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i] == "--list") {
            asked.list = true;
        } else if (words[i] == "--all") {
            asked.all = true;
        } else if (words[i].rfind("--", 0) != 0 && asked.path.empty()) {
            asked.path = words[i];
        } else {
            const auto taken = i + 1 < words.size() ? take_pair(asked, words[i], words[i + 1])
                                                    : std::optional<Fault>{};
            if (!taken)
                return Refusal{"command", "This word is not known here.", words[i]};
            if (*taken)
                return **taken;
            ++i;
        }
    }
    if (asked.path.empty())
        return Refusal{"file", "One job file is needed.", example};
    return asked;
}

/// Where `base` says that the page is; a job that no link holds leaves it to the sheet to say so.
Fault put_link(sheet::SheetOptions& options, const std::string& base, const archive::File& file) {
    if (base.empty())
        return std::nullopt;
    const auto fragment = archive::write_link(file.job, file.shop);
    const auto address = archive::link_address(base, fragment ? *fragment : "");
    if (!address)
        return Refusal{"link-base", address.refusal().reason, address.refusal().detail};
    options.link_page = base;
    if (fragment)
        options.link = *address;
    return std::nullopt;
}

sheet::Paper paper_of(const Asked& asked, const job::Job& job) {
    return asked.paper.value_or(job.style.system == UnitSystem::inch ? sheet::Paper::letter
                                                                     : sheet::Paper::a4);
}

std::string list_json(const std::vector<sheet::TemplateInfo>& list) {
    base::JsonWriter json;
    json.begin_array();
    for (const sheet::TemplateInfo& info : list) {
        json.begin_object().field("key", info.key).field("title", info.title);
        if (info.refusal.empty())
            json.field("pages", info.pages);
        else
            json.field("refusal", info.refusal);
        json.end_object();
    }
    json.end_array();
    return json.take() + "\n";
}

} // namespace

Result<std::string> sheet_answer(const Words& words) {
    const auto asked = read_words(words, "treadle sheet FILE.json --out FILE.html");
    if (!asked.ok())
        return asked.refusal();
    if (asked->out.empty())
        return Refusal{"out", "Where the worksheet goes is missing.", "--out FILE.html"};
    const auto opened = open_job(asked->path);
    if (!opened.ok())
        return opened.refusal();
    const auto& [job, shop] = opened->file;
    const plan::Plan plan = plan::make_plan(job, shop, opened->catalog);
    sheet::SheetOptions options;
    options.paper = paper_of(*asked, job);
    options.units = asked->units;
    options.kinds = asked->only.value_or(sheet::SheetKinds{});
    options.date = asked->date;
    options.code = archive::job_code(job, shop);
    const auto sources = archive::read_sources(assets::embedded("sources.json").value_or(""));
    if (!sources.ok())
        return sources.refusal();
    options.source_title = [&sources](std::string_view key) {
        for (const archive::Source& source : *sources)
            if (source.key == key)
                return source.title;
        return std::string(key);
    };
    if (const auto fault = put_link(options, asked->link_base, opened->file))
        return *fault;
    const std::string html = sheet::worksheet_html(plan, job, shop, opened->catalog, options);
    if (const auto fault = write_bytes(asked->out, html, asked->path))
        return *fault;
    return std::string();
}

Result<std::string> template_answer(const Words& words) {
    const auto asked = read_words(words, "treadle template FILE.json --list");
    if (!asked.ok())
        return asked.refusal();
    const auto opened = open_job(asked->path);
    if (!opened.ok())
        return opened.refusal();
    const auto& [job, shop] = opened->file;
    const plan::Plan plan = plan::make_plan(job, shop, opened->catalog);
    sheet::TemplateOptions options;
    options.paper = paper_of(*asked, job);
    options.units = asked->units;
    options.factors = {asked->printer, asked->factor_x, asked->factor_y};
    options.date = asked->date;
    options.code = archive::job_code(job, shop);
    const sheet::TemplateInputs in{plan, job, sheet::layout_wraps(job, opened->catalog), options};
    const std::vector<sheet::TemplateInfo> list = sheet::template_list(in);
    if (asked->list)
        return list_json(list);
    std::vector<std::string> keys = asked->keys;
    if (asked->all)
        for (const sheet::TemplateInfo& info : list)
            if (info.refusal.empty())
                keys.push_back(info.key);
    if (asked->out.empty())
        return Refusal{"out", "Where the templates go is missing.", "--out FILE.html"};
    const auto html = sheet::templates_html(in, keys);
    if (!html.ok())
        return html.refusal();
    if (const auto fault = write_bytes(asked->out, *html, asked->path))
        return *fault;
    return std::string();
}

} // namespace treadle::cli
