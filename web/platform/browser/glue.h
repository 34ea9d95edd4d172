// The functions of glue/*.js, which only carry bytes between the browser and the program.

#pragma once

extern "C" {

void treadle_listen();
void treadle_mirror(const char* changes);
void treadle_count_frame(int drawn, double cpu_ms);
void treadle_trouble(const char* title, const char* words);
void treadle_context(int lost);
void treadle_plain();
char* treadle_boot_file(int index, int* length);
void treadle_wake_in(double seconds);
void treadle_load(const char* key, int ticket);
void treadle_store(const char* key, const char* bytes, int length, int ticket);
void treadle_load_all(const char* prefix, int ticket);
void treadle_store_all(const char* packed, int length, int ticket);
void treadle_load_keys(const char* prefix, int ticket);
void treadle_protect();
void treadle_standing(int ticket);
void treadle_accept_place();
void treadle_bring_back(int ticket);
void treadle_hold(const char* name, int insist, int ticket);
void treadle_let_go(const char* name, int stay);
void treadle_tell_pages(const char* words);
void treadle_listen_pages();
char* treadle_page_text();
void treadle_keep_page_text(const char* text);
char* treadle_own_word();
void treadle_call_in(double seconds, int ticket);
void treadle_listen_leaving();
void treadle_listen_typing();
void treadle_type_again(const char* id, const char* text);
void treadle_download(const char* name, const char* type, const char* bytes, int length);
void treadle_pick_file(const char* accept, int ticket);
void treadle_print(const char* title, const char* html);
void treadle_preview(const char* title, const char* html);
void treadle_hide_preview();
void treadle_cut(int ticket, const char* list, double most_work);
void treadle_edit_text(const char* id, int kind, const char* text);
void treadle_copy(const char* text, int ticket);
char* treadle_now_text();
char* treadle_day_text();
void treadle_announce(const char* sentence);
void treadle_look(const char* name, float text_scale);
void treadle_keep_awake(int awake);
int treadle_can_keep_awake();
char* treadle_fragment();
void treadle_forget_fragment();
char* treadle_page_address();
void treadle_listen_given();
void treadle_ask_for_table();
void treadle_fetch_beside(const char* name, int most, int ticket);
char* treadle_build();
void treadle_watch_versions();
void treadle_switch_version();
void treadle_hand_part(int part);
void treadle_flushed(int ticket);
void treadle_keep_in_tab(const char* text);
char* treadle_take_from_tab();
}
