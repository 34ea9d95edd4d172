// Holds a parts list while the user looks at it: the table, what its columns mean, and what its
// rows become. Nothing goes into the job before take() gives the parts.

#pragma once

#include "archive/parts_list.h"
#include "edit/session.h"

#include "platform/ports.h"
#include "ui/views/parts_list_board.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::web {

class PartsListWork {
public:
    explicit PartsListWork(platform::Ports& ports) : ports_(ports) {}

    /// Of a file or of a pasted table. Refuses what is no table; the board is as it was then.
    [[nodiscard]] std::optional<base::Refusal>
    open(const std::string& name, std::string_view bytes, const edit::Session& session);
    /// The edit that adds the parts, once it was asked for; the list is closed then.
    [[nodiscard]] std::optional<edit::AddParts> take(const views::PartsListAsk& ask,
                                                     const edit::Session& session);
    [[nodiscard]] const views::PartsListBoard& board() const { return board_; }

private:
    void read(const edit::Session& session);
    void show_columns();
    void show_rows();
    void close();

    platform::Ports& ports_;
    archive::Table table_;
    archive::Mapping mapping_;
    archive::ListOptions options_;
    archive::ReadParts read_;
    UnitSystem shown_in_ = UnitSystem::metric;
    views::PartsListBoard board_;
};

} // namespace treadle::web
