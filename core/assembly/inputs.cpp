#include "assembly/inputs.h"

#include "quantity/input_limits.h"
#include "quantity/parse.h"

#include <algorithm>

#include "assembly/section_text.h"

namespace treadle::assembly {

namespace {

calc::Input::Object object_of(const Kind& kind, const Values& values, const Ground& ground) {
    calc::Input::Object out;
    for (const job::LayoutValue& value : with_units(kind, values, ground.units))
        out.emplace_back(value.name, calc::Input(value.text));
    return out;
}

} // namespace

Inputs::Inputs(const Kind& kind, const Values& values, const Ground& ground)
    : ground_(ground),
      object_(object_of(kind, values, ground)),
      tables_{ground.catalog.grades, ground.catalog.sections},
      reader_(object_, kind.inputs, tables_) {}

const std::string* Inputs::text(const char* name) const {
    for (const calc::Input::Member& member : object_)
        if (member.first == name)
            return member.second.text();
    return nullptr;
}

void Inputs::refuse_at(const char* name, const base::Refusal& inside) {
    refuse({name, inside.reason, inside.detail});
}

Length Inputs::size(const char* name) {
    const Length value = reader_.length(name);
    if (has(name) && !failed())
        if (auto fault = quantity::size_fault(value, name))
            refuse(*fault);
    return value;
}

Length Inputs::size_or(const char* name, Length usual) { return has(name) ? size(name) : usual; }

Length Inputs::place_or(const char* name, Length usual) {
    if (!has(name))
        return usual;
    const Length value = reader_.length(name);
    if (!failed())
        if (auto fault = quantity::place_fault(value, name))
            refuse(*fault);
    return value;
}

int Inputs::count_or(const char* name, int least, int most, int usual) {
    return has(name) ? reader_.count(name, least, most) : usual;
}

Angle Inputs::angle_or(const char* name, Angle usual) {
    return has(name) ? reader_.angle(name) : usual;
}

double Inputs::ratio_or(const char* name, double usual) {
    return has(name) ? reader_.ratio(name) : usual;
}

int Inputs::choice(const char* name) { return std::max(reader_.choice(name), 0); }

Section Inputs::section(const char* name) {
    const std::string* typed = text(name);
    if (typed == nullptr || failed())
        return {};
    const auto read = parse_section(*typed, ground_.units, ground_.catalog.sections, name);
    if (read.ok())
        return *read;
    refuse(read.refusal());
    return {};
}

std::string Inputs::grade(const char* name, const std::string& usual) {
    const std::string* typed = text(name);
    if (typed == nullptr)
        return usual;
    for (const Grade& grade : ground_.own_grades)
        if (grade.id == *typed)
            return *typed;
    if (ground_.catalog.grades.find(*typed) == nullptr)
        refuse({name, "No grade of this name is in the table or among the job's own.", ""});
    return *typed;
}

} // namespace treadle::assembly
