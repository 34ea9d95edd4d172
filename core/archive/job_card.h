// What a list of jobs shows of a job without reading it, and a kept state of one to go back to:
//
//   card/JOB          lines of text, "treadle-card 1" first
//   point/JOB/NAME    "treadle-point 1", why it was kept, when, pinned or not; then a job file
//
// A card is a cache: a job without one is still a job. Days are counted, not dated: how many
// different days the page was opened on, which no wrong clock turns back.

#pragma once

#include "archive/journal.h"
#include "base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace treadle::archive {

struct JobCard {
    std::string name;
    std::string edited; ///< day and time of the last edit, as the shell said them
    int parts = 0;
    int since_copy = 0;       ///< edits since a file of it was saved
    bool invented = false;    ///< a scenario of our own
    bool is_damaged = false;  ///< could not be read to its end; kept as it is, never written again
    std::optional<int> trash; ///< the day on which it was thrown away, as days are counted
    friend bool operator==(const JobCard& a, const JobCard& b) {
        return a.name == b.name && a.edited == b.edited && a.parts == b.parts &&
               a.since_copy == b.since_copy && a.invented == b.invented &&
               a.is_damaged == b.is_damaged && a.trash == b.trash;
    }
};

/// At most 4000 bytes of a name are kept.
[[nodiscard]] std::string write_card(const JobCard& card);
[[nodiscard]] base::Result<JobCard> read_card(std::string_view bytes);
[[nodiscard]] std::string card_key(std::string_view job);
inline constexpr std::string_view k_card_prefix = "card/";

struct Point {
    std::string why;  ///< "before a shop file was opened"
    std::string when; ///< as the shell said it
    bool is_pinned = false;
};
struct ReadPoint {
    Point point;
    std::string_view file; ///< a job file, of the bytes that were read; not looked into
};
[[nodiscard]] std::string write_point(const Point& point, std::string_view file);
[[nodiscard]] base::Result<ReadPoint> read_point(std::string_view bytes);
[[nodiscard]] std::string points_prefix(std::string_view job);

/// How many different days the page has seen, and the last of them: "17 26 Nov".
struct SeenDays {
    int count = 0;
    std::string last;
};
[[nodiscard]] std::string write_days(const SeenDays& days);
/// Nothing seen when it cannot be read.
[[nodiscard]] SeenDays read_days(std::string_view bytes);
inline constexpr int k_trash_days = 30;

} // namespace treadle::archive
