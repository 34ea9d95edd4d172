# treadle_room(name SOURCES ... HEADERS ... USES ...)
#
# A room of the house: target core_<name>, headers in a file set so that each must compile alone
# (target all_verify_interface_header_sets), linked only to the rooms it names. Which rooms it may
# name is DEVELOPERS.md's table, held by tests/architecture.
function(treadle_room name)
  cmake_parse_arguments(ROOM "" "" "SOURCES;HEADERS;USES" ${ARGN})
  add_library(core_${name} STATIC ${ROOM_SOURCES})
  target_sources(core_${name} PUBLIC FILE_SET HEADERS BASE_DIRS ${PROJECT_SOURCE_DIR}/core FILES ${ROOM_HEADERS})
  target_include_directories(core_${name} PUBLIC ${PROJECT_SOURCE_DIR}/core)
  target_link_libraries(core_${name} PRIVATE treadle_flags)
  foreach(used IN LISTS ROOM_USES)
    target_link_libraries(core_${name} PUBLIC core_${used})
  endforeach()
  set_target_properties(core_${name} PROPERTIES VERIFY_INTERFACE_HEADER_SETS ON)
endfunction()
