// A job and its shop in the part of an address after '#', which no browser sends to a server.
//
//   j=1.TEXT              TEXT: base64url of a sum (4 bytes) and the packed file (packed.h)
//   &view= &lock= &hide= &step=     wishes of whoever sends the link
//   lesson=NAME&seed=N              a lesson in place of a job: of the page, or of its shelf
//
// The file is the job file on one line, its shop first, in short words (short_words.h) and packed
// upon dictionary 1, so that a link carries what differs from a shop that comes with Treadle.

#pragma once

#include "archive/archive.h"
#include "base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace treadle::archive {

inline constexpr int k_link_version = 1;
/// Mail and chat programs cut longer ones, or no longer see a link in them.
inline constexpr std::size_t k_long_link = 8000;
inline constexpr std::size_t k_largest_fragment = 64u * 1024u;
/// Of the job file that a link holds.
inline constexpr std::size_t k_largest_linked = 1024u * 1024u;

/// How the job wants to be shown. None of them is part of the job.
struct LinkWishes {
    std::string view;             ///< "present"
    std::string lock;             ///< "machine"
    std::string hide;             ///< "answers"
    std::optional<int> step;      ///< from 1
    std::string lesson = {};      ///< "1-punching-force", or the shelf's file of it
    std::optional<int> seed = {}; ///< of the lesson's numbers
};

struct Link {
    File file;
    LinkWishes wishes;
};

/// The fragment without '#'. Refuses (field "link") a job that makes more than k_long_link of it:
/// it has to be sent as a file.
[[nodiscard]] base::Result<std::string>
write_link(const job::Job& job, const equipment::Shop& shop, const LinkWishes& wishes = {});

/// The fragment of a lesson without '#'. Refuses (field "link") a lesson that no page can find.
[[nodiscard]] base::Result<std::string> write_lesson_link(const LinkWishes& wishes);

/// The address of a page with a fragment. Refuses (field "base") a page that is not reached by http
/// or https: what a file system calls a place is one only there.
[[nodiscard]] base::Result<std::string> link_address(std::string_view page,
                                                     std::string_view fragment);

/// Takes a whole address as well, or a fragment with its '#'. Refuses at field "version" what a
/// newer Treadle made, and at field "link" what holds no job or was damaged: any one letter of the
/// job's part that is another is found.
[[nodiscard]] base::Result<Link> read_link(std::string_view text);
/// The wishes alone; what is not known or not one of the words above is left out.
[[nodiscard]] LinkWishes read_wishes(std::string_view text);
/// Whether somebody meant a job to be in it, sound or not.
[[nodiscard]] bool holds_job(std::string_view text);

} // namespace treadle::archive
