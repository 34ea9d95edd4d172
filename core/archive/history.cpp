#include "archive/history.h"

#include "archive/readers.h"
#include "archive/writers.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;
using job::PartRef;

constexpr int k_layout_step = 2; ///< the first version whose steps hold layouts

std::string header_text(const job::Job& job) {
    Writer out(job.style.system, 0);
    out.json.begin_object();
    write_header(out, job);
    out.json.end_object();
    return out.json.take();
}

/// The stretch of the list that differs by ids.
struct Stretch {
    std::size_t at = 0;
    std::size_t out = 0;
    std::size_t in = 0;
};

Stretch stretch_of(const std::vector<PartRef>& before, const std::vector<PartRef>& after) {
    const std::size_t shorter = std::min(before.size(), after.size());
    const auto same = [](const PartRef& a, const PartRef& b) { return a == b || a->id == b->id; };
    std::size_t head = 0;
    while (head < shorter && same(before[head], after[head]))
        ++head;
    std::size_t tail = 0;
    while (tail < shorter - head &&
           same(before[before.size() - 1 - tail], after[after.size() - 1 - tail]))
        ++tail;
    return {head, before.size() - head - tail, after.size() - head - tail};
}

/// Those of `after` that `before` does not hold as the same objects.
std::vector<PartRef> new_parts(const std::vector<PartRef>& before,
                               const std::vector<PartRef>& after,
                               const Stretch& stretch) {
    std::unordered_set<const job::Part*> left;
    for (std::size_t i = 0; i < stretch.out; ++i)
        left.insert(before[stretch.at + i].get());
    std::vector<PartRef> made;
    for (std::size_t i = 0; i < after.size(); ++i) {
        const bool in = i >= stretch.at && i < stretch.at + stretch.in;
        const std::size_t was = i < stretch.at ? i : i + stretch.out - stretch.in;
        const bool known = in ? left.count(after[i].get()) > 0 : after[i] == before[was];
        if (!known)
            made.push_back(after[i]);
    }
    return made;
}

struct HeaderIn {
    job::Job job;
};

void read_value(const Place& at, HeaderIn& out) {
    Members members(at);
    read_header(members, out.job);
    read_layouts(members, out.job);
    members.finish();
    if (at.failed())
        return;
    if (const auto sound = job::checked(out.job); !sound.ok())
        at.refuse(sound.refusal());
}

/// A part on its own, so that it is checked where it stands.
struct PartIn {
    PartRef part;
};

void read_value(const Place& at, PartIn& out) {
    job::Part part;
    archive::read_value(at, part);
    if (at.failed())
        return;
    auto sound = job::checked(std::move(part));
    if (sound.ok())
        out.part = std::make_shared<const job::Part>(std::move(sound).value());
    else
        at.refuse(sound.refusal());
}

void check_version(const Place& root, const std::string& format, int version) {
    if (format != "treadle-step")
        root.refuse("This is not a step of a job's history.", "\"treadle-step\"", "format");
    else if (version > k_step_version)
        root.refuse("This step was made by a newer Treadle; nothing was changed.",
                    "this one reads up to version " + std::to_string(k_step_version),
                    "version");
    else if (version < k_oldest_version)
        root.refuse("There was never such a version of a step.", "", "version");
}

Step read_members(const Place& root) {
    Step step;
    Members members(root);
    std::string format;
    int version = 0;
    members.need("format", format).need("version", version);
    check_version(root, format, version);
    std::optional<HeaderIn> header;
    std::vector<PartIn> parts;
    std::optional<equipment::Shop> shop;
    members.need("words", step.words).may("header", header);
    members.may("at", step.at).may("out", step.out).may("in", step.in);
    members.may("parts", parts).may("shop", shop);
    members.finish();
    if (step.at < 0)
        root.refuse("There is no such place in a list.", "0 or more", "at");
    if (step.out < 0)
        root.refuse("So many parts cannot leave.", "0 or more", "out");
    if (header && version < k_layout_step && !header->job.layouts.empty())
        root.refuse("A step of this version has no layouts.", "", "header.layouts");
    if (header)
        step.header = std::move(header->job);
    for (PartIn& part : parts)
        step.parts.push_back(std::move(part.part));
    if (shop)
        step.shop = std::make_shared<const equipment::Shop>(std::move(*shop));
    return step;
}

Refusal not_made_for_it(std::string field) {
    return {std::move(field), "This step was made for another state of the job.", ""};
}

/// The parts by id: of the stretch that leaves, and those that the step brings.
using PartsById = std::unordered_map<std::string_view, PartRef>;

std::optional<Refusal> put_in_order(std::vector<PartRef>& parts, const Step& step) {
    const auto at = static_cast<std::size_t>(step.at);
    const auto out = static_cast<std::size_t>(step.out);
    if (at > parts.size() || out > parts.size() - at)
        return not_made_for_it("out");
    const auto begin = parts.begin() + step.at;
    PartsById known;
    for (auto place = begin; place != begin + step.out; ++place)
        known.emplace((*place)->id, *place);
    for (const PartRef& part : step.parts)
        known.insert_or_assign(part->id, part);
    std::vector<PartRef> in;
    for (const std::string& id : step.in) {
        const auto found = known.find(id);
        if (found == known.end())
            return not_made_for_it("in");
        in.push_back(found->second);
    }
    parts.erase(begin, begin + step.out);
    parts.insert(parts.begin() + step.at, in.begin(), in.end());
    std::unordered_set<std::string_view> seen;
    for (const PartRef& part : parts)
        if (!seen.insert(part->id).second)
            return not_made_for_it("in");
    return std::nullopt;
}

std::optional<Refusal> put_changes(std::vector<PartRef>& parts, const Step& step) {
    PartsById changed;
    for (const PartRef& part : step.parts)
        changed.emplace(part->id, part);
    std::size_t found = 0;
    for (PartRef& part : parts) {
        const auto change = changed.find(part->id);
        if (change == changed.end())
            continue;
        part = change->second;
        ++found;
    }
    if (found != step.parts.size())
        return not_made_for_it("parts");
    return std::nullopt;
}

} // namespace

std::string write_step(const Moment& before, const Moment& after, std::string_view words) {
    Writer out(after.job.style.system, 0);
    const bool header = header_text(before.job) != header_text(after.job);
    const bool layouts = header && !after.job.layouts.empty();
    out.json.begin_object();
    out.json.field("format", "treadle-step");
    out.json.field("version", layouts ? k_step_version : k_step_without_layouts);
    out.json.field("words", words);
    if (header) {
        out.json.key("header").begin_object();
        write_header(out, after.job);
        out.json.end_object();
    }
    const Stretch stretch = stretch_of(before.job.parts, after.job.parts);
    if (stretch.out > 0 || stretch.in > 0) {
        out.json.field("at", static_cast<int>(stretch.at));
        out.json.field("out", static_cast<int>(stretch.out)).key("in").begin_array();
        for (std::size_t i = 0; i < stretch.in; ++i)
            out.json.text(after.job.parts[stretch.at + i]->id);
        out.json.end_array();
    }
    out.list("parts",
             new_parts(before.job.parts, after.job.parts, stretch),
             [&](const PartRef& part) { write_part(out, *part); });
    if (before.shop != after.shop) {
        out.json.key("shop");
        write_shop(out, *after.shop);
    }
    out.json.end_object();
    return out.json.take();
}

Result<Step> read_step(std::string_view bytes) {
    const Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    Step step = read_members(Place(reading, 0));
    if (reading.refusal)
        return std::move(*reading.refusal);
    return step;
}

Result<Moment> apply_step(const Moment& before, const Step& step) {
    Moment after = before;
    if (step.header) {
        std::vector<PartRef> parts = std::move(after.job.parts);
        after.job = *step.header;
        after.job.parts = std::move(parts);
    }
    if (step.out > 0 || !step.in.empty()) {
        if (auto fault = put_in_order(after.job.parts, step))
            return *fault;
    }
    if (auto fault = put_changes(after.job.parts, step))
        return *fault;
    if (step.shop)
        after.shop = step.shop;
    return after;
}

} // namespace treadle::archive
