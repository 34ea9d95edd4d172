#include "archive/job_code.h"

#include "archive/writers.h"

#include <cstdint>

namespace treadle::archive {

namespace {

constexpr std::string_view k_letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789"; // no I, O, 0, 1
constexpr int k_length = 6;

} // namespace

std::string job_code(const job::Job& job, const equipment::Shop& shop) {
    std::uint64_t sum = 14695981039346656037ULL; // FNV-1a
    for (const char byte : write_line(job, shop))
        sum = (sum ^ static_cast<unsigned char>(byte)) * 1099511628211ULL;
    sum ^= sum >> 32U;
    std::string code;
    for (int i = 0; i < k_length; ++i, sum >>= 5U)
        code += k_letters[sum & 31U];
    return code;
}

} // namespace treadle::archive
