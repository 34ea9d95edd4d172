// What the outside does for the page: some twenty functions. The browser answers them in
// platform/browser; tests answer them in platform/headless and look at what was asked.
//
// Everything here carries text and bytes. Nothing here knows a job, a verdict or a figure.

#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace treadle::platform {

/// What became of a write or a read. `done` is only said after the store has committed it.
enum class StoreResult : std::uint8_t {
    done,
    not_found,
    refused,
    no_store, ///< nothing can be kept here
    full,
    taken, ///< a key that was to be new is there already; nothing was changed
    newer, ///< a newer page has been here; this one may not touch the store
    moved  ///< the place broke and another is used from now on; nothing of this is in it
};

struct LoadedBytes {
    StoreResult result = StoreResult::no_store;
    std::string bytes;  ///< set when result is done
    std::string detail; ///< the store's own words when it refused
};

struct StoreOutcome {
    StoreResult result = StoreResult::no_store;
    std::string detail;
};

struct Kept {
    std::string key;
    std::string bytes;
};

struct LoadedAll {
    StoreResult result = StoreResult::no_store;
    std::vector<Kept> kept; ///< in the order of their keys; empty when there is none
    std::string detail;
};

/// One key that is to hold other bytes, or none.
struct StoreChange {
    std::string key;
    std::optional<std::string> bytes; ///< none: what lies there is removed
    bool is_new = false;              ///< nothing may lie there yet, or none of the changes is made
};

struct LoadedKeys {
    StoreResult result = StoreResult::no_store;
    std::vector<std::string> keys; ///< in their order
};

/// How well what is kept is kept.
struct StoreStanding {
    enum class Where : std::uint8_t { usual, reserve, memory };
    Where where =
        Where::usual; ///< reserve: the usual place is broken; memory: until the page closes
    bool is_protected = false; ///< the browser promised not to clear it
    double used_bytes = -1;    ///< negative: not known
    double most_bytes = -1;
};

/// Who may write a job. Of all pages of this browser one has it.
enum class Claim : std::uint8_t {
    mine,
    others, ///< told again with `mine` when it is free
    asked   ///< another page wants it: let it go when all is stored
};

struct PickedFile {
    std::string name;
    std::string bytes;
    bool is_too_large = false; ///< then it was not read
};

/// What a key drawn by the page does to the field that has the keyboard.
struct TextEdit {
    enum class Kind : std::uint8_t { insert, erase, replace, next, done };
    Kind kind = Kind::insert;
    std::string id;
    std::string text; ///< for insert and replace
};

/// Which build of the page this is, and how it came here.
struct Build {
    std::string version;
    std::string id;      ///< of this build's files, all of them
    std::string sources; ///< of the sources it was made from
    bool is_one_file = false;
    bool can_hand_copy = false; ///< the one-file copy can be had from the host
};

/// What is known of other versions, and of use without a network.
struct VersionNews {
    enum class Offline : std::uint8_t { not_known, works, needs_host };
    Offline offline = Offline::not_known;
    bool is_secure = true;   ///< false: the browser allows no offline use at this address
    bool is_waiting = false; ///< another version is there to be switched to
    bool is_switching = false;
    bool could_not = false; ///< be switched: a tab could not store what it has
};

/// A file that comes with the page.
enum class PagePart : std::uint8_t { one_file_copy, licences };

class Ports {
public:
    virtual ~Ports() = default;

    /// Asks for `count` frames. The only way to make a picture; nothing is drawn without it.
    /// `reason` is for a person who looks why the page is busy.
    virtual void request_frame(const char* reason, int count) = 0;
    /// Asks for one frame after `seconds`.
    virtual void request_frame_in(double seconds) = 0;

    /// Reads what was stored under `key`. Answers later, once.
    virtual void load(const std::string& key, std::function<void(LoadedBytes)> answer) = 0;
    /// Stores `bytes` under `key`, replacing. Answers after the store has committed, or refused.
    virtual void store(const std::string& key,
                       std::string_view bytes,
                       std::function<void(StoreOutcome)> answer) = 0;

    /// Reads all whose keys begin with `prefix`. Answers later, once.
    virtual void load_all(const std::string& prefix, std::function<void(LoadedAll)> answer) = 0;
    /// Makes all the changes or none, in their order. Answers after the store has committed.
    virtual void store_all(const std::vector<StoreChange>& changes,
                           std::function<void(StoreOutcome)> answer) = 0;
    virtual void load_keys(const std::string& prefix, std::function<void(LoadedKeys)> answer) = 0;
    /// Asks the browser not to clear what is kept, once somebody has work here.
    virtual void ask_to_protect() = 0;
    virtual void standing(std::function<void(StoreStanding)> answer) = 0;
    /// After `moved`: the other place is written from now on.
    virtual void accept_place() = 0;
    /// Fetches what was kept in the reserve while the usual place was broken; tells how many.
    virtual void bring_back(std::function<void(int)> answer) = 0;

    /// Wants to be the one who writes `name`; `insist`: whoever has it is asked to let go. Tells
    /// how it stands at once and whenever that changes. Of two calls the later one counts.
    virtual void hold(const std::string& name, bool insist, std::function<void(Claim)> tell) = 0;
    /// Gives it up; `stay`: and waits to have it again.
    virtual void let_go(const std::string& name, bool stay) = 0;
    /// A word to all other pages of this browser, and from them.
    virtual void tell_pages(const std::string& words) = 0;
    virtual void when_told(std::function<void(const std::string& words)> call) = 0;
    /// A text that a reload of this one page keeps, and no other page sees.
    [[nodiscard]] virtual std::string page_text() = 0;
    virtual void keep_page_text(const std::string& text) = 0;

    /// A word of small letters and digits that no other opening of the page has.
    [[nodiscard]] virtual std::string own_word() = 0;

    /// Calls once after `seconds`. Draws nothing by itself.
    virtual void call_in(double seconds, std::function<void()> call) = 0;
    /// Calls whenever the page may be gone in a moment: hidden, closed, left.
    virtual void when_leaving(std::function<void()> call) = 0;
    /// Tells what stands in a field that is being typed in, before it is entered; no text: no field
    /// is. By the id of its node.
    virtual void
    when_typing(std::function<void(const std::string& id, const std::string& text)> call) = 0;
    /// Puts a text into a field, as if it had just been typed, as soon as the field is there.
    virtual void type_again(const std::string& id, const std::string& text) = 0;

    /// Hands a file to the user.
    virtual void
    download(const std::string& name, const std::string& media_type, std::string_view bytes) = 0;
    /// Lets the user choose a file. `accept` as in an input element (".json"). Answers nothing at
    /// all when the user walks away.
    virtual void pick_file(const std::string& accept, std::function<void(PickedFile)> answer) = 0;

    /// A file that was dropped on the page, or a table that was pasted where no field was.
    virtual void when_given(std::function<void(PickedFile)> call) = 0;
    /// Lets the user paste a table where a browser gives no other way; it comes as when_given says.
    virtual void ask_for_table() = 0;
    /// Reads a file of the host beside the page, by its relative name; at most `most` bytes of it.
    virtual void
    fetch_beside(const std::string& name, int most, std::function<void(LoadedBytes)> answer) = 0;

    /// Prints a whole HTML document. Its style must stand in <style> elements, which are carried
    /// over as a style sheet; the page's security policy refuses style attributes.
    virtual void print_html(const std::string& title, const std::string& html) = 0;
    /// Shows a whole HTML document over the stage, with buttons to print and to close.
    virtual void show_sheet_preview(const std::string& title, const std::string& html) = 0;
    virtual void hide_sheet_preview() = 0;
    /// Calls for every box of a shown document that is ticked or cleared, by its key.
    virtual void when_ticked(std::function<void(const std::string& key, bool on)> call) = 0;

    /// Has a list of pieces cut beside the page, with so much work at most; gives a ticket. Answers
    /// several times, each a better plan or the same one with more work behind it. An empty answer:
    /// there is no working on it, and what was answered before still stands.
    virtual int cut(const std::string& list,
                    long long most_work,
                    std::function<void(const std::string&)> answer) = 0;
    virtual void stop_cut(int ticket) = 0;

    /// Changes the text of a field at its caret, or leaves it for the next one.
    virtual void edit_text(const TextEdit& edit) = 0;
    /// Puts text on the clipboard. Where the browser refuses, it is shown selected, to be copied by
    /// hand. Answers whether it is on the clipboard.
    virtual void copy_text(const std::string& text, std::function<void(bool)> answer) = 0;

    /// Local wall time for "Saved 10:41". The core never sees a clock.
    [[nodiscard]] virtual std::string now_text() = 0;
    /// The day, for work that goes on tomorrow: "26 Nov".
    [[nodiscard]] virtual std::string day_text() = 0;
    /// Says a whole sentence to a screen reader (role=status).
    virtual void announce(const std::string& sentence) = 0;
    /// The set of inks in use, for the elements beside the canvas: "light", "dark" or "sun"; and
    /// how much larger than usual the text is.
    virtual void use_look(const std::string& name, float text_scale) = 0;
    /// Keeps the screen awake, or lets it sleep again. A wish: without the means nothing happens.
    virtual void keep_awake(bool awake) = 0;
    /// False where the screen sleeps whatever the page wishes; people are told then.
    [[nodiscard]] virtual bool can_keep_awake() = 0;
    /// A part of the page's address after '#', or empty.
    [[nodiscard]] virtual std::string address_fragment() = 0;
    /// Takes it away, so that a reload does not ask for the same thing again.
    virtual void forget_fragment() = 0;
    /// The page's own address without it.
    [[nodiscard]] virtual std::string page_address() = 0;

    [[nodiscard]] virtual Build build() = 0;
    /// Tells `news` now and whenever it changes. `flush` is called before the page goes over to
    /// another version, here or in another tab: it stores all there is, then calls what it is
    /// given.
    virtual void watch_versions(std::function<void(const VersionNews&)> news,
                                std::function<void(std::function<void()>)> flush) = 0;
    /// Every tab flushes, and all open again with the version that waits.
    virtual void switch_version() = 0;
    virtual void hand_part(PagePart part) = 0;
    /// Keeps a text for this tab alone, over a reload.
    virtual void keep_in_tab(const std::string& text) = 0;
    /// What was kept so, once; then it is gone.
    [[nodiscard]] virtual std::string take_from_tab() = 0;
};

} // namespace treadle::platform
