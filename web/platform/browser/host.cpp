#include "platform/browser/host.h"

#include "platform/browser/glue.h"
#include "platform/browser/host_state.h"

#include <GLES3/gl3.h>
#include <backends/imgui_impl_opengl3.h>
#include <emscripten.h>
#include <emscripten/html5.h>
#include <imgui.h>

namespace treadle::platform::browser {

namespace {

constexpr const char* k_canvas = "#canvas";
/// What an edit stores goes first, and the picture that shows it comes a little later.
constexpr double k_after_left_out_ms = 6;

struct Host {
    Page* page = nullptr;
    EMSCRIPTEN_WEBGL_CONTEXT_HANDLE context = 0;
    bool context_ok = false; ///< frames can be made
    bool draws = false;      ///< onto the canvas; else the mirror alone is shown
    bool frame_asked = false;
    bool in_frame = false;
    bool left_out = false; ///< the last picture was not drawn
    double last_ms = 0;
};

Host& host() {
    static Host only;
    return only;
}

void render(ImU32 ground) {
    ImDrawData* const data = ImGui::GetDrawData();
    const ImVec4 under = ImGui::ColorConvertU32ToFloat4(ground);
    glClearColor(under.x, under.y, under.z, 1);
    glClear(GL_COLOR_BUFFER_BIT);
    glViewport(0,
               0,
               static_cast<int>(data->DisplaySize.x * data->FramebufferScale.x),
               static_cast<int>(data->DisplaySize.y * data->FramebufferScale.y));
    ImGui_ImplOpenGL3_RenderDrawData(data);
}

void load_fonts_texture() {
    if (ImGui::GetIO().Fonts->TexID != nullptr)
        return;
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    ImGui_ImplOpenGL3_CreateFontsTexture();
}

void schedule_frame();

void draw_frame(double now_ms) {
    Host& h = host();
    BrowserPorts& ports = browser_ports();
    const double began_ms = emscripten_performance_now();
    ports.pacer.frame_starts();
    const double seconds = h.last_ms > 0 ? (now_ms - h.last_ms) / 1000 : 0;
    h.last_ms = now_ms;
    h.in_frame = true;
    h.page->prepare();
    if (h.draws) {
        ImGui_ImplOpenGL3_NewFrame();
        load_fonts_texture();
    }
    const ImU32 ground = h.page->frame(seconds);
    // Drawn in software a picture keeps the browser busy for longer than it takes to store an edit.
    // Never two in a row: while something is dragged each one is outdated at once.
    h.left_out = h.page->is_outdated() && !h.left_out;
    if (h.draws && !h.left_out)
        render(ground);
    treadle_mirror(h.page->take_mirror_changes().c_str());
    treadle_count_frame(static_cast<int>(ports.pacer.drawn()),
                        emscripten_performance_now() - began_ms);
    h.in_frame = false;
    if (!ports.pacer.wants_frame())
        return;
    if (h.left_out)
        emscripten_set_timeout([](void*) { schedule_frame(); }, k_after_left_out_ms, nullptr);
    else
        schedule_frame();
}

EM_BOOL on_animation_frame(double now_ms, void*) {
    host().frame_asked = false;
    if (host().context_ok && browser_ports().pacer.wants_frame())
        draw_frame(now_ms);
    return EM_FALSE;
}

void schedule_frame() {
    Host& h = host();
    if (h.frame_asked || h.in_frame || !h.context_ok)
        return;
    h.frame_asked = true;
    emscripten_request_animation_frame(on_animation_frame, nullptr);
}

EM_BOOL on_context_lost(int, const void*, void*) {
    host().context_ok = false;
    // While the context is lost these deletes are silent; after it they would be errors.
    ImGui_ImplOpenGL3_DestroyDeviceObjects();
    treadle_context(1);
    return EM_TRUE; // without this the browser never gives it back
}

EM_BOOL on_context_restored(int, const void*, void*) {
    Host& h = host();
    emscripten_webgl_make_context_current(h.context);
    ImGui_ImplOpenGL3_CreateDeviceObjects();
    h.context_ok = true;
    h.frame_asked = false;
    treadle_context(0);
    browser_ports().request_frame("context", 3);
    return EM_TRUE;
}

bool make_context() {
    EmscriptenWebGLContextAttributes wanted;
    emscripten_webgl_init_context_attributes(&wanted);
    wanted.majorVersion = 2;
    wanted.alpha = EM_FALSE;
    wanted.depth = EM_FALSE;
    wanted.stencil = EM_FALSE;
    wanted.antialias = EM_FALSE; // Dear ImGui smooths its own edges
    wanted.powerPreference = EM_WEBGL_POWER_PREFERENCE_LOW_POWER;
    Host& h = host();
    h.context = emscripten_webgl_create_context(k_canvas, &wanted);
    if (h.context <= 0)
        return false;
    emscripten_webgl_make_context_current(h.context);
    emscripten_set_webglcontextlost_callback(k_canvas, nullptr, EM_FALSE, on_context_lost);
    emscripten_set_webglcontextrestored_callback(k_canvas, nullptr, EM_FALSE, on_context_restored);
    return ImGui_ImplOpenGL3_Init("#version 300 es");
}

} // namespace

void run(Page& page) {
    Host& h = host();
    h.draws = make_context();
    if (!h.draws)
        treadle_plain();
    h.page = &page;
    h.context_ok = true;
    browser_ports().schedule = schedule_frame;
    treadle_listen();
    browser_ports().request_frame("start", 3);
}

} // namespace treadle::platform::browser

// ---- called by glue/ --------------------------------------------------------------------------

namespace tp = treadle::platform;
using tp::browser::browser_ports;
using tp::browser::host;

extern "C" {

EMSCRIPTEN_KEEPALIVE void treadle_on_resize(float width, float height, float density, int coarse) {
    host().page->resize({width, height, density, coarse != 0});
}

EMSCRIPTEN_KEEPALIVE void treadle_on_prefer(int dark, int reduced_motion, int more_contrast) {
    host().page->prefer({dark != 0, reduced_motion != 0, more_contrast != 0});
}

EMSCRIPTEN_KEEPALIVE void
treadle_on_pointer(int phase, int kind, int id, float x, float y, double seconds) {
    // A press means what is there now, not what the picture before showed.
    const bool press = static_cast<tp::PointerPhase>(phase) == tp::PointerPhase::down;
    if (press && host().context_ok && browser_ports().pacer.wants_frame())
        tp::browser::draw_frame(emscripten_performance_now());
    host().page->pointer({static_cast<tp::PointerPhase>(phase),
                          static_cast<tp::PointerKind>(kind),
                          id,
                          x,
                          y,
                          seconds});
}

EMSCRIPTEN_KEEPALIVE int
treadle_on_wheel(float x, float y, float notches_x, float notches_y, int zoom) {
    return host().page->wheel({x, y, notches_x, notches_y, zoom != 0}) ? 1 : 0;
}

EMSCRIPTEN_KEEPALIVE int treadle_on_key(const char* key, int control, int shift, int alt) {
    return host().page->key({key, control != 0, shift != 0, alt != 0}) ? 1 : 0;
}

EMSCRIPTEN_KEEPALIVE void treadle_on_activate(const char* id) { host().page->activate(id); }

EMSCRIPTEN_KEEPALIVE void treadle_on_text(const char* id, const char* value) {
    host().page->commit_text(id, value);
}

EMSCRIPTEN_KEEPALIVE void treadle_on_entry(const char* id, const char* text, int by_touch) {
    host().page->typing({id, text, by_touch != 0});
}

EMSCRIPTEN_KEEPALIVE void treadle_on_ticked(const char* key, int on) {
    browser_ports().ticked(key, on != 0);
}

EMSCRIPTEN_KEEPALIVE void treadle_on_copied(int ticket, int done) {
    browser_ports().copied(ticket, done != 0);
}

EMSCRIPTEN_KEEPALIVE void treadle_on_choose(const char* id, int index) {
    host().page->choose(id, index);
}

EMSCRIPTEN_KEEPALIVE void treadle_on_focus(const char* id) { host().page->focus(id); }

EMSCRIPTEN_KEEPALIVE void treadle_on_scrolled(const char* id, float offset) {
    host().page->scrolled(id, offset);
}

/// Lives until the next call.
EMSCRIPTEN_KEEPALIVE const char* treadle_drawn() {
    static std::string words;
    words = host().page->drawn();
    return words.c_str();
}

EMSCRIPTEN_KEEPALIVE void treadle_on_wake() { browser_ports().request_frame("time", 1); }

EMSCRIPTEN_KEEPALIVE void
treadle_on_loaded(int ticket, int result, const char* bytes, int length, const char* detail) {
    browser_ports().loaded(ticket,
                           {static_cast<tp::StoreResult>(result),
                            std::string(bytes, static_cast<std::size_t>(length)),
                            detail});
}

EMSCRIPTEN_KEEPALIVE void treadle_on_stored(int ticket, int result, const char* detail) {
    browser_ports().stored(ticket, {static_cast<tp::StoreResult>(result), detail});
}

EMSCRIPTEN_KEEPALIVE void
treadle_on_picked(int ticket, const char* name, const char* bytes, int length) {
    tp::PickedFile file{name, "", length < 0};
    if (length > 0)
        file.bytes.assign(bytes, static_cast<std::size_t>(length));
    if (ticket == 0)
        browser_ports().given(std::move(file));
    else
        browser_ports().picked(ticket, std::move(file));
}

EMSCRIPTEN_KEEPALIVE void treadle_on_cut(int ticket, const char* answer) {
    browser_ports().was_cut(ticket, answer);
}
}
