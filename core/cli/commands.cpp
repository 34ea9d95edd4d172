#include "cli/commands.h"

#include "archive/archive.h"
#include "archive/bundle.h"
#include "archive/link.h"
#include "base/json_writer.h"
#include "calc/answer_json.h"
#include "calc/calculation.h"
#include "cli/calc_lines.h"
#include "cli/cut_command.h"
#include "cli/files.h"
#include "cli/kinds_command.h"
#include "cli/layout_command.h"
#include "cli/lesson_command.h"
#include "cli/link_command.h"
#include "cli/machine_json.h"
#include "cli/opened.h"
#include "cli/paper_command.h"
#include "cli/parts_command.h"
#include "plan/plan.h"
#include "plan/stock_plan.h"
#include "quantity/working_text.h"
#include "sheet/stock_sheet.h"
#include "sheet/worksheet.h"

#include <unistd.h>

#include <array>
#include <optional>

namespace treadle::cli {

namespace {

using base::Refusal;
using base::Result;
using Words = std::vector<std::string>;

constexpr int k_answered = 0;
constexpr int k_not_said = 1;
constexpr int k_refused = 2;

constexpr const char* k_help =
    R"(treadle: what a compact hydraulic ironworker makes of a job

  treadle plan FILE.json                   the plan as JSON
  treadle sheet FILE.json --out FILE.html [--paper letter|a4] [--units inch|metric|both]
                [--only summary,tools,set-ups,cutting,parts,workings] [--date TEXT]
                [--link-base https://host/path/]
                                           the worksheet, with a code that opens the job there
  treadle template FILE.json --list        what can be printed at full size, as JSON
  treadle template FILE.json --out FILE.html --key KEY... | --all
                [--paper letter|a4] [--units inch|metric|both] [--factor-x F] [--factor-y F]
                [--printer NAME] [--date TEXT]
                                           holes, wraps and gauges at full size
  treadle link FILE.json [--base https://host/path/]
                                           the job as an address that opens it
  treadle link --read 'TEXT'               the job file that is in such an address
  treadle check FILE                       is the file sound? job, shop, jobs, shelf, lesson or parts list
  treadle lesson FILE.json [--seed N]      a lesson with its answers, and what is wrong with it
  treadle parts LIST.csv [--units inch|metric] [--grade ID] [--decimal point|comma]
                [--map mark=1,count=2,...] [--out JOB.json]
                                           a parts list to parts: what each row became, as JSON
  treadle parts JOB.json --csv             the parts of a job as a list
  treadle jobs FILE.json...                the jobs of these files in one file
  treadle shop FILE.json                   the shop of a job's file alone
  treadle machines FILE.json               which of the shop's machines do the job
  treadle capacity FILE.json --station ID --grade ID [--attachment ID]
                                           what that place can do with that metal
  treadle cut FILE [--work N] [--plans OUT.json]
                                           fewest bars for lists of pieces: a line a list,
                                           NAME BARS BOUND proven|open WORK SECONDS
  treadle stock FILE.json [--work N]       bars to cut, to pull and to buy, as JSON
  treadle calc NAME 'JSON'                 one formula: inputs are text with units
  treadle calc -                           {"calc":NAME,"in":{...}} a line in, a line out
  treadle calc NAME 'JSON' --words inch    the working in words, inch or metric
  treadle calc --list                      every calculation as JSON
  treadle layout KIND name=value ...       parts, rules and figures of a layout; --metric, --mark M;
                                           --job: a job that holds it; layout --list: all kinds
  treadle --help | --version

Exit 0: answered (a job that does not fit is an answer).
Exit 1: standard output cannot be written.
Exit 2: refused, with {"error":{"field":...,"reason":...}} on standard output; nothing is written.
`calc -` answers bad lines with such an error line and goes on; it ends with 0.

The machine's manual, local codes and a competent person decide; figures are estimates.
)";

int answered(const std::string& text) { return say(text) ? k_answered : k_not_said; }

int refused(const Refusal& refusal) {
    return say(calc::refusal_json(refusal) + "\n") ? k_refused : k_not_said;
}

int plan_command(const Words& words) {
    if (words.size() != 2)
        return refused({"file", "One job file is needed.", "treadle plan FILE.json"});
    const auto opened = open_job(words[1]);
    if (!opened.ok())
        return refused(opened.refusal());
    const auto& [job, shop] = opened->file;
    const plan::Plan plan = plan::make_plan(job, shop, opened->catalog);
    return answered(sheet::plan_json(plan, job, shop));
}

int said(const Result<std::string>& answer) {
    return answer.ok() ? answered(answer.value()) : refused(answer.refusal());
}

int check_command(const Words& words) {
    if (words.size() != 2)
        return refused({"file", "One file is needed.", "treadle check FILE"});
    const auto bytes = read_bytes(words[1], archive::k_largest_bundle);
    return bytes.ok() ? said(check_answer(bytes.value())) : refused(bytes.refusal());
}

int machines_command(const Words& words) {
    if (words.size() != 2)
        return refused({"file", "One job file is needed.", "treadle machines FILE.json"});
    const auto opened = open_job(words[1]);
    if (!opened.ok())
        return refused(opened.refusal());
    const auto& [job, shop] = opened->file;
    return answered(machines_json(plan::compare_machines(job, shop, opened->catalog), job, shop));
}

/// What `capacity` is asked: each option once, in any order.
struct PlaceWords {
    std::string file;
    std::string station;
    std::string attachment;
    std::string grade;
};

Result<PlaceWords> place_words_in(const Words& words) {
    PlaceWords said;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool option = words[i].rfind("--", 0) == 0;
        std::string* into = words[i] == "--station"      ? &said.station
                            : words[i] == "--attachment" ? &said.attachment
                            : words[i] == "--grade"      ? &said.grade
                                                         : &said.file;
        const bool known = !option || into != &said.file;
        if (!known || !into->empty() || (option && i + 1 == words.size()))
            return Refusal{"command", "This word is not known here.", words[i]};
        *into = option ? words[++i] : words[i];
    }
    const char* example = "treadle capacity FILE.json --station ID --grade ID";
    if (said.file.empty())
        return Refusal{"file", "One job file is needed.", example};
    if (said.station.empty())
        return Refusal{"station", "The station's id is missing.", example};
    if (said.grade.empty())
        return Refusal{"grade", "The metal is missing.", example};
    return said;
}

template <class Things>
int index_of(const Things& things, const std::string& id) {
    for (std::size_t i = 0; i < things.size(); ++i)
        if (things[i].id == id)
            return static_cast<int>(i);
    return plan::k_none;
}

int capacity_command(const Words& words) {
    const auto said = place_words_in(words);
    if (!said.ok())
        return refused(said.refusal());
    const auto opened = open_job(said->file);
    if (!opened.ok())
        return refused(opened.refusal());
    const auto& [job, shop] = opened->file;
    const plan::Mounting place{index_of(shop.machine.stations, said->station),
                               index_of(shop.machine.attachments, said->attachment)};
    if (!said->attachment.empty() && place.attachment == plan::k_none)
        return refused({"attachment", "No attachment has this id.", said->attachment});
    const plan::Plan plan = plan::make_plan(job, shop, opened->catalog);
    const auto capacity = plan::capacity(place, said->grade, plan, job, shop, opened->catalog);
    if (!capacity.ok())
        return refused(capacity.refusal());
    return answered(capacity_json(capacity.value(), place, said->grade, job, shop));
}

int stock_command(const Words& words) {
    const char* example = "treadle stock FILE.json [--work N]";
    std::string path;
    long long work = plan::k_sheet_work;
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i] == "--work" && i + 1 < words.size()) {
            const auto asked = work_in(words[++i]);
            if (!asked)
                return refused({"work", "The work is a whole number above zero.", example});
            work = *asked;
        } else if (path.empty() && words[i].rfind("--", 0) != 0) {
            path = words[i];
        } else {
            return refused({"command", "This word is not known here.", words[i]});
        }
    }
    if (path.empty())
        return refused({"file", "One job file is needed.", example});
    const auto opened = open_job(path);
    if (!opened.ok())
        return refused(opened.refusal());
    const auto& [job, shop] = opened->file;
    const plan::Plan plan = plan::make_plan(job, shop, opened->catalog);
    const auto groups = plan::stock_groups(plan, job, shop, opened->catalog);
    const plan::StockPlan stock = plan::stock_plan(groups, plan::stock_answers(groups, work));
    return answered(sheet::stock_json(groups, stock, plan, job));
}

/// Answers are flushed before the next read, so that a program may wait for each of them.
int calc_lines(const job::Catalog& catalog) {
    CalcLines lines(catalog);
    std::array<char, 65536> block;
    for (;;) {
        const ssize_t got = ::read(STDIN_FILENO, block.data(), block.size());
        if (got < 0)
            return refused({"line", "Standard input cannot be read.", ""});
        if (got == 0)
            break;
        if (!say(lines.take({block.data(), static_cast<std::size_t>(got)})))
            return k_not_said;
    }
    return answered(lines.end());
}

/// The workings as page and sheet show them, in the units asked for.
std::string in_words(const calc::Answer& answer, UnitSystem system) {
    std::string out;
    for (const Working& working : answer.workings) {
        for (const std::string& line : quantity::working_lines(working, PrintStyle{system, 64}))
            out += line + "\n";
        out += "\n";
    }
    return out;
}

/// The units after --words, none when the words are not that.
std::optional<UnitSystem> words_in(const Words& words) {
    if (words.size() != 5 || words[3] != "--words")
        return std::nullopt;
    if (words[4] == "inch")
        return UnitSystem::inch;
    return words[4] == "metric" ? std::optional(UnitSystem::metric) : std::nullopt;
}

int calc_command(const Words& words) {
    if (words.size() == 2 && words[1] == "--list")
        return answered(calc::list_json() + "\n");
    const auto catalog = archive::read_catalog();
    if (!catalog.ok())
        return refused(catalog.refusal());
    if (words.size() == 2 && words[1] == "-")
        return calc_lines(catalog.value());
    const std::optional<UnitSystem> units = words_in(words);
    if (words.size() != 3 && !units)
        return refused({words.size() < 2 ? "calc" : "in",
                        "A calculation needs its name and one JSON object.",
                        "treadle calc NAME '{\"input\":\"1/2 in\"}'"});
    const auto in = archive::read_calc_input(words[2]);
    if (!in.ok())
        return refused(in.refusal());
    const auto answer = calc::run(words[1], in.value(), {catalog->grades, catalog->sections});
    if (!answer.ok())
        return refused(answer.refusal());
    if (units)
        return answered(in_words(answer.value(), *units));
    return answered(calc::answer_json(words[1], answer.value()) + "\n");
}

} // namespace

int run(const Words& words) {
    if (words.empty())
        return refused({"command", "What to do is missing.", "treadle --help"});
    if (words[0] == "--help" || words[0] == "-h")
        return answered(k_help);
    if (words[0] == "--version")
        return answered("treadle, job format " + std::to_string(archive::k_format_version) + "\n");
    if (words[0] == "plan")
        return plan_command(words);
    if (words[0] == "sheet")
        return said(sheet_answer(words));
    if (words[0] == "template")
        return said(template_answer(words));
    if (words[0] == "link")
        return link_command(words);
    if (words[0] == "check")
        return check_command(words);
    if (words[0] == "parts")
        return said(parts_answer(words));
    if (words[0] == "lesson")
        return said(lesson_answer(words));
    if (words[0] == "jobs")
        return said(jobs_answer(words));
    if (words[0] == "shop")
        return said(shop_answer(words));
    if (words[0] == "machines")
        return machines_command(words);
    if (words[0] == "capacity")
        return capacity_command(words);
    if (words[0] == "cut")
        return cut_command(words);
    if (words[0] == "stock")
        return stock_command(words);
    if (words[0] == "calc")
        return calc_command(words);
    if (words[0] == "layout")
        return said(layout_answer(words));
    return refused({"command", "This command is not known.", "treadle --help"});
}

} // namespace treadle::cli
