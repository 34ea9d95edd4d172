// Changes of a part that might make an operation fit. Only tried: remedy.cpp plans and judges them.

#pragma once

#include "plan/remedy.h"

#include <functional>
#include <string>

namespace treadle::plan {

struct Trouble {
    const PartPlan& plan;
    std::size_t operation;
    const job::Job& job;
    const equipment::Shop& shop;
    const job::Catalog& catalog;

    [[nodiscard]] const job::Part& part() const { return *plan.part; }
    [[nodiscard]] const OperationPlan& planned() const { return plan.operations[operation]; }
};

/// One try. Tries of one series go in one direction, the nearest first.
struct Change {
    Remedy::Kind kind = Remedy::Kind::certificate;
    int series = 0;
    std::string words;
    job::Part part;
};

/// Takes a try; true when this series has what it looked for.
using Offer = std::function<bool(Change)>;

void try_certificate(const Trouble& trouble, const Offer& offer);
void try_places(const Trouble& trouble, const Offer& offer);
void try_grain(const Trouble& trouble, const Offer& offer);
void try_holes(const Trouble& trouble, const Offer& offer);
void try_legs(const Trouble& trouble, const Offer& offer);
void try_square_cut(const Trouble& trouble, const Offer& offer);
void try_thinner(const Trouble& trouble, const Offer& offer);
void try_grades(const Trouble& trouble, const Offer& offer);
void try_elsewhere(const Trouble& trouble, const Offer& offer);

/// Adds a sentence to the part's note, so that the sheet says what this machine does not do.
void add_note(job::Part& part, const std::string& sentence);

} // namespace treadle::plan
