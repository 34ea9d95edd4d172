#include "layout/running.h"

#include <cmath>

#include "layout/cards.h"
#include "layout/first_fault.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::place_fault;
using quantity::size_fault;

constexpr base::CardSymbol k_running_symbols[] = {{"L", "length"},
                                                  {"e1", "datum to the first"},
                                                  {"e2", "the last to the other end"},
                                                  {"n", "how many"},
                                                  {"p", "pitch"},
                                                  {"x", "place from the datum"}};

constexpr int k_most = 1000; // more than any bar has: a slip

} // namespace

const base::FormulaCard k_running_card{"running-places",
                                       "Equal pitch, each place from one datum",
                                       "p = (L - e1 - e2) / (n - 1), x = e1 + (i - 1) p",
                                       k_running_symbols,
                                       "from two places on",
                                       "derived-geometry",
                                       Evidence::derived,
                                       "each place once to the step, the pitch never"};

Length to_step(Length place, Length step) {
    if (!(step > Length{}))
        return place;
    return step * std::floor(place / step + 0.5 + 1e-9); // a half that lost its last bit is a half
}

base::Result<RunningPlaces> running_places(const RunningQuestion& q) {
    if (const auto fault = first_fault({size_fault(q.length, "length"),
                                        place_fault(q.first, "first"),
                                        place_fault(q.last, "last"),
                                        quantity::count_fault(q.count, 2, k_most, "count"),
                                        place_fault(q.step, "step")}))
        return *fault;
    const Length between = q.length - q.first - q.last;
    if (!(between > q.length * 1e-9))
        return base::Refusal{
            q.first >= q.length ? "first" : "last", "The ends leave no length between.", ""};
    RunningPlaces out;
    out.pitch = between / (q.count - 1.0);
    if (q.step > Length{} && !clearly_less(q.step, out.pitch))
        return base::Refusal{"step", "The step is as large as the pitch.", ""};
    for (int i = 0; i < q.count; ++i)
        out.places.push_back(to_step(q.first + out.pitch * static_cast<double>(i), q.step));
    return out;
}

base::Result<Working> running_working(const RunningQuestion& q) {
    const auto places = running_places(q);
    if (!places.ok())
        return places.refusal();
    return Working{&k_running_card,
                   {{"L", q.length},
                    {"e1", q.first},
                    {"e2", q.last},
                    {"n", quantity::Number{static_cast<double>(q.count), 0}}},
                   {"p", places->pitch},
                   q.step > Length{} ? "Each place rounded once from the datum; a rounded pitch "
                                       "would add its error up."
                                     : ""};
}

} // namespace treadle::layout
