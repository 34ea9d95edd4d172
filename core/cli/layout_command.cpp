#include "cli/layout_command.h"

#include "archive/archive.h"
#include "base/json_writer.h"
#include "edit/layout_reading.h"
#include "quantity/working_text.h"

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;

std::string list_json() {
    base::JsonWriter json;
    json.begin_object().field("ok", true).key("layouts").begin_array();
    for (const edit::LayoutKindRow& kind : edit::layout_kinds()) {
        json.begin_object().field("kind", kind.id).field("title", kind.title);
        json.field("words", kind.words).key("inputs").begin_array();
        for (const edit::LayoutField& field : edit::layout_fields(kind.id)) {
            json.begin_object().field("name", field.name).field("meaning", field.meaning);
            if (field.required)
                json.field("required", true);
            if (!field.example.empty())
                json.field("example", field.example);
            if (!field.choices.empty()) {
                json.key("choices").begin_array();
                for (const std::string& choice : field.choices)
                    json.text(choice);
                json.end_array();
            }
            json.end_object();
        }
        json.end_array().end_object();
    }
    json.end_array().end_object();
    return json.take() + "\n";
}

struct Asked {
    edit::AddLayout layout;
    PrintStyle style;
    bool as_job = false;
};

Result<Asked> asked_in(const std::vector<std::string>& words) {
    Asked asked;
    asked.layout.mark = "L1";
    for (std::size_t i = 1; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (word == "--metric") {
            asked.style.system = UnitSystem::metric;
        } else if (word == "--job") {
            asked.as_job = true;
        } else if (word == "--mark" && i + 1 < words.size()) {
            asked.layout.mark = words[++i];
        } else if (const std::size_t equals = word.find('='); equals != std::string::npos) {
            asked.layout.values.push_back({word.substr(0, equals), word.substr(equals + 1)});
        } else if (asked.layout.kind.empty() && word.rfind("--", 0) != 0) {
            asked.layout.kind = word;
        } else {
            return Refusal{"layout", "This word is not understood: " + word, "name=value"};
        }
    }
    if (asked.layout.kind.empty())
        return Refusal{"kind", "Which layout is missing.", "treadle layout --list"};
    return asked;
}

std::string line(const std::string& words) { return words + "\n"; }

std::string in_words(const edit::LayoutReading& reading, PrintStyle style) {
    std::string out = line("Parts");
    for (const edit::LayoutPartRow& part : reading.parts)
        out += line("  " + part.mark + "  " + std::to_string(part.count) + " x " + part.words +
                    (part.note.empty() ? "" : "  (" + part.note + ")"));
    out += line("Rules");
    for (const edit::LayoutRuleRow& rule : reading.rules)
        out += line("  " + rule.words + ": " + rule.answer + "  [" + rule.source + ", " +
                    rule.evidence + "]" + (rule.remark.empty() ? "" : " " + rule.remark));
    out += line("Figures");
    for (const edit::LayoutFigureRow& figure : reading.figures)
        out += line("  " + figure.words + ": " + figure.value);
    for (const std::string& words : reading.marks)
        out += line("  " + words);
    for (const std::string& words : reading.templates)
        out += line(words);
    for (const std::string& words : reading.cautions)
        out += line("Caution: " + words);
    out += line("Workings");
    for (const Working& working : reading.workings) {
        for (const std::string& words : quantity::working_lines(working, style))
            out += line("  " + words);
        out += "\n";
    }
    return out;
}

} // namespace

Result<std::string> layout_answer(const std::vector<std::string>& words) {
    if (words.size() == 2 && words[1] == "--list")
        return list_json();
    const auto asked = asked_in(words);
    if (!asked.ok())
        return asked.refusal();
    const auto catalog = archive::read_catalog();
    if (!catalog.ok())
        return catalog.refusal();
    job::Job job;
    job.style = asked->style;
    if (asked->as_job) {
        const auto made = edit::with_layout(job, asked->layout, *catalog);
        if (!made.ok())
            return made.refusal();
        return archive::write_file(made->job, {});
    }
    const edit::LayoutReading reading = edit::read_layout(job, asked->layout, *catalog);
    if (reading.refusal)
        return *reading.refusal;
    return in_words(reading, asked->style);
}

} // namespace treadle::cli
