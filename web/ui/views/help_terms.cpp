// Terms as they are used on this page. Common practice of the trade, no source; own words.

#include "ui/views/help_topics.h"

namespace treadle::views {

namespace {

constexpr HelpTopic
term(const char* id, const char* title, const char* words, const char* also = "") {
    return {id, HelpSection::terms, title, words, also, std::nullopt};
}

constexpr std::array k_terms = {
    term("allowance",
         "Bend allowance",
         "The length of flat metal that goes into the curve of one bend. The legs' straight parts "
         "and the allowances together make the blank.",
         "length of metal in a bend"),
    term("attachment",
         "Attachment",
         "A device bolted to a station for other work: a brake for bending, a notcher, a saddle "
         "notcher. It has a rating of its own; the smaller of both counts."),
    term("bend-deduction",
         "Bend deduction",
         "What one bend takes off when the outside legs are added up. Outside legs less deductions "
         "give the flat length.",
         "what a bend takes off; BD"),
    term("blank",
         "Blank",
         "The flat piece before it is bent, cut to such a length that the legs come out right.",
         "flat length of a bent part; developed length"),
    term("certificate",
         "Certificate",
         "The mill's paper with the strength that was measured on this metal. A fit up to a "
         "strength is only sure with a certificate that shows less.",
         "mill; certified strength; tensile"),
    term("crib",
         "Crib",
         "The tools that the shop has: punches, dies, V blocks, brake punches, saddle dies. What "
         "is not in it goes on the list to buy."),
    term("datum",
         "Datum",
         "The end or edge from which everything on a part is measured. Running sizes from one "
         "datum do not add up their errors.",
         "start end; running dimension"),
    term("daylight",
         "Daylight",
         "The open height between ram and table. A standing leg or a tall piece has to pass it."),
    term("die",
         "Die",
         "The lower half of a punching tool. Its opening is the punch's size and the clearance."),
    term("die-clearance",
         "Die clearance",
         "How much wider the die is than the punch, both sides together. Too little wears the "
         "tool and needs more force, too much leaves a burr.",
         "clearance between punch and die"),
    term("drop",
         "Drop",
         "What is left of a bar after its pieces are cut. Long ones go back to the rack, from a "
         "length that the shop decides.",
         "left-over; offcut; remnant; scrap"),
    term("gauge-line",
         "Gauge line",
         "The line along a leg of an angle or a flange on which holes are usually set, measured "
         "from the heel.",
         "gage"),
    term("grade",
         "Grade",
         "The name under which metal is bought, with the least strength it must have. The bar in "
         "hand can be a good deal stronger: what fits is judged with the strongest.",
         "steel; material; metal"),
    term("grain",
         "Grain",
         "The direction in which the sheet was rolled. A bend across the grain stands a smaller "
         "radius than one along it."),
    term("inside-radius",
         "Inside radius",
         "The radius in the hollow of a bend. In air bending the V's opening makes it, not the "
         "punch, unless the nose is rounder.",
         "inside radius that air bending makes; smallest inside radius; least inside radius; "
         "radius asked for"),
    term("k-factor",
         "K",
         "Where, across the thickness, the metal keeps its length in a bend: 0 at the inside, 1 "
         "at the outside. A trial strip of the own metal is the best source.",
         "k factor; neutral line; trial strip"),
    term("kerf",
         "Kerf",
         "The width of metal that a cut turns into chips. A shear has none, a saw does.",
         "saw cut"),
    term("least-leg",
         "Shortest leg",
         "The shortest outside leg that still lies on both edges of the V. A shorter one slips in.",
         "shortest outside leg; least leg; flange"),
    term("mitre",
         "Mitre",
         "A cut that is not square to the length. It is longer than a square cut and needs more "
         "blade.",
         "miter; mitre angle; how much a mitre"),
    term("nibbling",
         "Overlap of bites",
         "A notch longer than its tool is taken in several bites. Each goes a little over the one "
         "before, so that no fin stays.",
         "overlap of bites; bites along a notch; nibbling"),
    term("order",
         "Order of work",
         "The set-ups in such a row that tools are changed as seldom as can be, and nothing is "
         "done that a later step could not get past."),
    term("punch",
         "Punch",
         "The upper half of a punching tool: it pushes a slug through the die and so makes a "
         "hole of its own size.",
         "smallest round hole a punch stands; stress in the punch; hole against thickness"),
    term("rack",
         "Rack",
         "The bars and sheets that the shop has or can buy, with their lengths.",
         "stock"),
    term("rating",
         "Rating",
         "What the machine's plate promises, at a strength of metal that the plate names. Sizes "
         "between two rated ones are not guessed.",
         "rated size; plate; capacity"),
    term("saddle",
         "Saddle notch",
         "The hollow end of a pipe that sits on another pipe, as at a railing's post.",
         "cope; fishmouth"),
    term("set-up",
         "Set-up",
         "Station, attachment, tools and settings that stay while pieces run through. Each change "
         "costs time."),
    term("setback",
         "Outside setback",
         "From the corner where both outsides would meet to where the bend begins.",
         "outside setback of a bend"),
    term("slug",
         "Slug",
         "The piece that falls out of a punched hole. A very small or wide one may stay in the "
         "die and has to be cleared with the machine at rest."),
    term("spread",
         "Spread of a leg",
         "How far a leg may come out long or short, with the errors of stop, cut and bend that "
         "the shop has measured.",
         "tolerance; error of a leg"),
    term("springback",
         "Springback",
         "A bend opens again a little when it is let go. It is bent further by as much, found "
         "out on a trial strip."),
    term("station",
         "Station",
         "A place of the machine where a stroke happens: punch, shears, notcher, table."),
    term("stripper",
         "Stripper",
         "The plate that holds the stock down while the punch is drawn out again. It stands flat "
         "and close above the stock.",
         "force to strip; stripping"),
    term("throat",
         "Throat",
         "From the middle of the stroke to the frame: how far in from an edge a hole can be."),
    term("tonnage",
         "Tonnage",
         "The force of a stroke. It grows with the length that is cut, the thickness and the "
         "strength of the metal.",
         "force; press; ton; kN"),
    term("v-opening",
         "V opening",
         "The width between the edges of the V block. A wide one needs less force, makes a larger "
         "radius and needs a longer leg.",
         "usual opening of the V; V block"),
    term("verdict",
         "Verdict",
         "Fits, fits up to a strength, does not fit, or cannot be said. The last one names what "
         "is missing; nothing is guessed.",
         "does not fit; cannot be said"),
    term("work",
         "Work of a stroke",
         "Force times the way over which it acts. It says what the power unit has to give, and "
         "how hard the snap of the break is.",
         "work of one punching stroke; energy"),
    term("working",
         "Working",
         "Formula, values and source behind a figure. Every figure on this page has one.",
         "formula; source"),
};

} // namespace

std::span<const HelpTopic> help_terms() { return k_terms; }

} // namespace treadle::views
