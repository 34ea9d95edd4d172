// What Dear ImGui's backend asks of OpenGL around every frame, so that it can put it back: answered
// here, as for a context that nobody has touched.
//
// The browser would answer too, but each question waits until all that was sent before is drawn:
// most of a frame's time. The canvas is the page's alone, and each frame sets what it relies on.
// The backend is compiled with glGetIntegerv renamed to the function below (web/CMakeLists.txt).

#include <GLES3/gl3.h>

extern "C" void treadle_gl_state(GLenum name, GLint* values);

void treadle_gl_state(GLenum name, GLint* values) {
    switch (name) {
    case GL_MAJOR_VERSION:
        *values = 3; // WebGL 2 is OpenGL ES 3.0
        return;
    case GL_ACTIVE_TEXTURE:
        *values = GL_TEXTURE0;
        return;
    case GL_VIEWPORT:
    case GL_SCISSOR_BOX:
        for (int i = 0; i < 4; ++i)
            values[i] = 0;
        return;
    case GL_BLEND_SRC_RGB:
    case GL_BLEND_SRC_ALPHA:
        *values = GL_ONE;
        return;
    case GL_BLEND_EQUATION_RGB:
    case GL_BLEND_EQUATION_ALPHA:
        *values = GL_FUNC_ADD;
        return;
    default: // nothing bound, nothing blended, no extension used
        *values = 0;
        return;
    }
}
