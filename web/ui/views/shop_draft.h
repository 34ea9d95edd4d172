// A copy of the shop, made only when a field changed, and sent as one edit.

#pragma once

#include "ui/views/desk.h"
#include "ui/views/form.h"

#include <optional>
#include <string>

namespace treadle::views {

class ShopDraft {
public:
    explicit ShopDraft(Desk& desk) : desk_(desk) {}
    equipment::Shop& change() {
        if (!draft_)
            draft_ = desk_.session.shop();
        return *draft_;
    }
    /// An empty field: a key made the change, and a refusal becomes a message.
    void send(const std::string& field = {}, const std::string& typed = {}) {
        if (draft_)
            desk_.ask(FieldEdit{field, typed, edit::ReplaceShop{std::move(*draft_)}});
        draft_.reset();
    }
    void send(const Form& form) { send(form.field(), form.typed()); }

private:
    Desk& desk_;
    std::optional<equipment::Shop> draft_;
};

} // namespace treadle::views
