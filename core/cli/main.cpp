#include "cli/commands.h"

int main(int count, char** words) {
    return treadle::cli::run(std::vector<std::string>(words + (count > 0 ? 1 : 0), words + count));
}
