#include "ui/views/paint.h"

#include "ui/widgets/drawing.h"

namespace treadle::views {

namespace {

ui::Stroke stroke_of(sheet::Pen pen, bool heavy, ui::Ink hatch) {
    switch (pen) {
    case sheet::Pen::outline:
        return {ui::Ink::cut, heavy ? 4.0F : 2.0F, false};
    case sheet::Pen::hidden:
        return {ui::Ink::quiet, heavy ? 2.5F : 1.2F, true};
    case sheet::Pen::dimension:
        return {ui::Ink::quiet, 1.0F, false};
    case sheet::Pen::bend_line:
        return {ui::Ink::cut, heavy ? 4.0F : 1.5F, true};
    case sheet::Pen::datum:
        return {ui::Ink::cut, 5.0F, false};
    case sheet::Pen::highlight:
        return {ui::Ink::cut, 4.0F, false};
    case sheet::Pen::hatch:
        return {hatch, 1.5F, false};
    case sheet::Pen::none:
        break;
    }
    return {};
}

ui::Ink ink_of(sheet::Fill fill) {
    switch (fill) {
    case sheet::Fill::steel:
        return ui::Ink::steel;
    case sheet::Fill::dark:
        return ui::Ink::cut;
    case sheet::Fill::paper:
    case sheet::Fill::hatched:
    case sheet::Fill::none:
        break;
    }
    return ui::Ink::paper;
}

void paint_shapes(ui::DrawingPainter& painter,
                  const Picture& picture,
                  int operation,
                  ui::Ink hatch) {
    for (const Picture::Line& line : picture.lines) {
        if (line.fill != sheet::Fill::none)
            painter.fill(line.points, line.triangles, ink_of(line.fill));
        const bool heavy = operation != plan::k_none && line.operation == operation;
        if (line.pen != sheet::Pen::none)
            painter.line(line.points, stroke_of(line.pen, heavy, hatch), line.closed);
    }
    for (const Picture::Round& round : picture.rounds) {
        const bool heavy = operation != plan::k_none && round.operation == operation;
        if (round.fill != sheet::Fill::none)
            painter.disc(round.centre, round.radius_mm, ink_of(round.fill));
        painter.circle(round.centre, round.radius_mm, stroke_of(round.pen, heavy, hatch));
    }
}

ui::Align align_of(sheet::Anchor anchor) {
    switch (anchor) {
    case sheet::Anchor::start:
        return ui::Align::left;
    case sheet::Anchor::end:
        return ui::Align::right;
    case sheet::Anchor::middle:
        break;
    }
    return ui::Align::centre;
}

void paint_words(ui::DrawingPainter& painter, const Picture& picture, int operation) {
    for (const Picture::Word& word : picture.words) {
        const bool chosen = operation != plan::k_none && word.operation == operation;
        painter.text(
            word.at,
            word.text,
            {ui::TextSize::small, word.bold || chosen, ui::Ink::ink, align_of(word.anchor)});
    }
}

} // namespace

void paint_part(ui::Ui& ui,
                std::string_view id,
                const ui::Rect& rect,
                ui::Surface& surface,
                const Picture& picture,
                int operation) {
    ui::Drawing drawing;
    drawing.bounds = picture.bounds;
    drawing.margin_px = 6;
    drawing.spoken = picture.description;
    ui::drawing(ui, id, rect, surface, drawing, [&](ui::DrawingPainter& painter) {
        paint_shapes(painter, picture, operation, ui::Ink::quiet);
        paint_words(painter, picture, operation);
        for (const Picture::Ring& ring : picture.rings)
            painter.ring(ring.at, ring.operation + 1, ring.operation == operation);
    });
}

void paint_part(
    ui::Ui& ui, std::string_view id, const ui::Rect& rect, const Picture& picture, int operation) {
    ui::Surface whole;
    paint_part(ui, id, rect, whole, picture, operation);
}

float type_of(const ui::Ui& ui) { return ui::text_px(ui::TextSize::small) * ui.size().text_scale; }

ui::Surface paint_silent(ui::Ui& ui, const ui::Rect& rect, const Picture& picture, ui::Ink hatch) {
    ui::Surface surface;
    ui::Drawing drawing;
    drawing.bounds = picture.bounds;
    drawing.margin_px = 0; // the drawing fills its box
    ui::drawing(ui, "silent", rect, surface, drawing, [&](ui::DrawingPainter& painter) {
        paint_shapes(painter, picture, plan::k_none, hatch);
        paint_words(painter, picture, plan::k_none);
    });
    return surface;
}

void paint_trial(ui::Ui& ui,
                 const ui::Rect& rect,
                 ui::Surface& surface,
                 const ui::BoundsMm& bounds,
                 const Picture& trial,
                 const PlaceOnDrawing& place) {
    ui::Drawing drawing;
    drawing.bounds = bounds;
    drawing.margin_px = 6;
    ui::drawing(ui, "trial", rect, surface, drawing, [&](ui::DrawingPainter& painter) {
        const ui::Stroke guide{ui::Ink::touch, 1.5F, true};
        // Guides run over the whole drawing, so that they are seen beside a finger.
        if (place.along)
            painter.segment({place.at.x, bounds.low.y}, {place.at.x, bounds.high.y}, guide);
        if (place.across)
            painter.segment({bounds.low.x, place.at.y}, {bounds.high.x, place.at.y}, guide);
        for (const Picture::Line& line : trial.lines)
            painter.line(line.points, {ui::Ink::touch, 3, false}, line.closed);
        for (const Picture::Round& round : trial.rounds)
            painter.circle(round.centre, round.radius_mm, {ui::Ink::touch, 3, false});
    });
}

void paint_small(ui::Ui& ui, const ui::Rect& rect, const Picture& picture) {
    ui::Drawing drawing;
    drawing.bounds = picture.bounds;
    drawing.margin_px = 4;
    ui::drawing(ui, "small", rect, drawing, [&](ui::DrawingPainter& painter) {
        for (const Picture::Line& line : picture.lines) {
            if (line.fill == sheet::Fill::steel)
                painter.fill(line.points, line.triangles, ui::Ink::steel);
            painter.line(
                line.points, {ui::Ink::cut, 1.6F, line.pen == sheet::Pen::hidden}, line.closed);
        }
        for (const Picture::Round& round : picture.rounds)
            painter.circle(round.centre, round.radius_mm, {ui::Ink::cut, 1.4F, false});
    });
}

} // namespace treadle::views
