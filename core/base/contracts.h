// Expectations on our own code. Never used on anything that came from outside.
//
// On in optimised builds too: a wrong figure at the machine is worse than a stop.

#pragma once

namespace treadle::base {

/// Called when an expectation fails. The default stops the program; the page installs a handler
/// that keeps the job and says that the program has a fault.
using FaultHandler = void (*)(const char* condition, const char* file, int line);

[[noreturn]] void fault(const char* condition, const char* file, int line);
void set_fault_handler(FaultHandler handler);

} // namespace treadle::base

#define TREADLE_EXPECT(condition)                                                                  \
    (static_cast<bool>(condition) ? void(0)                                                        \
                                  : ::treadle::base::fault(#condition, __FILE__, __LINE__))
