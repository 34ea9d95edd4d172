// How a job and its history lie in a store of keys and bytes, and how they are read back.
//
//   journal/JOB/base/NAME   a whole job file: a snapshot of one state
//   journal/JOB/step/NAME   one step (history.h), made upon the state that it names
//   journal/JOB/head/TURN   which step is last and where undo stands, after transaction TURN
//
// NAME is a number that only rises and the word of whoever wrote it, so that no two writers make
// the same key, and nobody writes over a base or a step of another. A TURN is made once only: of
// two writers who both believe that it is theirs one is refused by the store, with all that belongs
// to it. Nothing here knows a clock. (Pages before turns had one head, replaced: journal/JOB/head.)
//
// A base and a step begin with a line of their own, "treadle-record 1 NAME FOLLOWS SUM"; SUM is
// over all the rest of the record. FOLLOWS is the state that a step was made upon, or the state
// that a base is a copy of ("-": of none). A head is "treadle-head 1 FIRST LAST CURSOR SUM".

#pragma once

#include "archive/history.h"
#include "base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::archive {

/// Name of a state and of the record that leads to it.
struct RecordName {
    long long number = 0;
    std::string writer; ///< small letters and digits
    friend bool operator==(const RecordName& a, const RecordName& b) {
        return a.number == b.number && a.writer == b.writer;
    }
    friend bool operator<(const RecordName& a, const RecordName& b) {
        return a.number != b.number ? a.number < b.number : a.writer < b.writer;
    }
};
[[nodiscard]] std::string name_text(const RecordName& name);

enum class RecordKind { base, step };

[[nodiscard]] std::string journal_prefix(std::string_view job);
[[nodiscard]] std::string head_key(std::string_view job, long long turn);
/// Where pages before turns had the head.
[[nodiscard]] std::string old_head_key(std::string_view job);
[[nodiscard]] std::string record_key(std::string_view job, RecordKind, const RecordName& name);
/// The job that a key of a journal belongs to; empty for any other key.
[[nodiscard]] std::string_view job_of_key(std::string_view key);

/// `follows`: none for a base that is a copy of no other state.
[[nodiscard]] std::string write_record(const RecordName& name,
                                       const std::optional<RecordName>& follows,
                                       std::string_view body);

struct Record {
    RecordName name;
    std::optional<RecordName> follows;
    std::string_view body; ///< of the bytes that were read
};
[[nodiscard]] base::Result<Record> read_record(std::string_view bytes);

struct Head {
    RecordName first;  ///< of the oldest base
    RecordName last;   ///< of the last step, or the base's
    RecordName cursor; ///< of the state that is shown
};
[[nodiscard]] std::string write_head(const Head& head);
[[nodiscard]] base::Result<Head> read_head(std::string_view bytes);

struct StoredBytes {
    std::string key;
    std::string bytes;
};

/// A base on the way to the present.
struct Snapshot {
    RecordName record;
    RecordName state; ///< that it is a copy of
};

/// What another page wrote upon a state of this job while this one went another way.
struct Branch {
    Moment moment;
    std::vector<std::string> keys; ///< of its records
};

/// A history as far as it could be read.
struct ReadJournal {
    long long turn = 0;             ///< the latest that is in the store, readable or not
    std::vector<Snapshot> bases;    ///< oldest first; never empty
    RecordName start;               ///< the state of moments[0]
    std::vector<RecordName> names;  ///< of the steps from there on
    std::vector<std::string> words; ///< of the steps
    std::vector<Moment> moments;    ///< one more than steps
    std::size_t cursor = 0;         ///< of moments
    /// True when the state that was shown last is there, even where an older step is not.
    bool is_whole = false;
    /// The first thing that could not be read. It lies untouched under its key.
    std::optional<base::Refusal> trouble;
    std::vector<std::string> unread; ///< keys of what could not be read
    std::vector<Branch> branches;
};

/// Highest number of any name under the job's keys, read or not; 0 when there is none.
[[nodiscard]] long long highest_number(std::string_view job,
                                       const std::vector<StoredBytes>& stored);
/// Reads what lies under the job's keys. The longest history that leads to the present is taken;
/// where a record is bad, a later snapshot; where there is none, it ends before the bad record.
/// Refuses when not even a base can be read.
[[nodiscard]] base::Result<ReadJournal> read_journal(std::string_view job,
                                                     const std::vector<StoredBytes>& stored);

} // namespace treadle::archive
