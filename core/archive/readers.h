// The readers of the rooms' types, one per type that a file names: private to this room.

#pragma once

#include "archive/json_reader.h"
#include "calc/value.h"
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
/// Whether a bare number has a meaning is the calculation's to say, so it goes on as text.
void read_value(const Place& at, calc::Input& out);
/// An object of inputs.
void read_value(const Place& at, calc::Input::Object& out);

/// The members of a job but for its parts.
void read_header(Members& members, job::Job& out);
/// Those that version 2 added to them.
void read_layouts(Members& members, job::Job& out);

} // namespace treadle::archive
