// Counts wanted frames. With nothing wanted, nothing is drawn: the battery is the user's.

#pragma once

namespace treadle::platform {

class FramePacer {
public:
    void request(int count) {
        if (count > wanted_)
            wanted_ = count;
    }
    [[nodiscard]] bool wants_frame() const { return wanted_ > 0; }
    /// To be called before a frame is made, so that a request made in it counts anew.
    void frame_starts() {
        if (wanted_ > 0)
            --wanted_;
        ++drawn_;
    }
    [[nodiscard]] long drawn() const { return drawn_; }

private:
    int wanted_ = 0;
    long drawn_ = 0;
};

} // namespace treadle::platform
