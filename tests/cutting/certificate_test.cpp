// The prices of a proof, checked here the long way: every pattern there is.

#include <doctest/doctest.h>

#include "cutting/lists.h"

using namespace treadle;
using namespace treadle::test;

namespace {

/// Largest value of pieces that go into `room`, by trying all.
std::int64_t largest(const CutList& list,
                     const std::vector<std::int64_t>& prices,
                     std::size_t piece,
                     long long room) {
    if (piece == list.size())
        return 0;
    std::int64_t best = 0;
    for (int count = 0; count <= list.demand[piece] && count * list.length[piece] <= room; ++count)
        best = std::max(best,
                        count * prices[piece] +
                            largest(list,
                                    prices,
                                    piece + 1,
                                    room - static_cast<long long>(count) * list.length[piece]));
    return best;
}

} // namespace

TEST_CASE("what the prices prove is true of every pattern") {
    int proofs = 0;
    for (std::uint32_t seed = 1; seed <= 40; ++seed) {
        CAPTURE(seed);
        Search search(list_of(shop_list(seed, seed % 2 == 0, 6, 14)));
        search.run(k_second);
        const CutList& list = search.list();
        const cutting::Certificate& proof = search.certificate();
        REQUIRE(proof.prices.size() == list.size());
        const std::int64_t most = largest(list, proof.prices, 0, list.stock[0].closed);
        CHECK(proof.largest[0] == most);
        CHECK(proof.per_cost >= most);
        std::int64_t worth = 0;
        for (std::size_t i = 0; i < list.size(); ++i)
            worth += proof.prices[i] * list.demand[i];
        CHECK((worth + most - 1) / most >= search.certificate_bound());
        if (search.certificate_bound() == search.cost())
            ++proofs;
    }
    CHECK(proofs >= 36); // nearly all lists are proven by prices alone
}
