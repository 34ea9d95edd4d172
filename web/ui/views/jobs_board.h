// What the place Jobs and the strip above every place show of what is kept. Plain data: the app
// fills it, views only read it.

#pragma once

#include <string>
#include <vector>

namespace treadle::views {

/// Whose the shown job is.
enum class Ownership {
    own,   ///< kept here, and this page writes it
    guest, ///< shown, not kept: the demo, a link, a file of the shelf; the first change keeps it
    reader ///< another page writes it
};

struct JobRow {
    std::string id;
    std::string name;
    std::string detail; ///< "12 parts, edited 26 Nov, 10:41"
    std::string mark;   ///< "damaged", "trash"; empty for a sound job
    bool is_open = false;
};

struct PointRow {
    std::string key;
    std::string words; ///< "Before a shop file was opened, 26 Nov, 10:41"
    bool is_pinned = false;
};

struct ShelfRow {
    std::string file;
    std::string title;
    std::string detail; ///< what it is, and its note
};

struct JobsBoard {
    Ownership ownership = Ownership::guest;
    std::vector<JobRow> jobs;
    std::vector<JobRow> trash;
    std::vector<PointRow> points;
    std::vector<ShelfRow> shelf;
    std::vector<std::string> place; ///< sentences about where and how well things are kept
    std::string since_copy;         ///< "12 edits since a file was saved"; empty: none
    std::string strip;              ///< one sentence over every place; empty: none
    bool strip_takes = false;       ///< with a key to write here instead
    bool strip_saves = false;       ///< with a key to save a file
    bool strip_frees = false;       ///< with a key to Jobs, to make room
    std::size_t aside = 0;          ///< damaged records that were put aside
    /// Jobs of a file that holds several, waiting for a yes.
    std::vector<JobRow> incoming;
    std::vector<std::string> not_incoming; ///< of the same file, and why
};

} // namespace treadle::views
