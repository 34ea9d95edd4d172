// What stations and attachments are called.

#include "equipment/shop.h"

namespace treadle::equipment {

const char* station_word(StationKind kind) {
    switch (kind) {
    case StationKind::punch:
        return "punch";
    case StationKind::flat_shear:
        return "flat shear";
    case StationKind::angle_shear:
        return "angle shear";
    case StationKind::bar_shear:
        return "bar shear";
    case StationKind::notcher:
        return "notcher";
    case StationKind::table:
        return "tool table";
    }
    return "";
}

const char* attachment_word(AttachmentKind kind) {
    switch (kind) {
    case AttachmentKind::brake:
        return "brake";
    case AttachmentKind::vee_notcher:
        return "V notcher";
    case AttachmentKind::rectangular_notcher:
        return "rectangular notcher";
    case AttachmentKind::saddle_notcher:
        return "saddle notcher";
    }
    return "";
}

} // namespace treadle::equipment
