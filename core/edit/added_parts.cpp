#include "edit/added_parts.h"

#include "quantity/input_limits.h"

#include <set>
#include <string>
#include <utility>

namespace treadle::edit {

std::string fresh_id(const job::Job& job) {
    std::set<std::string_view> taken;
    for (const job::PartRef& part : job.parts)
        taken.insert(part->id);
    std::size_t number = job.parts.size() + 1;
    std::string id = "p" + std::to_string(number);
    while (taken.count(id) > 0)
        id = "p" + std::to_string(++number);
    return id;
}

base::Result<job::Job> with_parts(job::Job job, std::vector<job::Part> parts) {
    std::set<std::string> taken;
    for (const job::PartRef& part : job.parts)
        taken.insert(part->id);
    std::size_t number = job.parts.size();
    for (std::size_t i = 0; i < parts.size(); ++i) {
        do
            parts[i].id = "p" + std::to_string(++number);
        while (!taken.insert(parts[i].id).second);
        auto sound = job::checked(std::move(parts[i]));
        if (!sound.ok())
            return quantity::inside("parts", i, sound.refusal());
        job.parts.push_back(std::make_shared<const job::Part>(std::move(sound).value()));
    }
    return job;
}

} // namespace treadle::edit
