// Fetches the typeface and the program, and starts it. When something is missing it says what.
//
// The same in both forms: hosted, its parts are files beside it, each checked by its sum; in the
// one-file copy they lie in k_build itself.

const k_build = TREADLE_BUILD; // { id, version, sources, … } and where the parts are: see pack.mjs
const k_fonts = { 'B612-Regular.otf': '400', 'B612-Bold.otf': '700' };
const { inside, modules } = k_build; // of the one-file copy

function part_failed(name, error) {
  return Object.assign(new Error(`${name}: ${error?.message ?? error}`),
    { file: inside ? null : k_build.files[name][0] });
}

async function fetched(name) {
  const [file, integrity] = k_build.files[name];
  try {
    const answer = await fetch(file, { integrity });
    if (answer.ok) return answer;
    throw new Error(answer.status);
  } catch (error) {
    throw part_failed(name, error);
  }
}

async function inflated(name) {
  const packed = Uint8Array.from(atob(inside[name]), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(stream).arrayBuffer();
}

const bytes_of = async (name) => new Uint8Array(
  inside ? await inflated(name) : await (await fetched(name)).arrayBuffer());

async function compiled(name) {
  if (inside) return WebAssembly.compile(await inflated(name));
  const answer = await fetched(name);
  // A server that does not know the type sends another one: then only from bytes.
  return (answer.headers.get('content-type') || '').startsWith('application/wasm')
    ? WebAssembly.compileStreaming(answer)
    : WebAssembly.compile(await answer.arrayBuffer());
}

/** Has the browser check a module's sum before anything runs it. */
function checked(name) {
  const link = document.createElement('link');
  if (!link.relList.supports('modulepreload')) return fetched(name);
  [link.href, link.integrity] = k_build.files[name];
  link.rel = 'modulepreload';
  return new Promise((done, fail) => {
    link.onload = done;
    link.onerror = () => fail(part_failed(name, 'was not taken'));
    document.head.append(link);
  });
}

async function imported(name, is_checked) {
  if (inside) return modules[name]();
  if (!is_checked) await checked(name);
  return import(new URL(k_build.files[name][0], import.meta.url)).catch((error) => {
    throw part_failed(name, error);
  });
}

// ---- the cutter, which most visits never need -----------------------------------------------------

let cutting = null;
function cutting_parts() {
  cutting ??= (async () => {
    const { start_cutting, cutter_name } = await imported('cutting.mjs');
    const [code] = await Promise.all([compiled(cutter_name()), inside || fetched('cutter.mjs')]);
    return { start_cutting, code };
  })();
  cutting.catch(() => { cutting = null; });
  return cutting;
}

function cutting_worker() {
  if (!inside) {
    const file = new URL(k_build.files['cutter.mjs'][0], import.meta.url);
    return new Worker(file, { type: 'module' });
  }
  // The module is a function here; its text is the worker.
  const text = new Blob([`(${modules['cutter.mjs']})()`], { type: 'text/javascript' });
  return new Worker(URL.createObjectURL(text));
}

async function start_cutting(answered) {
  const { start_cutting: start, code } = await cutting_parts();
  return start(answered, { code, worker: cutting_worker, cutter: () => imported('cutter.mjs') });
}

/** Has all that is asked for later: when the server gets another version, this page goes on. */
function warm() {
  if (!inside) Promise.all([cutting_parts(), imported('cutter.mjs')]).catch(() => {});
}

// ---- the start ------------------------------------------------------------------------------------

function not_started(error) {
  const { trouble, file_failed } = window.treadle_guard;
  const words = String(error?.message ?? error).slice(0, 200);
  if (error?.name === 'CompileError' || /unsafe-eval|wasm.*(blocked|refused|disallow)/i.test(words))
    return trouble('The page could not start', 'WebAssembly was blocked, by a setting of this browser '
      + 'or a rule of this network. Allow it for this page, or open the page in another browser. '
      + `(${words})`);
  if (error?.file) return file_failed(error.file);
  return trouble('The page could not start', 'This browser may be too old, or the page was blocked: '
    + `try a browser of the last five years. What you stored is kept. (${words})`);
}

async function typeface(name) {
  try {
    const bytes = await bytes_of(name);
    // The one-file copy may ask for nothing, not even of itself.
    if (inside) document.fonts.add(await new FontFace('B612', bytes.buffer, { weight: k_fonts[name] }).load());
    return bytes;
  } catch {
    window.treadle_guard.note('The typeface of the page is missing or was changed on its way: letters '
      + 'look plainer, all else works. Reload the page, or tell whoever runs this server.');
    return new Uint8Array(0);
  }
}

async function start() {
  if (!window.treadle_guard) {
    document.getElementById('splash-words').textContent = 'A file of the page is missing or was '
      + 'changed (guard.js). Reload the page, or ask whoever runs this server.';
    return;
  }
  if (typeof WebAssembly !== 'object') {
    window.treadle_guard.trouble('This browser cannot run the page',
      'WebAssembly is missing or switched off. A browser of the last five years has it.');
    return;
  }
  // All files at once, and the program is compiled while it arrives: none waits for another.
  const [{ default: program }, code, bootFiles] = await Promise.all([imported('app.mjs', true),
    compiled('app.wasm'), Promise.all(Object.keys(k_fonts).map(typeface))]);
  if (window.treadle_guard.has_failed) return;
  await program({
    bootFiles,
    build: { ...k_build, isOneFile: Boolean(inside), textOf: async (name) => new TextDecoder().decode(await bytes_of(name)), warm },
    instantiateWasm: (imports, done) => {
      WebAssembly.instantiate(code, imports).then((made) => done(made), not_started);
      return {};
    },
    startCutting: start_cutting,
    onAbort: (reason) => document.documentElement.dataset.state === 'starting'
      ? not_started(new Error(reason)) : window.treadle_guard.trouble('The program has a fault and stopped',
      'What you entered and stored is kept. Reload the page to go on. (' + reason + ')'),
  });
}

start().catch(not_started);
