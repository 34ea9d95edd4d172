// The page's way to the cutter: in a worker, or between two frames where none can be started.

const k_on_page_ms = 8; // a slice, so that a finger is still answered at once

// A module whose one function gives four numbers at once.
const k_simd = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0,
  10, 22, 1, 20, 0, 253, 12, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 11]);

/** The file that this browser can run. */
export function cutter_name() {
  return WebAssembly.validate(k_simd) ? 'cutter-simd.wasm' : 'cutter-plain.wasm';
}

/**
 * Calls `answered(ticket, text)`, several times a list; gives a function to ask with. `parts`: the
 * compiled code, and functions that give a new worker and the module cutter.mjs.
 */
export function start_cutting(answered, parts) {
  const asked = new Map(); // lists that are not over
  const told = ({ ticket, answer, over }) => {
    if (over) asked.delete(ticket);
    answered(ticket, answer);
  };
  let send = null;

  function on_page() {
    const waiting = parts.cutter().then(({ cutter }) => {
      const take = cutter(told, (turn) => setTimeout(turn, k_on_page_ms), k_on_page_ms);
      take({ code: parts.code });
      return take;
    });
    send = (words) => waiting.then((take) => take(words),
      () => told({ ticket: words.ticket, answer: '', over: true }));
    asked.forEach(send);
  }
  try {
    const worker = parts.worker();
    send = (words) => worker.postMessage(words);
    worker.onmessage = ({ data }) => told(data);
    worker.onerror = (event) => {
      event.preventDefault();
      worker.terminate();
      on_page();
    };
    worker.postMessage({ code: parts.code });
  } catch {
    on_page();
  }
  return (ticket, list, most) => {
    const words = { ticket, list, most };
    if (list) asked.set(ticket, words);
    else asked.delete(ticket);
    send(words);
  };
}
