// Where the fuzzer starts: each calculation with its examples, as a line and as inputs, and a
// dictionary of their names, words and units.
//
//   fuzz_seeds FOLDER DICTIONARY

#include "archive/archive.h"
#include "calc/answer_json.h"
#include "calc/valid_input.h"

#include <fstream>
#include <set>
#include <string>
#include <utility>

using namespace treadle;

namespace {

void write(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

/// As calc_fuzz.cpp takes inputs apart; only plain texts have such a form.
std::string
as_inputs(std::size_t place, const calc::Calculation& calculation, const calc::Input::Object& in) {
    std::string bytes = "\x02";
    bytes += static_cast<char>(place);
    for (const auto& [name, value] : in) {
        for (std::size_t i = 0; i < calculation.inputs.size(); ++i)
            if (name == calculation.inputs[i].name)
                bytes += static_cast<char>(i);
        bytes += value.text() != nullptr ? *value.text() : "";
        bytes += '\n';
    }
    return bytes;
}

void add_words(std::set<std::string>& words, const calc::InputSpec& spec) {
    words.insert(spec.name);
    words.insert(spec.example);
    std::string word;
    for (const char* c = spec.choices; *c != '\0'; ++c) {
        if (*c != '|')
            word += *c;
        if (*c == '|' || c[1] == '\0')
            words.insert(std::exchange(word, ""));
    }
}

} // namespace

int main(int count, char** arguments) {
    const auto catalog = archive::read_catalog();
    if (count != 3 || !catalog)
        return 1;
    const std::string folder = arguments[1];
    const calc::Tables tables{catalog->grades, catalog->sections};
    std::set<std::string> words{"calc", "in",   " mm",   " in",   "'",   " ft", " kN",
                                " ton", " ksi", " MPa",  " deg",  " hp", " V",  " A",
                                " lb",  " kg",  "1/2",   "-",     "e9",  "0.",  "½",
                                "M20",  " %",   "angle", "radius"};
    std::size_t seed = 0;
    const auto all = calc::all();
    for (std::size_t place = 0; place < all.size(); ++place) {
        const calc::Calculation& calculation = *all[place];
        words.insert(calculation.name);
        for (const calc::InputSpec& spec : calculation.inputs) {
            add_words(words, spec);
            const auto in = test::valid_input(calculation, spec.name, tables);
            if (!in)
                continue;
            const std::string name = folder + "/" + std::to_string(seed++);
            write(name + "-line", "\x01" + calc::request_json(calculation.name, calc::Input(*in)));
            write(name + "-inputs", as_inputs(place, calculation, *in));
        }
    }
    for (const char* text : {"1-3/8 in",
                             "4' 6-1/2\"",
                             "35 mm",
                             "5-3-1/2",
                             "12,5 mm",
                             "½",
                             "45 ton",
                             "230 kN",
                             "65 ksi",
                             "90°",
                             "0.2836 lb/in3",
                             "15 %",
                             "1 1/2 hp"})
        write(folder + "/" + std::to_string(seed++) + "-quantity", std::string(1, '\0') + text);
    std::string dictionary;
    for (const std::string& word : words) {
        if (word.empty() || word.size() > 60)
            continue;
        dictionary += '"';
        for (const char c : word) {
            constexpr const char* k_hex = "0123456789ABCDEF";
            const auto code = static_cast<unsigned char>(c);
            if (c == '"' || c == '\\')
                dictionary += std::string("\\") + c;
            else if (code >= 0x80)
                dictionary += std::string("\\x") + k_hex[code >> 4U] + k_hex[code & 0xFU];
            else
                dictionary += c;
        }
        dictionary += "\"\n";
    }
    write(arguments[2], dictionary);
    return seed > 100 ? 0 : 1;
}
