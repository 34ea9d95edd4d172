// The page's way to the cutter: in a worker, or between two frames where none can be started.

const k_on_page_ms = 8; // a slice, so that a finger is still answered at once

/** Calls `answered(ticket, text)`, several times a list; gives a function to ask with. */
export function start_cutting(answered) {
  const asked = new Map(); // lists that are not over
  const told = ({ ticket, answer, over }) => {
    if (over) asked.delete(ticket);
    answered(ticket, answer);
  };
  let send = null;

  function on_page() {
    const waiting = import('./cutter.mjs').then(({ cutter }) =>
      cutter(told, (turn) => setTimeout(turn, k_on_page_ms), k_on_page_ms));
    send = (words) => waiting.then((take) => take(words),
      () => told({ ticket: words.ticket, answer: '', over: true }));
    asked.forEach(send);
  }
  try {
    const worker = new Worker(new URL('cutter.mjs', import.meta.url), { type: 'module' });
    send = (words) => worker.postMessage(words);
    worker.onmessage = ({ data }) => told(data);
    worker.onerror = (event) => {
      event.preventDefault();
      worker.terminate();
      on_page();
    };
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
