# Compiles with the compiler behind em++, which is asked once for the flags it would give.
#
# em++ starts eighty processes before it starts its compiler: for our small files that is as long
# as compiling takes, and several times as long where starting a process is slow. It still links,
# and it alone knows its settings (-s…), so those stand among the flags for linking.

function(treadle_compile_directly)
  file(WRITE ${CMAKE_BINARY_DIR}/probe.cpp "int probe;\n")
  separate_arguments(flags UNIX_COMMAND
    "${CMAKE_CXX_FLAGS} ${CMAKE_CXX_FLAGS_RELEASE} ${CMAKE_EXE_LINKER_FLAGS}")
  execute_process(COMMAND ${CMAKE_CXX_COMPILER} -v ${flags} -c probe.cpp -o probe.o
    WORKING_DIRECTORY ${CMAKE_BINARY_DIR}
    ERROR_VARIABLE said OUTPUT_QUIET RESULT_VARIABLE failed)
  if(failed OR NOT said MATCHES "\"([^\"\n]*clang[^\"\n]*)\"([^\n]*)\n")
    message(FATAL_ERROR "em++ does not say how it compiles:\n${said}")
  endif()
  set(compiler ${CMAKE_MATCH_1})
  set(given ${CMAKE_MATCH_2})
  string(REPLACE " -v " " " given "${given} ")
  string(REPLACE " -c probe.cpp -o probe.o " " " given "${given}")
  set(CMAKE_CXX_COMPILE_OBJECT
    "${compiler} ${given}<DEFINES> <INCLUDES> <FLAGS> -o <OBJECT> -c <SOURCE>" PARENT_SCOPE)
endfunction()

treadle_compile_directly()
