// The smallest page of Dear ImGui, built with our flags: what the library alone weighs.

#include <backends/imgui_impl_opengl3.h>
#include <emscripten/html5.h>
#include <imgui.h>

namespace {

EM_BOOL frame(double, void*) {
    ImGui_ImplOpenGL3_NewFrame();
    ImGui::GetIO().DisplaySize = ImVec2(640, 480);
    ImGui::NewFrame();
    ImGui::SetNextWindowSize(ImVec2(320, 120)); // one that measures itself is not drawn at first
    ImGui::Begin("Bare");
    ImGui::TextUnformatted("Nothing but the library");
    ImGui::Button("A key");
    ImGui::End();
    ImGui::Render();
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    return EM_FALSE;
}

} // namespace

int main() {
    EmscriptenWebGLContextAttributes wanted;
    emscripten_webgl_init_context_attributes(&wanted);
    wanted.majorVersion = 2;
    emscripten_webgl_make_context_current(emscripten_webgl_create_context("#canvas", &wanted));
    ImGui::CreateContext();
    ImGui::GetIO().IniFilename = nullptr;
    ImGui_ImplOpenGL3_Init("#version 300 es");
    emscripten_request_animation_frame(frame, nullptr);
    return 0;
}
