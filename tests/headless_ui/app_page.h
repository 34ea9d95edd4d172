// The whole page without a browser: the app, its views and a store that the next page can open.

#pragma once

#include "archive/archive.h"

#include "assets/embedded.h"
#include "platform/headless/headless.h"
#include "ui/widgets/stage.h"

#include <memory>
#include <string>
#include <utility>

#include "app.h"

namespace treadle::tests {

inline archive::File demo_file() {
    return archive::read_file(assets::embedded("demo/demo-inch.json").value_or("")).value();
}

/// The demo's parts again and again, each copy with an id and a mark of its own.
inline std::string long_job(std::size_t count) {
    archive::File file = demo_file();
    const auto parts = std::exchange(file.job.parts, {});
    for (std::size_t i = 0; i < count; ++i) {
        job::Part part = *parts[i % parts.size()];
        part.id = "copy" + std::to_string(i);
        part.mark += "-" + std::to_string(i);
        file.job.parts.push_back(std::make_shared<const job::Part>(std::move(part)));
    }
    return archive::write_file(file.job, file.shop);
}

struct AppPage {
    platform::headless::HeadlessPorts& ports;
    views::ScreenWishes wishes;
    web::App app{ports,
                 std::make_shared<const job::Catalog>(archive::read_catalog().value()),
                 demo_file(),
                 [this](const views::ScreenWishes& wish) { wishes = wish; }};
    ui::Stage stage{ports, [this](ui::Ui& ui) { app.draw(ui); }};
    platform::headless::Host host{ports, stage};

    explicit AppPage(platform::headless::HeadlessPorts& all) : ports(all) {
        host.open({1280, 800, 1, false});
        app.start();
        host.settle();
    }
    AppPage(const AppPage&) = delete;
    AppPage& operator=(const AppPage&) = delete;

    [[nodiscard]] const ui::Semantics& mirror() { return stage.ui().semantics(); }
    /// The first node of this role whose name begins so; null when there is none.
    [[nodiscard]] const ui::Node* find(ui::Role role, std::string_view name) {
        for (std::size_t i = 0; i < mirror().size(); ++i) {
            const ui::Node& node = mirror().at(i);
            if (node.role == role && node.name.compare(0, name.size(), name) == 0)
                return &node;
        }
        return nullptr;
    }
    void press(ui::Role role, std::string_view name) {
        const ui::Node* const node = find(role, name);
        if (node == nullptr)
            return;
        stage.activate(node->id);
        host.settle();
    }
    void type(std::string_view label, const std::string& text) {
        const ui::Node* node = find(ui::Role::text, label);
        if (node == nullptr)
            node = find(ui::Role::number, label);
        if (node == nullptr)
            return;
        stage.commit_text(node->id, text);
        host.settle();
    }
};

} // namespace treadle::tests
