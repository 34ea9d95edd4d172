// A job in an address: link.cpp.

#include "archive/base64url.h"
#include "archive/demo_files.h"
#include "archive/link.h"
#include "archive/packed.h"
#include "archive/short_words.h"

#include "assets/embedded.h"

#include <doctest/doctest.h>

using namespace treadle;
using archive_test::demo;

namespace {

archive::File read(const std::string& bytes) {
    auto file = archive::read_file(bytes);
    REQUIRE(file.ok());
    return std::move(file).value();
}

std::string link_of(const archive::File& file) {
    const auto link = archive::write_link(file.job, file.shop);
    REQUIRE(link.ok());
    return *link;
}

std::string field_of(const std::string& text) {
    const auto link = archive::read_link(text);
    return link.ok() ? "read" : link.refusal().field;
}

/// "j=1." with a right sum before whatever bytes.
std::string link_with(const std::string& packed) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8)
        bytes +=
            static_cast<char>((archive::check_sum(packed) >> static_cast<unsigned>(shift)) & 255U);
    return "j=1." + archive::to_base64url(bytes + packed);
}

/// As write_link packs it, whatever the text is.
std::string link_to(const std::string& json) {
    const archive::LinkDictionary& dictionary = archive::link_dictionary();
    return link_with(
        archive::pack(archive::shortened(json, dictionary.words).value(), dictionary.text));
}

void check_round(const archive::File& file) {
    const std::string link = link_of(file);
    const auto back = archive::read_link(link);
    REQUIRE(back.ok());
    CHECK(archive::write_file(back->file.job, back->file.shop) ==
          archive::write_file(file.job, file.shop));
    CHECK(link_of(back->file) == link);
}

/// `count` parts that differ in every figure and word.
archive::File made_up(int count) {
    archive::File file = read(demo("demo-metric.json"));
    const std::vector<job::PartRef> from = file.job.parts;
    file.job.parts.clear();
    for (int i = 0; i < count; ++i) {
        job::Part part = *from[static_cast<std::size_t>(i) % from.size()];
        part.id = "p" + std::to_string(i + 1);
        part.mark = "X" + std::to_string(i * 7919 % 1000);
        part.note = "Ø " + std::to_string(i * 104729 % 99991) + " \"é\" \\ \t½";
        part.count = 1 + i * 31 % 97;
        file.job.parts.push_back(std::make_shared<const job::Part>(part));
    }
    return file;
}

} // namespace

// The dictionary is half of every link that was ever sent: one other byte, and none of them opens.
// A better one is dictionary 2 of link version 2, beside this one.
TEST_CASE("dictionary 1 is the one that links were made with, for ever") {
    const auto bytes = assets::embedded("link/dictionary-1.txt");
    REQUIRE(bytes.has_value());
    CHECK(bytes->size() == 20396);
    CHECK(archive::check_sum(*bytes) == 0x72438A8AU);
    CHECK(archive::link_dictionary().words.size() == 41);
    CHECK(archive::link_dictionary().text.size() < 32'506);
}

TEST_CASE("both demo jobs go through a link and come back to the byte") {
    for (const char* const name : {"demo-inch.json", "demo-metric.json"}) {
        CAPTURE(name);
        const archive::File file = read(demo(name));
        check_round(file);
        CHECK(link_of(file).size() <= 1500);
    }
}

TEST_CASE("made-up jobs come back to the byte, however many parts they have") {
    for (const int count : {0, 1, 2, 17, 100}) {
        CAPTURE(count);
        check_round(made_up(count));
    }
}

TEST_CASE("a job that is too long is refused, and the file is named instead") {
    const archive::File file = made_up(2000);
    const auto link = archive::write_link(file.job, file.shop);
    REQUIRE_FALSE(link.ok());
    CHECK(link.refusal().field == "link");
    CHECK(link.refusal().reason == "This job is too long for a link; send the job file instead.");
}

TEST_CASE("any one letter that is another is found") {
    const std::string link = link_of(read(demo("demo-metric.json")));
    const std::string letters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_&=#%.+/ \n";
    int read_still = 0;
    for (std::size_t i = 0; i < link.size(); ++i)
        for (const char letter : letters) {
            std::string changed = link;
            changed[i] = letter;
            if (letter != link[i] && archive::read_link(changed).ok())
                ++read_still;
        }
    CHECK(read_still == 0);
}

TEST_CASE("a link that lost its end, or a letter, or has one more is refused") {
    const std::string link = link_of(read(demo("demo-metric.json")));
    for (std::size_t i = 0; i < link.size(); ++i) {
        CHECK(field_of(link.substr(0, i)) != "read");
        CHECK(field_of(link.substr(0, i) + link.substr(i + 1)) != "read");
    }
    for (const char* const more : {"A", "=", ".", "==", " ", "\n"})
        CHECK(field_of(link + more) == "link");
    CHECK(field_of(link + "&" + link) == "link");
    CHECK(field_of("") == "link");
    CHECK(field_of("view=present") == "link");
}

TEST_CASE("a newer link is told from a damaged one") {
    CHECK(field_of("j=2.AAAA") == "version");
    CHECK(field_of("j=17.AAAA&view=present") == "version");
    for (const char* const text : {"j=",
                                   "j=1",
                                   "j=1.",
                                   "j=1.AAAA",
                                   "j=0.AAAA",
                                   "j=-1.AAAA",
                                   "j=x.AAAA",
                                   "j=99999999999.AAAA",
                                   "j=01.AAAA"}) {
        CAPTURE(text);
        CHECK(field_of(text) == "link");
    }
    CHECK(field_of(link_to(R"({"format":"treadle-job","version":999})")) == "version");
}

TEST_CASE("with a right sum, what is packed is still not trusted") {
    const archive::LinkDictionary& dictionary = archive::link_dictionary();
    CHECK(field_of(link_with("x")) == "link");
    CHECK(field_of(link_with(archive::pack("\xFF", dictionary.text))) == "link");
    CHECK(field_of(link_with(archive::pack(std::string(3'000'000, ' '), dictionary.text))) ==
          "link");
    CHECK(field_of(link_with(archive::pack(std::string(500'000, '\x0B'), dictionary.text))) ==
          "link");
    CHECK(field_of(link_to("{}")) == "format");
    CHECK(field_of(link_to("no job")) == "file");
    CHECK(field_of("j=1." + std::string(70'000, 'A')) == "link");
}

TEST_CASE("a whole address is taken as well, with what else was wished") {
    const archive::File file = read(demo("demo-metric.json"));
    archive::LinkWishes wishes{"present", "machine", "answers", 12};
    const auto fragment = archive::write_link(file.job, file.shop, wishes);
    REQUIRE(fragment.ok());
    const auto address = archive::link_address("https://shop.example/treadle/", *fragment);
    REQUIRE(address.ok());
    const auto link = archive::read_link(*address);
    REQUIRE(link.ok());
    CHECK(link->wishes.view == "present");
    CHECK(link->wishes.lock == "machine");
    CHECK(link->wishes.hide == "answers");
    CHECK(link->wishes.step == 12);
    CHECK(field_of("#" + *fragment) == "read");
    CHECK(field_of("tracking=1&" + *fragment + "&x&y=&=z") == "read");
    CHECK(archive::holds_job("#j=2.x"));
    CHECK_FALSE(archive::holds_job("view=present&job=1"));
}

TEST_CASE("wishes that are none are left out") {
    const archive::LinkWishes wishes = archive::read_wishes(
        "view=<b>&lock=" + std::string(41, 'a') + "&hide=Answers&step=12x&toString=1");
    CHECK(wishes.view.empty());
    CHECK(wishes.lock.empty());
    CHECK(wishes.hide.empty());
    CHECK_FALSE(wishes.step.has_value());
    for (const char* const step : {"step=-1", "step=100001", "step=", "step=1e3"})
        CHECK_FALSE(archive::read_wishes(step).step.has_value());
    CHECK(archive::read_wishes("#step=0").step == 0);
}

TEST_CASE("a link to a lesson holds its name, its numbers and its step") {
    archive::LinkWishes wishes;
    wishes.lesson = "1-punching-force";
    wishes.seed = 7;
    wishes.step = 3;
    wishes.hide = "answers";
    const auto fragment = archive::write_lesson_link(wishes);
    REQUIRE(fragment.ok());
    CHECK(*fragment == "lesson=1-punching-force&seed=7&hide=answers&step=3");
    const archive::LinkWishes read = archive::read_wishes("#" + *fragment);
    CHECK(read.lesson == "1-punching-force");
    CHECK(read.seed == 7);
    CHECK(read.step == 3);
    CHECK(read.hide == "answers");
    CHECK_FALSE(archive::holds_job(*fragment));
    wishes.lesson = "lessons/first_One.json"; // as a shelf names it
    CHECK(archive::read_wishes(*archive::write_lesson_link(wishes)).lesson == wishes.lesson);
}

TEST_CASE("a lesson in a link leads nowhere else") {
    for (const char* const name : {"../up.json",
                                   "/etc/passwd.json",
                                   "http://host/a.json",
                                   "a//b.json",
                                   "<b>.json",
                                   "a b",
                                   "A lesson",
                                   ""}) {
        CAPTURE(name);
        CHECK(archive::read_wishes(std::string("lesson=") + name).lesson.empty());
        archive::LinkWishes wishes;
        wishes.lesson = name;
        CHECK(archive::write_lesson_link(wishes).refusal().field == "link");
    }
    CHECK_FALSE(archive::read_wishes("lesson=a&seed=-1").seed.has_value());
    CHECK_FALSE(archive::read_wishes("lesson=a&seed=1x").seed.has_value());
}

TEST_CASE("only a page on the net has an address to send") {
    for (const char* const page : {"",
                                   "file:///home/x/treadle.html",
                                   "javascript:alert(1)",
                                   "https://host/#x",
                                   "https://ho st/",
                                   "ftp://host/"}) {
        CAPTURE(page);
        const auto address = archive::link_address(page, "j=1.A");
        REQUIRE_FALSE(address.ok());
        CHECK(address.refusal().field == "base");
    }
    CHECK(*archive::link_address("http://saw-shop/", "j=1.A") == "http://saw-shop/#j=1.A");
}
