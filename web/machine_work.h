// Keeps the work at the machine: steps of the plan, what is done of them, and the record in the
// store. The view asks; a tap is stored before the next one can be made.

#pragma once

#include "edit/session.h"
#include "job/progress.h"

#include "platform/ports.h"
#include "ui/views/at_machine_board.h"
#include "ui/views/state.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace treadle::web {

class MachineWork {
public:
    explicit MachineWork(platform::Ports& ports) : ports_(ports) {}

    /// Asks the store for the record of a kept job, or of the one that nobody has kept yet (no id).
    /// `ready` is called once, whatever comes; `trouble` when it cannot be read: it is put aside.
    void load(const std::string& id,
              const std::string& name,
              std::function<void()> ready,
              std::function<void(const base::Refusal&)> trouble);
    /// The shown job is kept from now on, under this id.
    void use(const std::string& id) { id_ = id; }
    /// Somebody was at the machine with this job when the page went.
    [[nodiscard]] bool was_open() const { return progress_.open; }
    [[nodiscard]] bool has_record() const;
    [[nodiscard]] bool is_on_hold() const { return progress_.held; }

    /// Boxes of the worksheet on the screen, kept with the work that they are ticked for.
    [[nodiscard]] bool is_ticked(std::string_view key) const;
    void tick(const std::string& key, bool on, const edit::Session& session);

    /// Lists the steps anew when the job has changed. Only for who looks at them.
    void refresh(const edit::Session& session);
    void take(const views::AtMachine& ask, const edit::Session& session, views::State& state);
    /// The page was closed in the middle: the same step, and the line that says so.
    void come_back(const edit::Session& session, views::State& state);
    [[nodiscard]] const views::AtMachineBoard& board() const { return board_; }

private:
    void loaded(const platform::LoadedBytes& answer,
                const std::string& name,
                const std::function<void(const base::Refusal&)>& trouble);
    [[nodiscard]] std::string key() const;
    void act(const views::AtMachine& ask, views::State& state);
    void enter(const edit::Session& session, views::State& state);
    void leave(views::State& state);
    void store();
    void read_step(const edit::Session& session);
    void read_counts();
    void say(int step_before);

    platform::Ports& ports_;
    std::string id_; ///< empty: of a job that is not kept
    job::Progress progress_;
    views::AtMachineBoard board_;
    std::uint64_t revision_ = ~std::uint64_t{0};
    int step_read_ = -1;
    int store_number_ = 0;
    bool may_store_ = true; ///< not while something unreadable waits to be put aside
    bool is_open_ = false;
};

} // namespace treadle::web
