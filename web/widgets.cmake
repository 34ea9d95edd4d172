# The parts of the page that need no browser: Dear ImGui, theme, widgets, gestures. The page links
# them with platform/browser, the tests with platform/headless.

include_guard(GLOBAL)
set(imgui_folder ${PROJECT_SOURCE_DIR}/.deps/imgui)
execute_process(COMMAND ${PROJECT_SOURCE_DIR}/web/fetch_libraries imgui RESULT_VARIABLE imgui_result)
if(NOT imgui_result EQUAL 0)
  message(FATAL_ERROR "Dear ImGui is missing and could not be fetched (web/fetch_libraries)")
endif()

add_library(imgui_core STATIC
  ${imgui_folder}/imgui.cpp ${imgui_folder}/imgui_draw.cpp ${imgui_folder}/imgui_tables.cpp
  ${imgui_folder}/imgui_widgets.cpp)
target_include_directories(imgui_core SYSTEM PUBLIC ${imgui_folder})
target_include_directories(imgui_core PUBLIC ${PROJECT_SOURCE_DIR}/web/ui)
target_compile_definitions(imgui_core PUBLIC IMGUI_USER_CONFIG="treadle_imconfig.h")

add_library(web_widgets STATIC
  ${PROJECT_SOURCE_DIR}/web/platform/gestures.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/theme/fonts.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/theme/signs.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/theme/theme.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/choice_keys.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/controls.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/drawing.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/drawn.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/echo_line.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/fields.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/figure.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/icons.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/number_pad.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/pad_keys.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/polygon.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/semantics.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/stage.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/surface.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/text.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/ui.cpp
  ${PROJECT_SOURCE_DIR}/web/ui/widgets/verdict.cpp)
target_include_directories(web_widgets PUBLIC ${PROJECT_SOURCE_DIR}/web)
target_link_libraries(web_widgets PUBLIC imgui_core core_base PRIVATE treadle_flags)
