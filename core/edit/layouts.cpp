#include "edit/layouts.h"

#include "edit/added_parts.h"
#include "edit/changes.h"

#include <algorithm>
#include <utility>

#include "assembly/kind.h"

namespace treadle::edit {

namespace {

using base::Refusal;
using base::Result;
using job::Layout;
using job::MadePart;
using job::PartRef;

assembly::Ground ground_of(const job::Job& job, const job::Catalog& catalog) {
    return {catalog, job.own_grades, job.style.system};
}

std::vector<PartRef>::iterator find_part(job::Job& job, std::string_view id) {
    return std::find_if(
        job.parts.begin(), job.parts.end(), [&](const PartRef& part) { return part->id == id; });
}

Layout* find(job::Job& job, std::string_view id) {
    for (Layout& layout : job.layouts)
        if (layout.id == id)
            return &layout;
    return nullptr;
}

Refusal no_such_layout() { return {"id", "There is no such layout in this job.", ""}; }

std::string fresh_layout_id(const job::Job& job) {
    std::size_t number = job.layouts.size() + 1;
    std::string id = "l" + std::to_string(number);
    while (job::find_layout(job.layouts, id) != nullptr)
        id = "l" + std::to_string(++number);
    return id;
}

/// Where a new part of the layout goes: behind its last one, else at the end.
std::vector<PartRef>::iterator place_of(job::Job& job, const std::vector<MadePart>& made) {
    auto place = job.parts.end();
    for (auto part = job.parts.begin(); part != job.parts.end(); ++part)
        for (const MadePart& known : made)
            if (known.part == (*part)->id)
                place = part + 1;
    return place;
}

/// The part of this role, made anew under its old id; the same object where nothing differs.
void put_part(job::Job& job, MadePart& made, job::Part part, const std::vector<MadePart>& all) {
    if (made.detached)
        return;
    const auto old = made.part.empty() ? job.parts.end() : find_part(job, made.part);
    if (old == job.parts.end()) {
        made.part = part.id = fresh_id(job);
        job.parts.insert(place_of(job, all), std::make_shared<const job::Part>(std::move(part)));
        return;
    }
    part.id = made.part;
    if (!change_words(**old, part).empty())
        *old = std::make_shared<const job::Part>(std::move(part));
}

const MadePart* role_in(const std::vector<MadePart>& made, const std::string& role) {
    for (const MadePart& part : made)
        if (part.role == role)
            return &part;
    return nullptr;
}

/// Parts of roles that are no longer made leave the job; detached ones stay, and stay known.
void drop_gone(job::Job& job, Layout& layout, const assembly::Made& made) {
    std::vector<MadePart> kept;
    for (const MadePart& old : layout.made) {
        const bool again = std::any_of(made.parts.begin(), made.parts.end(), [&](const auto& part) {
            return part.role == old.role;
        });
        if (again || old.detached)
            kept.push_back(old);
        else if (const auto part = find_part(job, old.part); part != job.parts.end())
            job.parts.erase(part);
    }
    layout.made = std::move(kept);
}

/// All parts of the layout made anew. The job is checked where the edit is applied.
Result<job::Job> laid_out(job::Job job, const std::string& id, const job::Catalog& catalog) {
    Layout& layout = *find(job, id);
    const assembly::Kind* kind = assembly::find_kind(layout.kind);
    if (kind == nullptr)
        return Refusal{
            "kind", "This Treadle knows no such layout; its parts stay as they are.", ""};
    layout.values = assembly::with_units(*kind, layout.values, job.style.system);
    const auto made =
        assembly::make(layout.kind, layout.mark, layout.values, ground_of(job, catalog));
    if (!made.ok())
        return made.refusal();
    drop_gone(job, layout, *made);
    for (const assembly::RolePart& part : made->parts) {
        if (role_in(layout.made, part.role) == nullptr)
            layout.made.push_back({part.role, "", false});
        for (MadePart& known : layout.made)
            if (known.role == part.role)
                put_part(job, known, part.part, layout.made);
    }
    auto layouts = job::checked(job.layouts);
    if (!layouts.ok())
        return layouts.refusal();
    return job;
}

bool is_unchanged(const job::Job& a, const job::Job& b) {
    return a.parts == b.parts &&
           std::equal(
               a.layouts.begin(), a.layouts.end(), b.layouts.begin(), b.layouts.end(), job::same);
}

} // namespace

Result<LaidOut>
with_layout(const job::Job& job, const AddLayout& edit, const job::Catalog& catalog) {
    job::Job next = job;
    const std::string id = fresh_layout_id(job);
    next.layouts.push_back({id, edit.kind, edit.mark, edit.values, {}});
    auto made = laid_out(std::move(next), id, catalog);
    if (!made.ok())
        return made.refusal();
    return LaidOut{std::move(made).value(), "layout " + edit.mark + " added"};
}

Result<LaidOut>
with_layout(const job::Job& job, const ChangeLayout& edit, const job::Catalog& catalog) {
    job::Job next = job;
    Layout* layout = find(next, edit.id);
    if (layout == nullptr)
        return no_such_layout();
    layout->mark = edit.mark;
    layout->values = edit.values;
    auto made = laid_out(std::move(next), edit.id, catalog);
    if (!made.ok())
        return made.refusal();
    const bool unchanged = is_unchanged(job, made.value());
    return LaidOut{std::move(made).value(), unchanged ? "" : "layout " + edit.mark};
}

Result<LaidOut> with_layout(const job::Job& job, const RemoveLayout& edit, const job::Catalog&) {
    const Layout* layout = job::find_layout(job.layouts, edit.id);
    if (layout == nullptr)
        return no_such_layout();
    job::Job next = job;
    if (edit.with_parts)
        for (const MadePart& made : layout->made)
            if (const auto part = find_part(next, made.part);
                !made.detached && part != next.parts.end())
                next.parts.erase(part);
    next.layouts.erase(next.layouts.begin() + (layout - job.layouts.data()));
    return LaidOut{std::move(next),
                   "layout " + layout->mark +
                       (edit.with_parts ? " and its parts removed" : " removed, its parts kept")};
}

Result<LaidOut> with_layout(const job::Job& job, const DetachPart& edit, const job::Catalog&) {
    LaidOut out{job, ""};
    const auto part = find_part(out.job, edit.id);
    if (part == out.job.parts.end())
        return Refusal{"id", "There is no such part in this job.", ""};
    const std::string mark = (*part)->mark;
    const std::string said = detach(out.job, edit.id);
    if (said.empty())
        return Refusal{"id", "This part is linked to no layout.", ""};
    out.words = mark + said;
    return out;
}

std::string detach(job::Job& job, std::string_view part_id, bool removed) {
    for (Layout& layout : job.layouts)
        for (MadePart& made : layout.made) {
            if (made.part.empty() || made.part != part_id)
                continue;
            const bool was_linked = !made.detached;
            made.detached = true;
            if (removed)
                made.part.clear();
            return was_linked ? ", no longer linked to " + layout.mark : "";
        }
    return "";
}

} // namespace treadle::edit
