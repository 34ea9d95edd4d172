// The checks see what they are there to see: each is shown a fault of its kind.

#include <doctest/doctest.h>

#include "architecture/mutable_state.h"
#include "architecture/tree.h"

using namespace treadle::architecture;

using Names = std::vector<std::string>;

TEST_CASE("mutable state is found wherever it hides") {
    CHECK(mutable_state("int g = 3;") == Names{"g"});
    CHECK(mutable_state("namespace a {\nnamespace {\nstd::vector<int> g_list{1, 2};\n}\n}") ==
          Names{"g_list"});
    CHECK(mutable_state("static const char* g_word = \"a\";") == Names{"g_word"});
    CHECK(mutable_state("int f() { static int calls = 0; return ++calls; }") == Names{"calls"});
    CHECK(mutable_state("int f() { thread_local int calls{}; return ++calls; }") == Names{"calls"});
    CHECK(mutable_state("struct A { static int count; };") == Names{"count"});
    CHECK(mutable_state("int f(int a = 1) { return a; }\nint g = 2;") == Names{"g"});
    CHECK(mutable_state("bool operator==(A a, A b) { return true; }\nint g;") == Names{"g"});
}

TEST_CASE("constants, functions and types are not state") {
    CHECK(mutable_state("constexpr int k_a = 1;\nconst char* const k_b = \"x\";").empty());
    CHECK(mutable_state("constexpr const char* k_c[] = {\"a\", \"b\"};\nextern const int k_d;")
              .empty());
    CHECK(mutable_state(
              "struct A { int b = 1; static int make(int x); static constexpr int k = 2; };")
              .empty());
    CHECK(mutable_state(
              "using B = int;\nenum class C { a, b };\ntemplate <class T> struct D { T t; };")
              .empty());
    CHECK(mutable_state("// int g = 1;\n/* static int g; */\n#define G int g = 1;\n").empty());
    CHECK(mutable_state("const char* f() { static const A a = make(); return \"static int g;\"; }")
              .empty());
}

TEST_CASE("an include is read with its marks") {
    const auto found =
        includes_of({"#include \"base/text.h\"", "  #  include <cmath> // why", "// #include <x>"});
    REQUIRE(found.size() == 2);
    CHECK(found[0].text == "base/text.h");
    CHECK(found[0].quoted);
    CHECK(found[1].text == "cmath");
    CHECK_FALSE(found[1].quoted);
}

TEST_CASE("a folder without a room is seen") {
    CHECK(room_of("core/base/text.h")->name == "base");
    CHECK(room_of("core/process/deep/punch.h")->name == "process");
    CHECK(room_of("web/ui/views/desk.h")->name == "views");
    CHECK(room_of("web/main.cpp")->name == "web");
    CHECK(room_of("core/utils/text.h") == nullptr);
    CHECK(room_of("web/ui/gadgets/dial.h") == nullptr);
    CHECK(room_of("core/stray.h") == nullptr);
}
