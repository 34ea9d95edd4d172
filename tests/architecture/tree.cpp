#include "architecture/tree.h"

#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>

namespace treadle::architecture {

namespace fs = std::filesystem;

namespace {

const fs::path k_root = TREADLE_SOURCE_DIR;

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

/// The folders that the build gives to the compiler, and the file's own.
void resolve(Tree& files) {
    for (auto& [path, file] : files) {
        const std::vector<std::string> search{
            path.substr(0, path.rfind('/') + 1), "", "core/", "web/", "web/ui/", "tests/"};
        for (Include& include : file.includes) {
            for (const std::string& folder : search) {
                if (!include.quoted || files.count(folder + include.text) == 0)
                    continue;
                include.resolved = folder + include.text;
                break;
            }
        }
    }
}

Tree read_tree() {
    Tree files;
    for (const char* top : {"core", "web", "assets", "tests"}) {
        auto entry = fs::recursive_directory_iterator(k_root / top);
        for (; entry != fs::recursive_directory_iterator(); ++entry) {
            if (entry->path().filename() == "node_modules") {
                entry.disable_recursion_pending();
                continue;
            }
            const std::string extension = entry->path().extension().string();
            if (extension != ".h" && extension != ".cpp")
                continue;
            SourceFile file;
            file.path = fs::relative(entry->path(), k_root).generic_string();
            file.text = read_text(file.path);
            file.lines = lines_of(file.text);
            file.includes = includes_of(file.lines);
            files[file.path] = std::move(file);
        }
    }
    resolve(files);
    return files;
}

} // namespace

bool SourceFile::header() const { return path.size() > 2 && path.substr(path.size() - 2) == ".h"; }

std::string SourceFile::stem() const { return fs::path(path).stem().string(); }

const Tree& tree() {
    static const Tree files = read_tree();
    return files;
}

std::string read_text(const std::string& path) {
    std::ifstream in(k_root / path, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

bool begins_with(std::string_view text, std::string_view start) {
    return text.substr(0, start.size()) == start;
}

std::vector<std::string> words_of(std::string_view words) {
    std::istringstream in{std::string(words)};
    std::vector<std::string> found;
    for (std::string word; in >> word;)
        found.push_back(word);
    return found;
}

bool has_word(std::string_view words, std::string_view word) {
    for (const std::string& one : words_of(words)) {
        if (one == word)
            return true;
    }
    return false;
}

std::string joined(std::initializer_list<std::string_view> pieces) {
    std::string whole;
    for (const std::string_view piece : pieces)
        whole += piece;
    return whole;
}

const Room* room_of(std::string_view path) {
    const Room* found = nullptr;
    for (const Room& room : k_rooms) {
        const bool inside = begins_with(path, std::string(room.folder) + "/");
        if (inside && (found == nullptr || room.folder.size() > found->folder.size()))
            found = &room;
    }
    // The page's own folder holds main.cpp and the like; a new folder below it has to be listed.
    const bool deeper = found != nullptr && found->name == "web" && path.find('/', 4) != path.npos;
    const bool config = path == "web/ui/treadle_imconfig.h";
    return deeper && !config ? nullptr : found;
}

std::vector<Include> includes_of(const std::vector<std::string>& lines) {
    static const std::regex pattern(R"re(^\s*#\s*include\s*([<"])([^>"]+)[>"])re");
    std::vector<Include> found;
    for (const std::string& line : lines) {
        std::smatch match;
        if (std::regex_search(line, match, pattern))
            found.push_back({match[2].str(), match[1].str() == "\"", {}});
    }
    return found;
}

} // namespace treadle::architecture
