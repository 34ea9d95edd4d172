#include "layout/picket.h"

#include <cmath>
#include <string>

#include "layout/cards.h"
#include "layout/first_fault.h"
#include "layout/running.h"

namespace treadle::layout {

namespace {

using base::Evidence;
using quantity::Number;
using quantity::place_fault;
using quantity::size_fault;

constexpr base::CardSymbol k_gap_symbols[] = {{"L", "clear opening"},
                                              {"w", "picket"},
                                              {"G", "limit on the gap"},
                                              {"n", "pickets"},
                                              {"g", "clear gap"}};
constexpr base::CardSymbol k_post_symbols[] = {{"R", "run over all"},
                                               {"P", "post"},
                                               {"S", "greatest spacing of posts"},
                                               {"N", "panels"},
                                               {"c", "clear between posts"}};
constexpr base::CardSymbol k_tread_symbols[] = {
    {"t", "tread"}, {"n", "pickets on a tread"}, {"w", "picket"}, {"g", "clear gap"}};

constexpr double k_most = 1000.0; // more in one panel is a slip in the unit

/// Up, but an exact fit that lost its last bits stays what it is.
double count_up(double value) { return std::ceil(value - 1e-9); }

bool equal(Length a, Length b) { return !clearly_less(a, b) && !clearly_less(b, a); }

Length widest(const PicketQuestion& q, const PicketLayout& out) {
    if (out.faces.empty())
        return out.gap;
    Length most = larger(out.faces.front(), q.opening - out.faces.back() - q.picket);
    for (std::size_t i = 1; i < out.faces.size(); ++i)
        most = larger(most, out.faces[i] - out.faces[i - 1] - q.picket);
    return most;
}

base::Result<double> least_count(const PicketQuestion& q) {
    const bool closed = q.ends == PanelEnds::picket;
    const Length module = q.picket + q.limit;
    const double fit = count_up((q.opening + (closed ? q.limit : -q.limit)) / module);
    const double least = closed ? 2.0 : 0.0;
    const double n = fit > least ? fit : least;
    if (n > k_most)
        return base::Refusal{"opening", "So many pickets are no panel: check the units.", "1000"};
    return n;
}

std::string limit_note(Length gap, Length limit) {
    if (clearly_less(limit, gap))
        return "Over the limit: the sphere passes.";
    if (equal(gap, limit))
        return "Warning: the gap equals the limit, and a sphere of that size touches both sides. "
               "Plan 1/8 in (3 mm) under it.";
    return "Plan 1/8 in (3 mm) under the code's limit (common practice).";
}

} // namespace

const base::FormulaCard k_picket_gap_card{"picket-gap",
                                          "Least number of pickets and their equal gap",
                                          "n = ceil((L - G) / (w + G)), g = (L - n w) / (n + 1)",
                                          k_gap_symbols,
                                          "a gap at both posts",
                                          "derived-geometry",
                                          Evidence::derived,
                                          "pickets up"};
const base::FormulaCard k_picket_gap_closed_card{
    "picket-gap-closed",
    "Least number of pickets and their equal gap",
    "n = ceil((L + G) / (w + G)), g = (L - n w) / (n - 1)",
    k_gap_symbols,
    "a picket against both posts",
    "derived-geometry",
    Evidence::derived,
    "pickets up"};
const base::FormulaCard k_post_panels_card{"post-panels",
                                           "Panels of a run and the clear opening of each",
                                           "N = ceil(R / S), c = (R - (N + 1) P) / N",
                                           k_post_symbols,
                                           "a post at either end",
                                           "derived-geometry",
                                           Evidence::derived,
                                           "panels up"};
const base::FormulaCard k_picket_per_tread_card{"picket-per-tread",
                                                "Gap with so many pickets on each tread",
                                                "g = t / n - w",
                                                k_tread_symbols,
                                                "pickets at equal pitch up the stair",
                                                "derived-geometry",
                                                Evidence::derived,
                                                ""};

base::Result<PicketLayout> picket_layout(const PicketQuestion& q) {
    if (const auto fault = first_fault({size_fault(q.opening, "opening"),
                                        size_fault(q.picket, "picket"),
                                        size_fault(q.limit, "limit"),
                                        place_fault(q.step, "step")}))
        return *fault;
    const bool closed = q.ends == PanelEnds::picket;
    const auto n = least_count(q);
    if (!n.ok())
        return n.refusal();
    PicketLayout out;
    out.count = static_cast<int>(*n);
    out.gap = (q.opening - *n * q.picket) / (closed ? *n - 1.0 : *n + 1.0);
    if (!(out.gap > Length{}))
        return base::Refusal{"picket", "Pickets so wide leave no gap in this opening.", ""};
    out.pitch = out.gap + q.picket;
    if (q.step > Length{} && !clearly_less(q.step, out.gap))
        return base::Refusal{"step", "The step is as large as the gap.", ""};
    const Length start = closed ? Length{} : out.gap;
    for (int i = 0; i < out.count; ++i)
        out.faces.push_back(to_step(start + out.pitch * static_cast<double>(i), q.step));
    out.largest_gap = q.step > Length{} ? widest(q, out) : out.gap;
    if (q.step > Length{} && clearly_less(q.limit, out.largest_gap))
        return base::Refusal{"step",
                             "Rounded to this step, a gap passes the limit.",
                             "a finer step, or a limit with room for it"};
    return out;
}

base::Result<Working> picket_working(const PicketQuestion& q) {
    const auto layout = picket_layout(q);
    if (!layout.ok())
        return layout.refusal();
    return Working{q.ends == PanelEnds::picket ? &k_picket_gap_closed_card : &k_picket_gap_card,
                   {{"L", q.opening},
                    {"w", q.picket},
                    {"G", q.limit},
                    {"n", Number{static_cast<double>(layout->count), 0}}},
                   {"g", layout->gap},
                   limit_note(layout->largest_gap, q.limit)};
}

base::Result<PostLayout> post_layout(const PostQuestion& q) {
    if (const auto fault = first_fault({size_fault(q.run, "run"),
                                        size_fault(q.post, "post"),
                                        size_fault(q.greatest_spacing, "greatest_spacing")}))
        return *fault;
    const double panels = count_up(q.run / q.greatest_spacing);
    if (panels > k_most)
        return base::Refusal{"run", "So many panels are no fence: check the units.", "1000"};
    PostLayout out;
    out.panels = static_cast<int>(panels);
    out.clear = (q.run - (panels + 1.0) * q.post) / panels;
    if (!(out.clear > Length{}))
        return base::Refusal{"post", "Posts so wide leave no opening.", ""};
    return out;
}

base::Result<Working> post_working(const PostQuestion& q) {
    const auto posts = post_layout(q);
    if (!posts.ok())
        return posts.refusal();
    return Working{&k_post_panels_card,
                   {{"R", q.run},
                    {"P", q.post},
                    {"S", q.greatest_spacing},
                    {"N", Number{static_cast<double>(posts->panels), 0}}},
                   {"c", posts->clear},
                   ""};
}

base::Result<Working> per_tread_working(Length tread, int count, Length picket, Length limit) {
    if (const auto fault = first_fault({size_fault(tread, "tread"),
                                        quantity::count_fault(count, 1, 20, "count"),
                                        size_fault(picket, "picket"),
                                        size_fault(limit, "limit")}))
        return *fault;
    const Length gap = tread / static_cast<double>(count) - picket;
    if (!(gap > Length{}))
        return base::Refusal{"picket", "Pickets so wide leave no gap on the tread.", ""};
    return Working{&k_picket_per_tread_card,
                   {{"t", tread}, {"n", Number{static_cast<double>(count), 0}}, {"w", picket}},
                   {"g", gap},
                   limit_note(gap, limit)};
}

} // namespace treadle::layout
