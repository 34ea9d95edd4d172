# Compiles SOURCE twice: as the twin, which has to pass, and with MISTAKE defined, which has to fail
# with MESSAGE in what the compiler says.
set(command ${COMPILER} -std=c++20 -fsyntax-only -Werror=unused-result -I${INCLUDE} ${SOURCE})

execute_process(COMMAND ${command} RESULT_VARIABLE twin ERROR_VARIABLE said OUTPUT_QUIET)
if(NOT twin EQUAL 0)
  message(FATAL_ERROR "the twin does not compile:\n${said}")
endif()

execute_process(COMMAND ${command} -DMISTAKE RESULT_VARIABLE mistake ERROR_VARIABLE said OUTPUT_QUIET)
if(mistake EQUAL 0)
  message(FATAL_ERROR "the mistake compiles")
endif()
if(NOT said MATCHES "error:[^\n]*(${MESSAGE})")
  message(FATAL_ERROR "stopped for another reason:\n${said}")
endif()
