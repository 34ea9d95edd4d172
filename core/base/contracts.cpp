#include "base/contracts.h"

#include <cstdlib>

namespace treadle::base {

namespace {
// The one mutable static of the core: what to do on our own fault has to be known without being
// passed through every function. Listed with its reason in tests/architecture.
FaultHandler g_handler = nullptr;
} // namespace

void set_fault_handler(FaultHandler handler) { g_handler = handler; }

void fault(const char* condition, const char* file, int line) {
    if (g_handler != nullptr)
        g_handler(condition, file, line);
    std::abort();
}

} // namespace treadle::base
