// The readers of the rooms' types, one per type that a file names: private to this room.

#pragma once

#include "archive/json_reader.h"
#include "equipment/shop.h"
#include "job/job.h"

namespace treadle::archive {

void read_value(const Place& at, section::Section& out);
void read_value(const Place& at, geometry::HoleOutline& out);
void read_value(const Place& at, material::Grade& out);
void read_value(const Place& at, material::GradeRefusal& out);
void read_value(const Place& at, material::StrengthBand& out);
void read_value(const Place& at, material::RatingBase& out);
void read_value(const Place& at, job::Part& out);
void read_value(const Place& at, job::PartRef& out);
void read_value(const Place& at, job::Operation& out);
void read_value(const Place& at, equipment::Shop& out);

/// The members of a job but for its parts.
void read_header(Members& members, job::Job& out);

} // namespace treadle::archive
