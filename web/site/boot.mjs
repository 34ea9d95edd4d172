// Fetches the typeface and the program, and starts it. When something is missing it says what.

function trouble(title, words) {
  // The first cause is the one to tell; what follows from it is not.
  if (document.documentElement.dataset.state === 'trouble') return;
  document.getElementById('splash').hidden = true;
  document.getElementById('trouble-title').textContent = title;
  document.getElementById('trouble-words').textContent = words;
  document.getElementById('trouble').hidden = false;
  document.documentElement.dataset.state = 'trouble';
}

// What stopped the start, and what to try.
function causeOf(error) {
  const words = String(error?.message ?? error);
  const why = words ? ` (${words.slice(0, 200)})` : '';
  if (error?.name === 'CompileError' || /unsafe-eval|wasm.*(blocked|refused|disallow)/i.test(words)) {
    return 'WebAssembly was blocked, by a setting of this browser or a rule of this network. Allow it '
      + `for this page, or open the page in another browser.${why}`;
  }
  return 'A file is missing or was blocked. Reload the page; if that does not help, ask whoever runs '
    + `this server whether all files are there.${why}`;
}

function notStarted(error) {
  trouble('The page could not start', causeOf(error));
}

async function bytesOf(name) {
  const answer = await fetch(name);
  if (!answer.ok) throw new Error(name + ': ' + answer.status);
  return new Uint8Array(await answer.arrayBuffer());
}

async function compiled(name) {
  const answer = await fetch(name);
  if (!answer.ok) throw new Error(name + ': ' + answer.status);
  // A server that does not know the type sends another one: then only from bytes.
  return (answer.headers.get('content-type') || '').startsWith('application/wasm')
    ? WebAssembly.compileStreaming(answer)
    : WebAssembly.compile(await answer.arrayBuffer());
}

async function start() {
  if (typeof WebAssembly !== 'object') {
    trouble('This browser cannot run the page',
      'WebAssembly is missing or switched off. A browser of the last five years has it.');
    return;
  }
  // All files at once, and the program is compiled while it arrives: none waits for another.
  // Without its typeface the page still works, only plainer.
  const files = Promise.all(['B612-Regular.otf', 'B612-Bold.otf'].map((name) =>
    bytesOf(name).catch(() => new Uint8Array(0))));
  const [{ default: program }, code, bootFiles] =
    await Promise.all([import('./app.mjs'), compiled('app.wasm'), files]);
  await program({
    bootFiles,
    instantiateWasm: (imports, done) => {
      WebAssembly.instantiate(code, imports).then((made) => done(made), notStarted);
      return {};
    },
    startCutting: async (answered) => (await import('./cutting.mjs')).start_cutting(answered),
    onAbort: (reason) => document.documentElement.dataset.state === 'starting'
      ? notStarted(new Error(reason)) : trouble('The program has a fault and stopped',
      'What you entered and stored is kept. Reload the page to go on. (' + reason + ')'),
  });
}

start().catch(notStarted);
