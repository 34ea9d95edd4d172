// Fields in columns: each reads what was typed with its unit, and keeps what could not be read.
//
//     Form form(desk, rect, "part/" + part.id);
//     if (auto typed = form.length("Thickness", "section.thickness", part.section.thickness))
//         draft().section.thickness = *typed;
//
// A field's key is the path that a refusal names. What was typed last is in field() and typed().

#pragma once

#include "quantity/parse.h"

#include "ui/views/desk.h"
#include "ui/widgets/entry.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace treadle::views {

class Form {
public:
    /// Fields fill `rect` from its top, `least_width` pixels or more to a column.
    Form(Desk& desk, const ui::Rect& rect, std::string scope, float least_width = 168);

    /// A rank of fields begins on a new line, under these words.
    void heading(std::string_view words);
    void words(std::string_view words);
    void new_line();
    /// Columns from here on.
    void columns_of(float least_width);

    std::optional<std::string> text(std::string_view label,
                                    std::string_view key,
                                    std::string_view value,
                                    std::string_view note = {});
    std::optional<Length>
    length(std::string_view label, std::string_view key, Length value, std::string_view note = {});
    /// Empty text: not known.
    std::optional<std::optional<Length>> maybe(std::string_view label,
                                               std::string_view key,
                                               const std::optional<Length>& value,
                                               std::string_view note = {});
    std::optional<std::optional<Force>>
    maybe(std::string_view label, std::string_view key, const std::optional<Force>& value);
    std::optional<std::optional<Angle>> maybe(std::string_view label,
                                              std::string_view key,
                                              const std::optional<Angle>& value,
                                              std::string_view empty = "not known");
    std::optional<std::optional<Stress>> maybe(std::string_view label,
                                               std::string_view key,
                                               const std::optional<Stress>& value,
                                               std::string_view note = {});
    std::optional<std::optional<Mass>>
    maybe(std::string_view label, std::string_view key, const std::optional<Mass>& value);
    /// A plain number; the label says its unit.
    std::optional<std::optional<double>>
    maybe(std::string_view label, std::string_view key, const std::optional<double>& value);
    std::optional<std::optional<int>> maybe(std::string_view label,
                                            std::string_view key,
                                            const std::optional<int>& value,
                                            std::string_view empty = "not known");
    std::optional<Mass> mass(std::string_view label, std::string_view key, Mass value);
    std::optional<Angle>
    angle(std::string_view label, std::string_view key, Angle value, std::string_view note = {});
    std::optional<int> whole(std::string_view label, std::string_view key, int value);
    std::optional<double>
    ratio(std::string_view label, std::string_view key, double value, std::string_view note = {});
    std::optional<Density> density(std::string_view label, std::string_view key, Density value);
    std::optional<int> choice(std::string_view label,
                              std::string_view key,
                              std::span<const std::string> options,
                              int selected);
    /// Returns true when it was flipped.
    bool toggle(std::string_view label, std::string_view key, bool on);
    /// A key in the place of a field, or beside other keys. `name` is what is spoken.
    bool
    key(std::string_view label, std::string_view id, std::string_view name, bool danger = false);

    [[nodiscard]] const std::string& field() const { return field_; }
    [[nodiscard]] const std::string& typed() const { return typed_; }
    /// Where the form ends, when nothing more comes.
    [[nodiscard]] float bottom();

private:
    template <class Value, class Parse>
    std::optional<Value> entry(std::string_view label,
                               std::string_view key,
                               const std::string& shown,
                               std::string_view note,
                               const Parse& parse);
    template <class Value, class Parse>
    std::optional<std::optional<Value>> maybe_entry(std::string_view label,
                                                    std::string_view key,
                                                    const std::string& shown,
                                                    std::string_view note,
                                                    const Parse& parse);
    /// Keeps what was typed last, with the reason.
    void refuse(const base::Refusal& refusal);
    std::optional<std::string> box(std::string_view label,
                                   std::string_view key,
                                   const std::string& shown,
                                   std::string_view note,
                                   const ui::FigureKind* kind); ///< none: words
    /// Wide enough for what stands in it, over two columns or more; `below`: words under the box,
    /// as many lines as they need.
    ui::Rect next_cell(float least_width, std::string_view below);
    [[nodiscard]] int columns_for(float width) const;
    [[nodiscard]] float width_of(std::string_view label, std::string_view shown, bool figure) const;
    [[nodiscard]] ui::Rect key_place(const ui::Rect& cell, float width);
    [[nodiscard]] std::string full(std::string_view key) const;
    [[nodiscard]] quantity::BareUnit bare() const { return desk_.style().system; }

    Desk& desk_;
    ui::Rect rest_;
    std::string scope_;
    std::string field_;
    std::string typed_;
    int columns_ = 1;
    int column_ = 0;
    float row_y_ = 0;
    float row_height_ = 0;                                   ///< of the rank that is being filled
    std::vector<std::pair<std::string, std::string>> wrong_; ///< of this rank: id and reason
    float keys_x_ = 0; ///< end of the keys that stand in a rank of their own
};

} // namespace treadle::views
