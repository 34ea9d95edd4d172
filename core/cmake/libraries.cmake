# Libraries of C that rooms of the core call: treadle_zlib for archive, treadle_qrcodegen for sheet.
#
# Natively the distribution's packages. For the page the same releases, compiled here from the
# sources that web/fetch_libraries keeps in .deps; only the files that are called.
if(EMSCRIPTEN)
  enable_language(C)
  execute_process(COMMAND ${PROJECT_SOURCE_DIR}/web/fetch_libraries zlib qrcodegen
    RESULT_VARIABLE fetched)
  if(NOT fetched EQUAL 0)
    message(FATAL_ERROR "A library is missing and could not be fetched (web/fetch_libraries)")
  endif()
  set(zlib_folder ${PROJECT_SOURCE_DIR}/.deps/zlib)
  set(zlib_files adler32 deflate inffast inflate inftrees trees zutil)
  list(TRANSFORM zlib_files REPLACE "(.+)" "${zlib_folder}/\\1.c")
  add_library(treadle_zlib STATIC ${zlib_files})
  target_include_directories(treadle_zlib SYSTEM PUBLIC ${zlib_folder})
  # Without the gzip format, and so without the tables of its sums.
  target_compile_definitions(treadle_zlib PRIVATE NO_GZIP NO_GUNZIP)
  # Without a prototype a function of C is warned about by a compiler younger than the library.
  target_compile_options(treadle_zlib PRIVATE -Oz -flto -w)

  set(qrcodegen_folder ${PROJECT_SOURCE_DIR}/.deps/qrcodegen/c)
  add_library(treadle_qrcodegen STATIC ${qrcodegen_folder}/qrcodegen.c)
  target_include_directories(treadle_qrcodegen SYSTEM PUBLIC ${qrcodegen_folder})
  target_compile_options(treadle_qrcodegen PRIVATE -Oz -flto -w)
else()
  find_package(ZLIB REQUIRED)
  add_library(treadle_zlib INTERFACE)
  target_link_libraries(treadle_zlib INTERFACE ZLIB::ZLIB)
  find_path(qrcodegen_include qrcodegen.h REQUIRED PATH_SUFFIXES qrcodegen)
  find_library(qrcodegen_library qrcodegen REQUIRED)
  add_library(treadle_qrcodegen INTERFACE)
  target_include_directories(treadle_qrcodegen SYSTEM INTERFACE ${qrcodegen_include})
  target_link_libraries(treadle_qrcodegen INTERFACE ${qrcodegen_library})
endif()
