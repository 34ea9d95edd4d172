// Where the fuzzers of the readers start: jobs and shops with one thing each of all that the demo
// files hold, journals of a few records, links, lists, and a dictionary of the format's words.
//
//   fuzz_reader_seeds FOLDER DICTIONARY SCHEMA...     into FOLDER/job, /shop and so on

#include "archive/archive.h"
#include "archive/base64url.h"
#include "archive/bundle.h"
#include "archive/history.h"
#include "archive/journal.h"
#include "archive/link.h"
#include "archive/packed.h"
#include "archive/parts_list.h"
#include "archive/progress_file.h"
#include "archive/short_words.h"

#include "assets/embedded.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <string_view>

#include "fuzz/must.h"
#include "fuzz/small_files.h"

using namespace treadle;
using archive::Moment;

namespace {

class Folder {
public:
    explicit Folder(const std::filesystem::path& path) : path_(path) {
        std::filesystem::create_directories(path);
    }
    void put(const std::string& bytes) {
        std::ofstream(path_ / std::to_string(count_++), std::ios::binary) << bytes;
    }

private:
    std::filesystem::path path_;
    int count_ = 0;
};

/// The value of the member "shop" of a written file.
std::string shop_text(const equipment::Shop& shop, quantity::UnitSystem system) {
    job::Job job;
    job.name = "a";
    job.style.system = system;
    const std::string text = fuzz::without_blanks(archive::write_file(job, shop));
    const std::string key = "\"shop\":";
    const std::size_t at = text.find(key) + key.size();
    return text.substr(at, text.size() - at - 1);
}

void put_steps(Folder& journals, const archive::File& file) {
    const auto shop = std::make_shared<const equipment::Shop>(fuzz::small_shop(file.shop));
    const Moment before{fuzz::with_part(file, 0).job, std::make_shared<const equipment::Shop>()};
    const auto step = [&](const Moment& after) {
        journals.put("\x01" + archive::write_step(before, after, "Change"));
    };
    for (std::size_t i = 1; i < file.job.parts.size(); ++i) {
        Moment after = before;
        after.job.parts.push_back(file.job.parts[i]);
        step(after);
    }
    Moment after = before;
    after.job.parts.clear();
    step(after);
    after.job.name = "Another";
    step(after);
    after.shop = shop;
    step(after);
}

void put_records(Folder& journals) {
    const archive::RecordName one{1, "w"};
    const archive::RecordName two{2, "w"};
    const std::string zero(1, '\0');
    journals.put(zero + archive::write_record(two, one, "body"));
    journals.put(zero + archive::write_record(one, std::nullopt, ""));
    journals.put(zero + archive::write_head({one, two, one}));
    job::Progress progress;
    progress.job = "a";
    progress.steps = {{"p1 0", "x", true, 3}, {"p1 1", "y", false, 0}};
    progress.note = "n";
    progress.when = "Monday";
    journals.put("\x02" + archive::write_progress({progress}));
}

/// As journal_fuzz.cpp takes them apart: a base, steps on it, and the head.
void put_journals(Folder& journals) {
    const auto record = [](int kind, int number, int follows, const std::string& body) {
        return std::string{static_cast<char>(kind + 8 * number), static_cast<char>(follows)} +
               body + "\n";
    };
    const auto rename = [](const std::string& name) {
        return R"({"format":"treadle-step","version":1,"words":"name","header":{"units":"metric","name":")" +
               name + R"("}})";
    };
    constexpr int k_none = 255;
    const std::string base = "\x03" + record(0, 1, k_none, "");
    const std::string two = record(3, 2, 1, rename("b"));
    const std::string three = record(3, 3, 2, rename("c"));
    journals.put(base + two + three + record(1, 1, 3, ""));
    journals.put(base + two + three + record(1, 1, 3, "cursor"));
    journals.put(base + three + record(1, 1, 3, ""));
    journals.put(base + two + record(0, 5, 2, "") + record(1, 1, 2, ""));
    journals.put(base + two + record(3, 4, 1, rename("d")) + record(1, 1, 2, ""));
    journals.put(base + record(2, 0, 0, "head") + two);
    journals.put(
        base +
        record(3, 2, 1, R"({"format":"treadle-step","version":1,"words":"out","at":1,"out":1})") +
        record(1, 1, 2, ""));
}

/// As link_fuzz.cpp takes them apart.
void put_links(Folder& links, const archive::File& file) {
    for (std::size_t i = 0; i < file.job.parts.size(); ++i) {
        const archive::File small = fuzz::with_part(file, i);
        const auto link = archive::write_link(small.job, small.shop, {"present", "", "", 3});
        fuzz::must(link.ok());
        links.put(std::string(1, '\0') + *link);
        const std::string letters = link->substr(4, link->find('&') - 4);
        const std::string packed = archive::from_base64url(letters).value_or("").substr(4);
        links.put("\x01" + packed);
        links.put("\x02" + packed);
        const std::string json = fuzz::without_blanks(archive::write_file(small.job, small.shop));
        links.put("\x03" + archive::shortened(json, archive::link_dictionary().words).value());
    }
    links.put("\x02" + archive::pack("plain", ""));
}

/// As csv_fuzz.cpp takes them: two bytes of what the user says, then the list.
void put_lists(Folder& lists, const archive::File& file, const job::Catalog& catalog) {
    for (std::size_t i = 0; i < file.job.parts.size(); ++i)
        lists.put("\x01" + std::string(1, '\0') +
                  archive::write_parts_csv(fuzz::with_part(file, i).job, catalog));
    const std::string both = "\x02" + std::string(1, '\0');
    lists.put(both +
              "Mark;Qty;Profile;Length (mm);Grade;Note\r\nA1;2;FL 50x10;1.250,5;S235JR;x\r\n");
    lists.put(both + "Mark\tQty\tSize\tLength\n\"A 1\"\t4\tL3X3X1/4\t1'-6 1/2\"\n\t\t\t\n");
    lists.put(both +
              "\xEF\xBB\xBFmark,count,width in,thickness in,length in\nP1,3,6,1/2,9\nTotal,3,,,\n");
    lists.put(both + "sep=;\nmark;section;length\nB;PL 3/8 x 6;12-Mar\nC;=\"L2X2X1/4\";46024\n");
    lists.put("\x15\x21" + std::string("X1,12,20 mm round bar,500\nX2,1,HSS2X2X1/4,3 ft\n"));
}

void put_files(Folder& files, const archive::File& file) {
    for (std::size_t i = 0; i < 3; ++i) {
        const archive::File small = fuzz::with_part(file, i);
        files.put(std::string(1, '\0') +
                  fuzz::without_blanks(archive::write_bundle(
                      {{archive::JobState::kept, small}, {archive::JobState::trash, small}})));
    }
    for (const equipment::Shop& shop : fuzz::small_shops(file.shop))
        files.put("\x01" +
                  fuzz::without_blanks(archive::write_shop_file(shop, file.job.style.system)));
    files.put("\x02" +
              std::string(R"({"format":"treadle-shelf","version":1,"entries":[{"kind":"lesson",)"
                          R"("title":"First","note":"n","file":"lessons/first.json"},)"
                          R"({"kind":"shop","title":"S","note":"","file":"a-b_c.json"}]})"));
    for (const std::string_view path : assets::embedded_under("lessons/"))
        files.put("\x03" + fuzz::without_blanks(std::string(assets::embedded(path).value_or(""))));
}

/// Every short quoted word of the text, with its quotes.
void add_words(std::set<std::string>& words, const std::string& text) {
    for (std::size_t at = text.find('"'); at != std::string::npos; at = text.find('"', at + 1)) {
        const std::size_t end = text.find('"', at + 1);
        if (end == std::string::npos)
            return;
        const std::string word = text.substr(at + 1, end - at - 1);
        if (!word.empty() && word.size() <= 20 &&
            word.find_first_not_of("abcdefghijklmnopqrstuvwxyz_-0123456789") == std::string::npos)
            words.insert("\\\"" + word + "\\\"");
        at = end;
    }
}

} // namespace

int main(int count, char** arguments) {
    if (count < 4)
        return 1;
    const std::filesystem::path folder = arguments[1];
    Folder jobs(folder / "job");
    Folder shops(folder / "shop");
    Folder journals(folder / "journal");
    Folder links(folder / "link");
    Folder lists(folder / "csv");
    Folder files(folder / "files");
    const auto catalog = archive::read_catalog();
    fuzz::must(catalog.ok());
    std::set<std::string> words{"1 in",   "3/8 in", "12 mm",  "1 ft",  "45 ton",    "230 kN",
                                "65 ksi", "36 MPa", "90 deg", "50 lb", "20 kg",     "5 hp",
                                "240 V",  "true",   "false",  "null",  "{}",        "[]",
                                "1e9",    "-1",     "0.5",    "\\\":", "\\\",\\\"", "\\\\u0000"};
    for (const char* name : {"demo/demo-inch.json", "demo/demo-metric.json"}) {
        const auto file = archive::read_file(*assets::embedded(name));
        fuzz::must(file.ok());
        for (std::size_t i = 0; i < file->job.parts.size(); ++i) {
            const archive::File small = fuzz::with_part(*file, i);
            const std::string text = archive::write_file(small.job, small.shop);
            jobs.put(fuzz::without_blanks(text));
            jobs.put(text);
        }
        for (const equipment::Shop& shop : fuzz::small_shops(file->shop)) {
            const bool inch = file->job.style.system == quantity::UnitSystem::inch;
            shops.put((inch ? "\x02" : "\x01") + shop_text(shop, file->job.style.system));
            job::Job job;
            job.name = "a";
            jobs.put(fuzz::without_blanks(archive::write_file(job, shop)));
        }
        put_steps(journals, *file);
        put_links(links, *file);
        put_lists(lists, *file, *catalog);
        put_files(files, *file);
        add_words(words, fuzz::without_blanks(archive::write_file(file->job, file->shop)));
    }
    put_records(journals);
    put_journals(journals);
    for (int i = 3; i < count; ++i) {
        std::ifstream schema(arguments[i], std::ios::binary);
        add_words(words, std::string{std::istreambuf_iterator<char>(schema), {}});
    }
    std::ofstream dictionary(arguments[2], std::ios::binary);
    for (const std::string& word : words)
        dictionary << '"' << word << "\"\n";
    return words.size() > 200 ? 0 : 1;
}
