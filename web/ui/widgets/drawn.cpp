// What was drawn, told to whoever checks the page.

#include "base/json_writer.h"

#include "ui/widgets/ui.h"

namespace treadle::ui {

std::string Ui::drawn() const {
    base::JsonWriter json;
    json.begin_object().key("controls").begin_array();
    for (std::size_t i = last_modal_from_; i < last_hit_count_; ++i) {
        const Hit& hit = last_hits_[i];
        if (hit.kind == HitKind::surface)
            continue; // what can be done on it has controls of its own
        const Node* node = semantics_.find(hit.id);
        json.begin_object().field("id", hit.id).field("enabled", hit.enabled);
        json.field("role", node != nullptr ? role_word(node->role) : "");
        json.field("name", node != nullptr ? std::string_view(node->name) : std::string_view());
        json.key("rect").begin_array();
        for (const float px : {hit.rect.x, hit.rect.y, hit.rect.w, hit.rect.h})
            json.number(px);
        json.end_array().end_object();
    }
    json.end_array().key("cut").begin_array();
    for (const std::string& words : cut_words_)
        json.text(words);
    json.end_array();
    json.end_object();
    return json.take();
}

} // namespace treadle::ui
