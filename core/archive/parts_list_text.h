// The bytes of a parts list as UTF-8 text: private to this room.

#pragma once

#include "base/result.h"

#include <string>
#include <string_view>

namespace treadle::archive {

/// Which letters the bytes were, as it is said to the user.
enum class Letters { utf8, utf16, windows_1252 };
[[nodiscard]] const char* letters_words(Letters letters);

struct ListText {
    std::string text; ///< UTF-8, without a byte order mark
    Letters letters = Letters::utf8;
};

/// A byte order mark decides; without one it is UTF-8 if it can be, else Windows-1252. Refuses the
/// bytes of other kinds of files, naming what they are where that can be told.
[[nodiscard]] base::Result<ListText> list_text(std::string_view bytes);

/// No signs of another kind of file in the first bytes.
[[nodiscard]] bool is_text(std::string_view bytes);

} // namespace treadle::archive
