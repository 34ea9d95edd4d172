#include "archive/bundle.h"

#include "archive/beginning.h"
#include "archive/json_scan.h"
#include "archive/parts_list_text.h"
#include "archive/readers.h"
#include "archive/writers.h"
#include "base/text.h"

#include <optional>
#include <utility>

namespace treadle::archive {

namespace {

using base::Refusal;
using base::Result;
using Fault = std::optional<Refusal>;

/// Format and version are judged alike for every kind of file.
Fault version_fault(int version, int newest) {
    if (version > newest)
        return Refusal{"version",
                       "This file was made by a newer Treadle; it was not read and nothing was "
                       "changed.",
                       "this one reads up to version " + std::to_string(newest)};
    if (version < k_oldest_version)
        return Refusal{"version", "There was never such a version of the format.", ""};
    return std::nullopt;
}

/// One walk over a bundle.
class BundleReader {
public:
    explicit BundleReader(std::string_view bytes) : scan_(bytes) {}

    [[nodiscard]] Result<Bundle> read() && {
        Fault fault = members([this](std::string_view key) { return member(key); }, "");
        if (!fault && !scan_.at_end())
            fault = broken();
        if (!fault)
            fault = head_fault();
        if (!fault)
            fault = read_jobs();
        if (fault)
            return std::move(*fault);
        return std::move(bundle_);
    }

private:
    [[nodiscard]] Refusal broken() const {
        return {"file", "This is not readable as JSON; it may have been cut short.", scan_.place()};
    }

    /// An object whose members are known, each once.
    template <class Member>
    Fault members(Member member, const std::string& above) {
        if (!scan_.take('{'))
            return broken();
        if (scan_.take('}'))
            return std::nullopt;
        std::vector<std::string_view> seen;
        do {
            const auto key = scan_.take_word();
            if (!key || !scan_.take(':'))
                return broken();
            for (const std::string_view other : seen)
                if (other == *key)
                    return Refusal{
                        above + std::string(*key), "This is said twice; only one can hold.", ""};
            seen.push_back(*key);
            if (Fault fault = member(*key))
                return fault;
        } while (scan_.take(','));
        if (!scan_.take('}'))
            return broken();
        return std::nullopt;
    }

    static Refusal unknown(const std::string& field) {
        return {field.empty() ? "(no name)" : beginning(field, 100),
                "This entry is not known here; nothing was read, so that nothing is lost.",
                ""};
    }

    Fault member(std::string_view key) {
        if (key == "jobs")
            return take_jobs();
        const auto value = scan_.take_value();
        if (!value)
            return broken();
        if (key == "format")
            format_ = *value;
        else if (key == "version")
            version_ = *value;
        else
            return unknown(std::string(key));
        return std::nullopt;
    }

    Fault head_fault() const {
        if (format_.empty())
            return Refusal{"format", "This is missing.", "\"treadle-bundle\""};
        if (format_ != "\"treadle-bundle\"")
            return Refusal{"format", "This is not a file of several jobs.", "\"treadle-bundle\""};
        if (version_.empty())
            return Refusal{"version", "This is missing.", ""};
        const auto version = base::read_number(version_);
        if (!version || *version < 1.0 || *version > 1e6 || *version != static_cast<int>(*version))
            return Refusal{"version", "This has to be a whole number.", ""};
        if (auto fault = version_fault(static_cast<int>(*version), k_bundle_version))
            return fault;
        if (!has_jobs_)
            return Refusal{"jobs", "This is missing.", "a list of jobs"};
        return std::nullopt;
    }

    /// Only the places are kept until the head is known to be sound.
    struct Entry {
        std::string_view state;
        std::string_view file;
    };

    Fault take_jobs() {
        has_jobs_ = true;
        if (!scan_.take('['))
            return Refusal{"jobs", "This has to be a list.", ""};
        if (scan_.take(']'))
            return std::nullopt;
        do {
            const std::string place = "jobs[" + std::to_string(entries_.size()) + "]";
            if (entries_.size() >= k_most_jobs)
                return Refusal{place,
                               "There are more jobs than one file may hold.",
                               "at most " + std::to_string(k_most_jobs)};
            Entry entry;
            const auto take = [&](std::string_view key) -> Fault {
                const auto value = scan_.take_value();
                if (!value)
                    return broken();
                if (key == "state")
                    entry.state = *value;
                else if (key == "file")
                    entry.file = *value;
                else
                    return unknown(place + "." + std::string(key));
                return std::nullopt;
            };
            if (Fault fault = members(take, place + "."))
                return fault;
            entries_.push_back(entry);
        } while (scan_.take(','));
        return scan_.take(']') ? std::nullopt : Fault(broken());
    }

    Fault read_jobs() {
        for (std::size_t i = 0; i < entries_.size(); ++i) {
            const std::string place = "jobs[" + std::to_string(i) + "]";
            const Entry& entry = entries_[i];
            const bool trash = entry.state == "\"trash\"";
            if (!trash && entry.state != "\"kept\"") {
                bundle_.refused.push_back(
                    {place + ".state", "This word is not known here.", "one of: kept, trash"});
                continue;
            }
            auto file = entry.file.empty() ? Refusal{"file", "This is missing.", "a whole job file"}
                                           : read_file(entry.file);
            if (file.ok()) {
                bundle_.jobs.push_back(
                    {trash ? JobState::trash : JobState::kept, std::move(file).value()});
                continue;
            }
            Refusal refusal = file.refusal();
            refusal.field = place + (refusal.field == "file" ? ".file" : ".file." + refusal.field);
            bundle_.refused.push_back(std::move(refusal));
        }
        return std::nullopt;
    }

    JsonScan scan_;
    std::string_view format_;
    std::string_view version_;
    bool has_jobs_ = false;
    std::vector<Entry> entries_;
    Bundle bundle_;
};

} // namespace

Result<Bundle> read_bundle(std::string_view bytes) {
    if (bytes.size() > k_largest_bundle)
        return Refusal{"file",
                       "The file is larger than any file of jobs.",
                       "at most " + std::to_string(k_largest_bundle / (1024 * 1024)) + " MB"};
    return BundleReader(bytes).read();
}

std::string write_bundle(const std::vector<BundledJob>& jobs) {
    // Each job stands as in its own file, so that it can be cut out by hand.
    std::string out =
        "{\"format\": \"treadle-bundle\", \"version\": " + std::to_string(k_bundle_version) +
        ", \"jobs\": [";
    const char* between = "\n";
    for (const BundledJob& job : jobs) {
        out += between;
        out += job.state == JobState::kept ? "{\"state\": \"kept\", \"file\": "
                                           : "{\"state\": \"trash\", \"file\": ";
        out += base::trim(write_file(job.file.job, job.file.shop));
        out += "}";
        between = ",\n";
    }
    return out + "\n]}\n";
}

Result<equipment::Shop> read_shop_file(std::string_view bytes) {
    const Result<Tree> tree = read_tree(bytes);
    if (!tree.ok())
        return tree.refusal();
    Reading reading{tree.value(), std::nullopt};
    const Place root(reading, 0);
    Members members(root);
    std::string format;
    int version = 0;
    equipment::Shop shop;
    members.need("format", format);
    if (!root.failed() && format != "treadle-shop")
        root.refuse("This is not a shop of Treadle.", "\"treadle-shop\"", "format");
    members.need("version", version);
    if (!root.failed())
        if (auto fault = version_fault(version, k_shop_version))
            root.refuse(*fault);
    members.need("shop", shop);
    members.finish();
    if (reading.refusal)
        return std::move(*reading.refusal);
    return shop;
}

std::string write_shop_file(const equipment::Shop& shop, UnitSystem units) {
    Writer out(units);
    out.json.begin_object();
    out.json.field("format", "treadle-shop").field("version", k_shop_version);
    out.json.key("shop");
    write_shop(out, shop);
    out.json.end_object();
    return out.json.take() + "\n";
}

const char* file_kind_words(FileKind kind) {
    switch (kind) {
    case FileKind::job:
        return "a job";
    case FileKind::shop:
        return "a shop";
    case FileKind::bundle:
        return "several jobs";
    case FileKind::shelf:
        return "a shelf";
    case FileKind::lesson:
        return "a lesson";
    case FileKind::parts_list:
        return "a parts list";
    case FileKind::unknown:
        break;
    }
    return "nothing that can be read here";
}

FileKind kind_of_file(std::string_view bytes) {
    constexpr std::pair<std::string_view, FileKind> k_formats[] = {
        {"\"treadle-job\"", FileKind::job},
        {"\"treadle-shop\"", FileKind::shop},
        {"\"treadle-bundle\"", FileKind::bundle},
        {"\"treadle-shelf\"", FileKind::shelf},
        {"\"treadle-lesson\"", FileKind::lesson},
    };
    JsonScan scan(bytes);
    if (!scan.take('{'))
        return scan.at_end() || scan.take('[') || !is_text(bytes) ? FileKind::unknown
                                                                  : FileKind::parts_list;
    do {
        const auto key = scan.take_word();
        const auto value = key && scan.take(':') ? scan.take_value() : std::nullopt;
        if (!value)
            return FileKind::unknown;
        if (*key != "format")
            continue;
        for (const auto& [word, kind] : k_formats)
            if (*value == word)
                return kind;
        return FileKind::unknown;
    } while (scan.take(','));
    return FileKind::unknown;
}

} // namespace treadle::archive
