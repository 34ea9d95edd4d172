// The input of one calculation, as given to the command: JSON to calc::Input, name by name.

#include "archive/archive.h"
#include "archive/readers.h"
#include "base/text.h"

namespace treadle::archive {

namespace {

calc::Input::Object read_members(const Place& at) {
    calc::Input::Object object;
    std::uint32_t child = at.node().first;
    for (std::uint32_t i = 0; i < at.node().size && !at.failed(); ++i) {
        const Node& member = at.tree().nodes[child];
        calc::Input value;
        read_value(Place(at, child, static_cast<int>(i)), value);
        object.emplace_back(std::string(at.tree().key_of(member)), std::move(value));
        child = member.next;
    }
    return object;
}

/// A fault of the whole text belongs to what the user typed, which is no file.
base::Refusal said_of(const char* what, base::Refusal refusal) {
    if (refusal.field == "file")
        refusal.field = what;
    return refusal;
}

base::Refusal take(Reading& reading, const char* what) {
    return said_of(what, std::move(*reading.refusal));
}

} // namespace

void read_value(const Place& at, calc::Input::Object& out) {
    if (at.must_be(Kind::object))
        out = read_members(at);
}

void read_value(const Place& at, calc::Input& out) {
    switch (at.node().kind) {
    case Kind::text: {
        std::string text;
        read_value(at, text);
        out = calc::Input(std::move(text));
        return;
    }
    case Kind::number: {
        double number = 0.0;
        read_value(at, number);
        out = calc::Input(base::write_number(number));
        return;
    }
    case Kind::truth:
        out = calc::Input(at.node().truth ? "true" : "false");
        return;
    case Kind::list: {
        calc::Input::List list;
        read_value(at, list);
        out = calc::Input(std::move(list));
        return;
    }
    case Kind::object:
        out = calc::Input(read_members(at));
        return;
    case Kind::null:
        at.refuse("This is empty.", "leave it out when it is not known");
        return;
    }
}

base::Result<calc::Input> read_calc_input(std::string_view bytes) {
    const base::Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return said_of("in", tree.refusal());
    Reading reading{tree.value(), std::nullopt};
    const Place root(reading, 0);
    calc::Input input;
    if (root.must_be(Kind::object))
        read_value(root, input);
    if (reading.refusal)
        return take(reading, "in");
    return input;
}

base::Result<CalcRequest> read_calc_line(std::string_view line) {
    const base::Result<Tree> tree = read_tree(line);
    if (!tree.ok())
        return said_of("line", tree.refusal());
    Reading reading{tree.value(), std::nullopt};
    const Place root(reading, 0);
    CalcRequest request;
    Members members(root);
    members.need("calc", request.name).need("in", request.input);
    members.finish();
    if (!root.failed() && request.input.object() == nullptr)
        root.refuse("This has to be a group of named values.", "", "in");
    if (reading.refusal)
        return take(reading, "line");
    return request;
}

} // namespace treadle::archive
