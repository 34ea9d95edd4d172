// How a job and its history lie in a store of keys and bytes, and how they are read back.
//
//   journal/JOB/base/NAME   a whole job file: the state of one moment
//   journal/JOB/step/NAME   one step (history.h), made upon the state that it names
//   journal/JOB/head        which base is first, which step is last, and where undo stands
//
// NAME is a number that only rises and the word of whoever wrote it, so that no two writers make
// the same key, and nobody writes over a base or a step of another. Each begins with a line of its
// own, "treadle-record 1 NAME FOLLOWS SUM"; SUM is over all the rest of the record. FOLLOWS is the
// state that a step was made upon, or the state that a base is a copy of ("-": of none).
// The head alone is replaced: "treadle-head 1 FIRST LAST CURSOR SUM".

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
};
[[nodiscard]] std::string name_text(const RecordName& name);

enum class RecordKind { base, step };

[[nodiscard]] std::string journal_prefix(std::string_view job);
[[nodiscard]] std::string head_key(std::string_view job);
[[nodiscard]] std::string record_key(std::string_view job, RecordKind, const RecordName& name);

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
    RecordName first;  ///< of the base
    RecordName last;   ///< of the last step, or the base's
    RecordName cursor; ///< of the state that is shown
};
[[nodiscard]] std::string write_head(const Head& head);
[[nodiscard]] base::Result<Head> read_head(std::string_view bytes);

struct StoredBytes {
    std::string key;
    std::string bytes;
};

/// A history as far as it could be read.
struct ReadJournal {
    RecordName base;                ///< name of its record
    RecordName start;               ///< the state that the base holds
    std::vector<RecordName> names;  ///< of the steps, from the base on
    std::vector<std::string> words; ///< of the steps
    std::vector<Moment> moments;    ///< one more than steps; the first is the base's
    std::size_t cursor = 0;         ///< of moments
    /// Why it ends before its last step, or where undo stood is not known. What was not read lies
    /// untouched under its key.
    std::optional<base::Refusal> trouble;
};

/// Highest number of any name under the job's keys, read or not; 0 when there is none.
[[nodiscard]] long long highest_number(std::string_view job,
                                       const std::vector<StoredBytes>& stored);
/// Reads what lies under the job's keys. Refuses when not even a base can be read.
[[nodiscard]] base::Result<ReadJournal> read_journal(std::string_view job,
                                                     const std::vector<StoredBytes>& stored);

} // namespace treadle::archive
