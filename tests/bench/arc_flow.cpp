// Cutting lists as whole-number programmes for a general solver: tests/bench/stock.
//
//   arc_flow FILE MODEL.mps    the one list of the file; prints columns and rows
//   arc_flow made FILE         writes made-up lists, always the same
//
// Graph  Valerio de Carvalho 1999: a bar is a path from 0 to its length. Pieces by falling length,
//        one after the other, each as often in a row as it is asked for; what is left is passed
//        over from one place that pieces reach to the next. The search's exact transformations
//        (kerf, common unit, longest sum) are made first, to the solver's good.

#include "archive/cut_text.h"

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

#include "cutting/lists.h"

namespace {

using namespace treadle;

struct Arc {
    int from;
    int to;
    int piece; ///< none passed over: -1
};

std::vector<Arc> arcs_of(const cutting::CutList& list) {
    const int length = list.stock.front().closed;
    const auto places = static_cast<std::size_t>(length) + 1;
    std::vector<char> reached(places, 0);
    reached[0] = 1;
    std::vector<Arc> arcs;
    for (std::size_t i = 0; i < list.size(); ++i) {
        const int piece = list.length[i];
        // How many more may follow; -1 where no path of pieces so far comes by.
        std::vector<int> more(places, -1);
        for (int at = 0; at <= length; ++at) {
            const auto here = static_cast<std::size_t>(at);
            if (reached[here] != 0)
                more[here] = list.demand[i];
            if (more[here] <= 0 || at + piece > length)
                continue;
            arcs.push_back({at, at + piece, static_cast<int>(i)});
            int& there = more[static_cast<std::size_t>(at + piece)];
            there = std::max(there, more[here] - 1);
        }
        for (std::size_t at = 0; at < places; ++at)
            reached[at] = reached[at] != 0 || more[at] >= 0 ? 1 : 0;
    }
    reached.back() = 1;
    int before = 0;
    for (int at = 1; at <= length; ++at)
        if (reached[static_cast<std::size_t>(at)] != 0) {
            if (before > 0)
                arcs.push_back({before, at, -1});
            before = at;
        }
    return arcs;
}

void write_model(const cutting::CutList& list, const std::string& path) {
    const int length = list.stock.front().closed;
    const std::vector<Arc> arcs = arcs_of(list);
    std::vector<char> used(static_cast<std::size_t>(length) + 1, 0);
    for (const Arc& arc : arcs)
        used[static_cast<std::size_t>(arc.from)] = used[static_cast<std::size_t>(arc.to)] = 1;
    std::ostringstream mps;
    mps << "NAME arcs FREE\nROWS\n N bars\n";
    std::size_t rows = list.size();
    for (std::size_t at = 0; at < used.size(); ++at)
        if (used[at] != 0) {
            mps << " E f" << at << '\n';
            ++rows;
        }
    for (std::size_t i = 0; i < list.size(); ++i)
        mps << " G d" << i << '\n';
    mps << "COLUMNS\n MARK0 'MARKER' 'INTORG'\n z bars 1 f0 -1\n z f" << length << " 1\n";
    for (std::size_t a = 0; a < arcs.size(); ++a) {
        mps << " x" << a << " f" << arcs[a].from << " 1 f" << arcs[a].to << " -1\n";
        if (arcs[a].piece >= 0)
            mps << " x" << a << " d" << arcs[a].piece << " 1\n";
    }
    mps << " MARK1 'MARKER' 'INTEND'\nRHS\n";
    long long pieces = 0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        mps << " rhs d" << i << ' ' << list.demand[i] << '\n';
        pieces += list.demand[i];
    }
    mps << "BOUNDS\n UP bnd z " << pieces << '\n';
    for (std::size_t a = 0; a < arcs.size(); ++a)
        mps << " UP bnd x" << a << ' ' << pieces << '\n';
    mps << "ENDATA\n";
    std::ofstream(path) << mps.str();
    std::cout << arcs.size() + 1 << ' ' << rows << '\n';
}

void write_list(std::ostream& out, const std::string& name, const cutting::CutProblem& problem) {
    out << "instance " << name << "\nstock " << problem.stock.front().length << "\nkerf "
        << problem.kerf << "\ntypes " << problem.pieces.size() << '\n';
    for (const cutting::CutPiece& piece : problem.pieces)
        out << piece.length << ' ' << piece.count << '\n';
    out << "end\n";
}

void write_made(const std::string& path) {
    std::ofstream out(path);
    for (std::uint32_t seed = 1; seed <= 2; ++seed) {
        const std::string end = "_s" + std::to_string(seed);
        write_list(out, "inch_8_40" + end, test::shop_list(seed, true, 8, 40));
        write_list(out, "mm_8_40" + end, test::shop_list(seed, false, 8, 40));
        write_list(out, "inch_20_150" + end, test::shop_list(seed, true, 20, 150));
        write_list(out, "threes_60" + end, test::triplets(seed, 20));
        write_list(out, "threes_120" + end, test::triplets(seed, 40));
    }
}

} // namespace

int main(int count, char** words) {
    if (count != 3) {
        std::cerr << "arc_flow FILE MODEL.mps | arc_flow made FILE\n";
        return 2;
    }
    if (std::string(words[1]) == "made") {
        write_made(words[2]);
        return 0;
    }
    std::ifstream file(words[1], std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    const auto lists = archive::read_cut_text(text.str());
    if (!lists || lists->size() != 1) {
        std::cerr << words[1] << ": one list is needed\n";
        return 1;
    }
    const auto list = cutting::cut_list(lists->front().problem);
    if (!list || list->stock.size() != 1 || list->ends || list->stock.front().limited()) {
        std::cerr << words[1] << ": one kind of bar, as many as it takes, is needed\n";
        return 1;
    }
    write_model(*list, words[2]);
    return 0;
}
