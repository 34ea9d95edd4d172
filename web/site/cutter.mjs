// Works on cutting lists beside the page, a slice of each in turn, and tells the best plan so far.
//
// Started as a worker. Where none can be started, cutting.mjs runs it between two frames.
// Words in   { code }                  the compiled module, first of all
//            { ticket, list, most }    work on this list, so much at most; no list: no longer
// Words out  { ticket, answer, over }  text of the best plan so far; '' when there is no working on
//                                      it, and the plan told before still stands; over: the last

const k_slice_ms = 20;
const k_first_slice = 2e6; // units of work; a slice grows or shrinks to take its time
const k_least_slice = 1e5;
const k_told_ms = 500; // progress without a better plan is told so often
const k_work_field = 3;
const k_kept_bytes = 4 << 20; // what an instance begins with

/** Calls into one instance; throws when it has run out of memory. */
export function machine(module) {
  const stop = () => { throw new Error('out of memory'); };
  const { exports } = new WebAssembly.Instance(module, {
    env: { emscripten_notify_memory_growth() {} },
    wasi_snapshot_preview1: { proc_exit: stop },
  });
  exports._initialize();
  const bytes = () => new Uint8Array(exports.memory.buffer);
  return {
    open(list) {
      const text = new TextEncoder().encode(list);
      const at = exports.cutter_room(text.length);
      bytes().set(text, at);
      return exports.cutter_open();
    },
    run: (search, slice, most) => exports.cutter_run(search, slice, most) !== 0,
    answer(search) {
      const at = exports.cutter_answer(search);
      const all = bytes();
      return new TextDecoder().decode(all.subarray(at, all.indexOf(0, at)));
    },
    close: (search) => exports.cutter_close(search),
    memory: () => exports.memory.buffer.byteLength,
  };
}

/**
 * Whether an idle instance waits for the next list: memory that was never touched costs a short list
 * a third of its time, but what a long one took is given back.
 */
export const is_kept = (runs) => runs.memory() <= k_kept_bytes;

/** `tell` gets the answers; `pause` calls back when others have had their turn. */
export function cutter(tell, pause, slice_ms = k_slice_ms) {
  const lists = new Map(); // by ticket, in the order of their turns
  let module = null;
  let runs = null;
  let slice = k_first_slice;
  let one_by_one = false; // all at once did not go into the memory
  let is_waiting = false;

  const begin_anew = () => {
    runs = null;
    for (const one of lists.values()) one.search = 0;
  };

  // Work is a field of the text, and no news by itself.
  function say(ticket, one, answer, over) {
    const plan = answer.split(' ').filter((_, field) => field !== k_work_field).join(' ');
    const now = performance.now();
    if (!over && plan === one.told && now < one.told_at + k_told_ms) return;
    one.told = plan;
    one.told_at = now;
    tell({ ticket, answer, over });
  }

  function work_on(ticket, one) {
    runs ??= machine(module);
    one.search ||= runs.open(one.list);
    if (!one.search) throw new Error('no list');
    const from = performance.now();
    const over = !runs.run(one.search, slice, one.most);
    const took = Math.max(1, performance.now() - from);
    if (!over) slice = Math.max(k_least_slice, slice * Math.min(2, Math.max(0.5, slice_ms / took)));
    say(ticket, one, runs.answer(one.search), over);
    if (over) runs.close(one.search);
    return over;
  }

  function turn() {
    is_waiting = false;
    const next = lists.entries().next().value;
    if (!next) return;
    const [ticket, one] = next;
    let over = true;
    try {
      over = work_on(ticket, one);
    } catch {
      begin_anew();
      over = one_by_one || lists.size === 1;
      one_by_one = true;
      if (over) tell({ ticket, answer: '', over });
    }
    if (over || !one_by_one) lists.delete(ticket);
    if (!over && !one_by_one) lists.set(ticket, one);
    if (lists.size === 0 && runs && !is_kept(runs)) runs = null;
    wake();
  }
  function wake() {
    if (is_waiting || !module || lists.size === 0) return;
    is_waiting = true;
    pause(turn);
  }
  return function take({ code, ticket, list, most }) {
    if (code) {
      module = code;
      return wake();
    }
    const old = lists.get(ticket);
    if (old?.search) runs.close(old.search);
    lists.delete(ticket);
    if (list) lists.set(ticket, { list, most, search: 0, told: '', told_at: 0 });
    return wake();
  };
}

if (typeof WorkerGlobalScope !== 'undefined' && self instanceof WorkerGlobalScope) {
  // A message to oneself lets those from the page come first, and waits for no clock.
  const { port1, port2 } = new MessageChannel();
  let then = null;
  port1.onmessage = () => then();
  const take = cutter((words) => self.postMessage(words), (turn) => {
    then = turn;
    port2.postMessage(0);
  });
  self.onmessage = ({ data }) => take(data);
}
