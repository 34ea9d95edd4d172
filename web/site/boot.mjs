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

async function bytesOf(name) {
  const answer = await fetch(name);
  if (!answer.ok) throw new Error(name + ': ' + answer.status);
  return new Uint8Array(await answer.arrayBuffer());
}

async function start() {
  if (typeof WebAssembly !== 'object') {
    trouble('This browser cannot run the page',
      'WebAssembly is missing or switched off. A browser of the last five years has it.');
    return;
  }
  // Without its typeface the page still works, only plainer.
  const files = Promise.all(['B612-Regular.otf', 'B612-Bold.otf'].map((name) =>
    bytesOf(name).catch(() => new Uint8Array(0))));
  const { default: program } = await import('./app.mjs');
  await program({
    bootFiles: await files,
    startCutting: async (answered) => (await import('./cutting.mjs')).start_cutting(answered),
    onAbort: (reason) => trouble('The program has a fault and stopped',
      'What you entered and stored is kept. Reload the page to go on. (' + reason + ')'),
  });
}

start().catch((error) => trouble('The page could not start',
  'A file is missing or was blocked: ' + error.message + '. Reload the page; if that does not help, '
  + 'ask whoever runs this server whether all files are there.'));
