# Subsets of the typeface for the page: the letters that the canvas can draw, and no hints (the
# canvas ignores them). A third of the page as the distribution packs it.

# Pairs of first and last letter, as the canvas rasterises them.
set(letters_source ${CMAKE_CURRENT_SOURCE_DIR}/ui/theme/fonts.cpp)
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${letters_source})
file(READ ${letters_source} letters)
string(REGEX MATCH "k_letters{[^}]*}" letters "${letters}")
string(REGEX MATCHALL "0x[0-9A-F]+, +0x[0-9A-F]+" letters "${letters}")
list(TRANSFORM letters REPLACE "0x([0-9A-F]+), +0x([0-9A-F]+)" "U+\\1-\\2")
list(JOIN letters "," letters)
if(NOT letters MATCHES "^U\\+20-7E,")
  message(FATAL_ERROR "web/fonts.cmake: no letters found in ${letters_source}")
endif()

find_program(TREADLE_PYFTSUBSET pyftsubset DOC "Of the package fonttools" REQUIRED)

# treadle_subset(FROM TO)
function(treadle_subset from to)
  add_custom_command(OUTPUT ${to} DEPENDS ${from} ${letters_source}
    COMMAND ${TREADLE_PYFTSUBSET} ${from} --unicodes=${letters} --no-hinting --output-file=${to}
    VERBATIM COMMENT "Taking the page's letters out of ${from}")
endfunction()
