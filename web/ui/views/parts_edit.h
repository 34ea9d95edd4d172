// What the keys for parts and operations ask for. New things start with plain sizes that the user
// then changes; nothing here is worked out.

#pragma once

#include "ui/views/desk.h"

#include <optional>
#include <string>

namespace treadle::views {

/// A copy of the chosen part, made only when a field changed, and sent as one edit.
class PartDraft {
public:
    PartDraft(Desk& desk, const job::Part& part) : desk_(desk), part_(part) {}
    job::Part& change() {
        if (!draft_)
            draft_ = part_;
        return *draft_;
    }
    /// Sends what changed, as the edit of this field; nothing when nothing changed.
    void send(const std::string& field, const std::string& typed);

private:
    Desk& desk_;
    const job::Part& part_;
    std::optional<job::Part> draft_;
};

void choose_part(Desk& desk, const std::string& id);
/// Opens the part at this index, with the operation chosen, under Parts.
void show_operation(Desk& desk, int part, int operation);
/// Full id of an operation's row.
[[nodiscard]] std::string operation_row_id(int operation);
/// Of the chosen part, else the first of the catalogue.
[[nodiscard]] std::string first_grade(const Desk& desk);
void add_part(Desk& desk);
void copy_part(Desk& desk, const job::Part& part);
void remove_part(Desk& desk, int index);
/// One place up (-1) or down (1) in the list; nothing at its ends. The row keeps the keyboard.
void move_part(Desk& desk, int index, int by);
[[nodiscard]] bool can_move_part(const Desk& desk, int index, int by);
/// Ctrl with an arrow moves the part or the operation whose row has the keyboard.
void move_by_keyboard(Desk& desk);

enum class NewOperation { punch, cut, notch, bend, saddle };
void add_operation(Desk& desk, const job::Part& part, NewOperation kind);
void remove_operation(Desk& desk, const job::Part& part, int operation);
void copy_operation(Desk& desk, const job::Part& part, int operation);
void move_operation(Desk& desk, const job::Part& part, int operation, int by);

/// Starting sizes of a shape, when the catalogue has none.
[[nodiscard]] Section starting_section(UnitSystem system, section::Shape shape);

} // namespace treadle::views
