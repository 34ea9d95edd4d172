#include "ui/widgets/stock_bar.h"

#include "ui/widgets/text.h"
#include "ui/widgets/verdict.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace treadle::ui {

namespace {

constexpr TextStyle k_mark{TextSize::small, true, Ink::ink, Align::centre};
constexpr float k_outline = 2;

float metal_height(const Ui& ui) { return std::max(28.0F, line_height(ui, TextSize::small) + 10); }

void fill_span(Ui& ui, const Rect& box, BarSpan::Kind kind) {
    switch (kind) {
    case BarSpan::Kind::piece:
        ui.fill(box, Ink::steel);
        return ui.outline(box, Ink::cut, 1);
    case BarSpan::Kind::kept:
        ui.fill(box, Ink::paper);
        return ui.outline(box, Ink::cut, k_outline);
    case BarSpan::Kind::scrap:
        ui.fill(box, Ink::paper);
        return draw_hatch(ui, box, Ink::quiet);
    case BarSpan::Kind::trim:
        return ui.fill(box, Ink::ink);
    }
}

/// Where the metal lies on the screen.
struct Along {
    Rect metal;
    [[nodiscard]] float at(double share) const {
        return std::round(metal.x + metal.w * static_cast<float>(std::clamp(share, 0.0, 1.0)));
    }
    [[nodiscard]] Rect box(double from, double to) const {
        return {at(from), metal.y, std::max(1.0F, at(to) - at(from)), metal.h};
    }
};

/// On a ground of its own, for it may lie over the joints of several spans.
void label(Ui& ui, const Along& along, const BarSpan& span) {
    const Rect box = along.box(span.from, span.label_to);
    const float width = text_width(ui, span.label, k_mark) + 8;
    if (span.label.empty() || width > box.w - 2)
        return;
    ui.fill(box.inset((box.w - width) / 2, 4),
            span.kind == BarSpan::Kind::piece ? Ink::steel : Ink::paper);
    draw_text(ui, box, span.label, k_mark);
}

void paint(Ui& ui, const Rect& metal, const StockBar& bar) {
    const Along along{metal};
    // What no span covers is kerf: a dark line through the bar.
    ui.fill(along.box(0, bar.length), Ink::ink);
    for (const BarSpan& span : bar.spans)
        fill_span(ui, along.box(span.from, span.to), span.kind);
    for (const BarSpan& span : bar.spans)
        label(ui, along, span);
    ui.outline(along.box(0, bar.length), Ink::cut, k_outline);
}

} // namespace

float stock_bar_height(const Ui& ui) {
    return std::max(ui.size().target,
                    line_height(ui, TextSize::body) + metal_height(ui) + 4 + 2 * ui.size().gap);
}

bool stock_bar(Ui& ui, std::string_view id, const Rect& rect, const StockBar& bar) {
    // Drawn edge to edge like the rows of a list, and like those with room for a finger between.
    Node& node = ui.add_control(id, Role::row, rect.inset(0, ui.size().gap / 2), bar.spoken);
    node.on = bar.open;
    const std::string full = node.id;
    if (ui.is_visible(rect)) {
        const Touch touch = ui.touch(full);
        if (touch.pressed || touch.hovered)
            ui.fill(rect, Ink::bench);
        Rect rest = rect.inset(0, ui.size().gap);
        Rect words = rest.cut_top(line_height(ui, TextSize::body), 4);
        const float used = draw_text(ui, words, bar.title, {TextSize::body, true});
        words.cut_left(used, 12);
        draw_text(ui, words, bar.beside, {TextSize::body, false, Ink::ink, Align::right});
        paint(ui, rest.cut_top(metal_height(ui)), bar);
        ui.draw_focus_ring(full, rect);
    }
    return ui.take_activation(full);
}

float stock_bar_legend(Ui& ui, const Rect& rect) {
    struct Entry {
        BarSpan::Kind kind;
        const char* words;
    };
    constexpr std::array k_entries = {Entry{BarSpan::Kind::piece, "piece"},
                                      Entry{BarSpan::Kind::kept, "drop to keep"},
                                      Entry{BarSpan::Kind::scrap, "scrap"},
                                      Entry{BarSpan::Kind::trim, "kerf and trim"}};
    constexpr TextStyle k_words{TextSize::small, false, Ink::ink, Align::left};
    const float line = line_height(ui, TextSize::small) + 4;
    const float swatch = std::round(line * 1.2F);
    Rect rest{rect.x, rect.y, rect.w, line};
    for (const Entry& entry : k_entries) {
        const float width = swatch + 8 + text_width(ui, entry.words, k_words);
        if (rest.x > rect.x && rest.w < width)
            rest = {rect.x, rest.bottom(), rect.w, line};
        Rect place = rest.cut_left(width, 20);
        fill_span(ui, place.cut_left(swatch, 8).inset(0, 4), entry.kind);
        text(ui, place, entry.words, k_words);
    }
    return rest.bottom() - rect.y;
}

} // namespace treadle::ui
