#include "archive/parts_list_headings.h"

#include "base/text.h"

#include <array>
#include <utility>

namespace treadle::archive {

namespace {

/// A heading and what it says. `sure`: it can mean nothing else.
struct HeadingWord {
    std::string_view word;
    Column holds;
    bool sure = true;
};
constexpr std::array k_heading_words{HeadingWord{"mark", Column::mark},
                                     HeadingWord{"piece mark", Column::mark},
                                     HeadingWord{"pc mark", Column::mark},
                                     HeadingWord{"piecemark", Column::mark},
                                     HeadingWord{"part", Column::mark, false},
                                     HeadingWord{"part no", Column::mark},
                                     HeadingWord{"part number", Column::mark},
                                     HeadingWord{"part mark", Column::mark},
                                     HeadingWord{"item", Column::mark, false},
                                     HeadingWord{"item no", Column::mark, false},
                                     HeadingWord{"pos", Column::mark, false},
                                     HeadingWord{"position", Column::mark, false},
                                     HeadingWord{"teil", Column::mark, false},
                                     HeadingWord{"bezeichnung", Column::mark, false},
                                     HeadingWord{"bezeichnung", Column::section, false},
                                     HeadingWord{"marca", Column::mark},
                                     HeadingWord{"pieza", Column::mark, false},
                                     HeadingWord{"no", Column::mark, false},
                                     HeadingWord{"no", Column::count, false},
                                     HeadingWord{"nr", Column::mark, false},
                                     HeadingWord{"nr", Column::count, false},
                                     HeadingWord{"#", Column::mark, false},
                                     HeadingWord{"#", Column::count, false},
                                     HeadingWord{"qty", Column::count},
                                     HeadingWord{"quantity", Column::count},
                                     HeadingWord{"count", Column::count},
                                     HeadingWord{"pcs", Column::count},
                                     HeadingWord{"pieces", Column::count},
                                     HeadingWord{"no off", Column::count},
                                     HeadingWord{"no req", Column::count},
                                     HeadingWord{"no reqd", Column::count},
                                     HeadingWord{"reqd", Column::count},
                                     HeadingWord{"required", Column::count, false},
                                     HeadingWord{"number off", Column::count},
                                     HeadingWord{"each", Column::count, false},
                                     HeadingWord{"anzahl", Column::count},
                                     HeadingWord{"menge", Column::count},
                                     HeadingWord{"stk", Column::count},
                                     HeadingWord{"stück", Column::count},
                                     HeadingWord{"stückzahl", Column::count},
                                     HeadingWord{"cantidad", Column::count},
                                     HeadingWord{"cant", Column::count},
                                     HeadingWord{"uds", Column::count},
                                     HeadingWord{"section", Column::section},
                                     HeadingWord{"profile", Column::section},
                                     HeadingWord{"shape", Column::section},
                                     HeadingWord{"size", Column::section, false},
                                     HeadingWord{"stock", Column::section, false},
                                     HeadingWord{"profil", Column::section},
                                     HeadingWord{"querschnitt", Column::section},
                                     HeadingWord{"abmessung", Column::section, false},
                                     HeadingWord{"perfil", Column::section},
                                     HeadingWord{"description", Column::section, false},
                                     HeadingWord{"description", Column::note, false},
                                     HeadingWord{"desc", Column::section, false},
                                     HeadingWord{"desc", Column::note, false},
                                     HeadingWord{"descripción", Column::section, false},
                                     HeadingWord{"descripción", Column::note, false},
                                     HeadingWord{"length", Column::length},
                                     HeadingWord{"len", Column::length},
                                     HeadingWord{"lgth", Column::length},
                                     HeadingWord{"lg", Column::length},
                                     HeadingWord{"cut length", Column::length},
                                     HeadingWord{"länge", Column::length},
                                     HeadingWord{"laenge", Column::length},
                                     HeadingWord{"zuschnitt", Column::length, false},
                                     HeadingWord{"largo", Column::length},
                                     HeadingWord{"longitud", Column::length},
                                     HeadingWord{"l", Column::length, false},
                                     HeadingWord{"grade", Column::grade},
                                     HeadingWord{"steel grade", Column::grade},
                                     HeadingWord{"material grade", Column::grade},
                                     HeadingWord{"spec", Column::grade, false},
                                     HeadingWord{"material", Column::grade, false},
                                     HeadingWord{"material", Column::section, false},
                                     HeadingWord{"mat", Column::grade, false},
                                     HeadingWord{"mat", Column::section, false},
                                     HeadingWord{"matl", Column::grade, false},
                                     HeadingWord{"matl", Column::section, false},
                                     HeadingWord{"güte", Column::grade},
                                     HeadingWord{"werkstoff", Column::grade},
                                     HeadingWord{"stahlsorte", Column::grade},
                                     HeadingWord{"calidad", Column::grade},
                                     HeadingWord{"remarks", Column::note},
                                     HeadingWord{"remark", Column::note},
                                     HeadingWord{"note", Column::note},
                                     HeadingWord{"notes", Column::note},
                                     HeadingWord{"comment", Column::note},
                                     HeadingWord{"comments", Column::note},
                                     HeadingWord{"bemerkung", Column::note},
                                     HeadingWord{"bemerkungen", Column::note},
                                     HeadingWord{"notas", Column::note},
                                     HeadingWord{"observaciones", Column::note},
                                     HeadingWord{"width", Column::width},
                                     HeadingWord{"wide", Column::width},
                                     HeadingWord{"breite", Column::width},
                                     HeadingWord{"ancho", Column::width},
                                     HeadingWord{"w", Column::width, false},
                                     HeadingWord{"b", Column::width, false},
                                     HeadingWord{"thickness", Column::thickness},
                                     HeadingWord{"thk", Column::thickness},
                                     HeadingWord{"thick", Column::thickness},
                                     HeadingWord{"dicke", Column::thickness},
                                     HeadingWord{"stärke", Column::thickness},
                                     HeadingWord{"espesor", Column::thickness},
                                     HeadingWord{"t", Column::thickness, false}};

std::string unit_named(std::string_view word) {
    constexpr std::pair<std::string_view, const char*> k_units[] = {{"mm", "mm"},
                                                                    {"cm", "cm"},
                                                                    {"m", "m"},
                                                                    {"in", "in"},
                                                                    {"in.", "in"},
                                                                    {"inch", "in"},
                                                                    {"inches", "in"},
                                                                    {"\"", "in"},
                                                                    {"ft", "ft"},
                                                                    {"ft.", "ft"},
                                                                    {"feet", "ft"},
                                                                    {"zoll", "in"}};
    for (const auto& [known, unit] : k_units)
        if (word == known)
            return unit;
    return "";
}

} // namespace

Heading heading_in(std::string_view cell) {
    std::string text = base::to_lower_ascii(cell_text(cell));
    for (const auto& [large, small] : {std::pair{"Ä", "ä"}, {"Ö", "ö"}, {"Ü", "ü"}, {"Ó", "ó"}})
        if (const std::size_t at = text.find(large); at != std::string::npos)
            text.replace(at, 2, small);
    Heading heading;
    std::string words;
    // "length (mm)", "length [mm]", "length, mm", "length mm": the unit is the last word.
    for (const char c : text) {
        const bool between = c == '(' || c == ')' || c == '[' || c == ']' || c == ',' || c == '/' ||
                             c == ':' || c == '_' || c == '-' || c == '\n';
        words += between ? ' ' : c;
    }
    std::string_view rest = base::trim(words);
    const std::size_t last = rest.rfind(' ');
    if (last != std::string_view::npos)
        heading.unit = unit_named(rest.substr(last + 1));
    if (!heading.unit.empty())
        rest = base::trim(rest.substr(0, last));
    for (const char c : rest)
        if (c != '.' && c != '\'' &&
            !(c == ' ' && !heading.word.empty() && heading.word.back() == ' '))
            heading.word += c;
    return heading;
}

std::vector<HeadingMeaning> meanings_of(const Heading& heading) {
    std::vector<HeadingMeaning> meanings;
    for (const HeadingWord& word : k_heading_words)
        if (word.word == heading.word)
            meanings.push_back({word.holds, word.sure});
    return meanings;
}

} // namespace treadle::archive
