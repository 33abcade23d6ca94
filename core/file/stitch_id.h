#pragma once

#include <string>
#include <string_view>

#include "core/file/json_value.h"
#include "core/file/stitch_table.h"

// Stitch ids wherever a file names a stitch. All throw Refusal on behalf of `value`.
namespace lacewright {

// Refuses an id that cannot stand in a row.
void checkStitchId(std::string_view id, const JsonValue& value);
// The stitch with that id, joining the table as an unknown one when there is none.
StitchIndex findOrAddStitch(std::string_view id, StitchTable& table, const JsonValue& value);
// The id of the text `value`, which joins the table likewise.
std::string readStitchId(const JsonValue& value, StitchTable& table);

// The text in quotes as a refusal shows it, cut when it is long.
std::string shownId(std::string_view id);

}  // namespace lacewright
