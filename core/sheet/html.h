// Private to the room: writes HTML whose tags always balance and whose text is always escaped.

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace treadle::sheet {

class Html {
public:
    /// `attributes` is our own fixed text, never anything from a job.
    Html& open(const char* tag, std::string_view attributes = {});
    Html& close();
    /// A word longer than any of ours may be parted, so that no table grows over the page.
    Html& text(std::string_view value);
    /// Head of a row with a part's mark: narrow, whatever the mark is.
    Html& row_mark(std::string_view mark);
    /// Of the document: a browser takes no markup there.
    Html& title(std::string_view value);
    Html& element(const char* tag, std::string_view value, std::string_view attributes = {});
    /// Markup made by this room: a drawing.
    Html& markup(std::string_view value);
    Html& empty(const char* tag, std::string_view attributes = {});

    /// A table with its caption and a head row; cells follow as rows of elements.
    Html& open_table(std::string_view caption,
                     const std::vector<const char*>& heads,
                     std::string_view attributes = {});
    Html& close_table();

    [[nodiscard]] std::string take();

private:
    std::string out_;
    std::vector<const char*> open_;
};

} // namespace treadle::sheet
