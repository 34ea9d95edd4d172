// A drawing of the core as the painter takes it: points in millimetres, fills in triangles, numbers
// apart, and what a finger can aim at. Made once, painted every frame.

#pragma once

#include "sheet/drawing.h"

#include "ui/widgets/drawing.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace treadle::views {

/// A drawing with its points turned into what the painter takes.
struct Picture {
    struct Line {
        std::vector<ui::PointMm> points;
        std::vector<std::array<int, 3>> triangles; ///< of a filled one
        bool closed = false;
        sheet::Pen pen = sheet::Pen::outline;
        sheet::Fill fill = sheet::Fill::none;
        int operation = plan::k_none;
    };
    struct Round {
        ui::PointMm centre;
        double radius_mm = 0;
        sheet::Pen pen = sheet::Pen::outline;
        sheet::Fill fill = sheet::Fill::paper;
        int operation = plan::k_none;
    };
    struct Word {
        ui::PointMm at;
        std::string text;
        sheet::Anchor anchor = sheet::Anchor::middle;
        bool bold = false;
        int operation = plan::k_none;
    };
    struct Ring { ///< number of an operation
        ui::PointMm at;
        int operation = 0;
    };
    std::vector<Line> lines;
    std::vector<Round> rounds;
    std::vector<Word> words;
    std::vector<Ring> rings;
    std::vector<Ring> targets; ///< each operation once, at its number or at itself
    std::vector<sheet::FacePlace> faces;
    ui::BoundsMm bounds;
    std::string description;
};
/// Arcs become chords, at most `within` millimetres off; 0: too fine to be seen in a whole drawing.
[[nodiscard]] Picture to_picture(const sheet::Drawing& drawing, double within = 0);
/// The operation whose hole, notch, line or number is nearest to a point of the screen, at most so
/// many pixels away; plan::k_none when there is none.
[[nodiscard]] int
nearest_operation(const Picture& picture, const ui::Surface& surface, ui::PointMm px, double most);

/// Room for a drawing in pixels, and the size of the type in it.
struct PictureRoom {
    float wide = 0;
    float high = 0;
    float type = 16;
    friend bool operator==(const PictureRoom& a, const PictureRoom& b) {
        return a.wide == b.wide && a.high == b.high && a.type == b.type;
    }
};
/// The room that a maker of the core lays out for: its type is as many points as the room's type
/// is pixels.
[[nodiscard]] sheet::PictureBox box_of(PictureRoom room);

/// A picture of something that stays as it is, made when first looked at, and anew in another room.
class KeptPicture {
public:
    /// `make` takes the box and gives a drawing.
    template <class Make>
    const Picture& in(PictureRoom room, const Make& make) {
        if (!room_ || !(*room_ == room)) {
            picture_ = to_picture(make(box_of(room)));
            room_ = room;
        }
        return picture_;
    }

private:
    std::optional<PictureRoom> room_;
    Picture picture_;
};

} // namespace treadle::views
