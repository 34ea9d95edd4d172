#include "ui/widgets/semantics.h"

#include <doctest/doctest.h>

using treadle::ui::Node;
using treadle::ui::Role;
using treadle::ui::Semantics;

namespace {

void two_keys(Semantics& tree, const char* second) {
    tree.begin_frame();
    tree.add("list", Role::list);
    tree.open_last();
    tree.add("a", Role::button).name = "First";
    tree.add("b", Role::button).name = second;
    (void)tree.close();
}

} // namespace

TEST_CASE("only what changed leaves for the mirror") {
    Semantics tree;
    two_keys(tree, "Second");
    CHECK(tree.end_frame(""));
    const std::string all = tree.take_changes();
    CHECK(all.find("\"order\"") != std::string::npos);
    CHECK(all.find("First") != std::string::npos);

    two_keys(tree, "Second");
    CHECK_FALSE(tree.end_frame(""));
    CHECK(tree.take_changes().empty());

    two_keys(tree, "Other");
    CHECK(tree.end_frame(""));
    const std::string some = tree.take_changes();
    CHECK(some.find("Other") != std::string::npos);
    CHECK(some.find("First") == std::string::npos);
    CHECK(some.find("\"order\"") == std::string::npos);
}

TEST_CASE("a node that went away changes the order") {
    Semantics tree;
    two_keys(tree, "Second");
    tree.end_frame("");
    (void)tree.take_changes();
    tree.begin_frame();
    tree.add("a", Role::button).name = "First";
    CHECK(tree.end_frame(""));
    const std::string changes = tree.take_changes();
    CHECK(changes.find("\"order\"") != std::string::npos);
    CHECK(tree.find("b") == nullptr);
    CHECK(tree.find("a")->parent == -1);
}

TEST_CASE("reused memory keeps nothing of the node before") {
    Semantics tree;
    tree.begin_frame();
    Node& first = tree.add("a", Role::number);
    first.value = "1";
    first.error = "wrong";
    first.on = true;
    first.options = {"x"};
    tree.end_frame("");
    for (int frame = 0; frame < 2; ++frame) {
        tree.begin_frame();
        tree.add("a", Role::button);
        tree.end_frame("");
    }
    const Node* node = tree.find("a");
    REQUIRE(node != nullptr);
    CHECK(node->value.empty());
    CHECK(node->error.empty());
    CHECK(node->options.empty());
    CHECK_FALSE(node->on);
}

TEST_CASE("two nodes of one id stay two") {
    Semantics tree;
    tree.begin_frame();
    tree.add("a", Role::button).name = "First";
    tree.add("a", Role::button).name = "Second";
    tree.end_frame("");
    CHECK(tree.size() == 2);
    CHECK(tree.at(0).id != tree.at(1).id);
}

TEST_CASE("a wish for the focus is told once") {
    Semantics tree;
    tree.begin_frame();
    tree.add("a", Role::button);
    tree.end_frame("");
    (void)tree.take_changes();
    tree.begin_frame();
    tree.add("a", Role::button);
    CHECK(tree.end_frame("a"));
    CHECK(tree.take_changes().find("\"focus\"") != std::string::npos);
}

TEST_CASE("a field that gives every letter says so to the mirror, and reused memory does not") {
    Semantics tree;
    tree.begin_frame();
    tree.add("field", Role::text).live = true;
    CHECK(tree.end_frame(""));
    CHECK(tree.take_changes().find("\"live\":true") != std::string::npos);
    for (int frame = 0; frame < 2; ++frame) { // the second one is drawn in the memory of the first
        tree.begin_frame();
        tree.add("field", Role::text);
        tree.end_frame("");
    }
    CHECK_FALSE(tree.find("field")->live);
}
