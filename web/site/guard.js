// Runs before everything else and stays to the first picture: what stops the page is told, with its
// cause and what to try. Begins the one global of the start: treadle_guard.

(function () {
  const root = document.documentElement;
  const id = document.querySelector('meta[name=build]').content;

  function trouble(title, words) {
    // The first cause is the one to tell; what follows from it is not.
    if (root.dataset.state === 'trouble') return;
    document.getElementById('splash').hidden = true;
    document.getElementById('trouble-title').textContent = title;
    document.getElementById('trouble-words').textContent = words;
    document.getElementById('trouble').hidden = false;
    root.dataset.state = 'trouble';
  }

  const k_words = {
    updated: ['The page was updated on the server while it loaded',
      'Its files are of two versions now, and they are never mixed. Reload the page to get the new '
      + 'one. What you stored is kept.'],
    unreachable: ['The page could not start',
      'A file is missing or was blocked: the server or the network did not answer. Reload the page '
      + 'when the network is back.'],
    missing: ['The page could not start',
      'A file is missing or was blocked. Reload the page; if that does not help, ask whoever runs '
      + 'this server whether all files are there.'],
    type: ['The page could not start',
      'The server sends a script under a wrong type, and browsers do not run it then. Whoever runs '
      + 'this server finds the right types in the samples that come with the page.'],
    changed: ['A file of the page is not the one that was built',
      'It was changed on the server or on its way, so it was not run. Reload the page; if that does '
      + 'not help, tell whoever runs this server. What you stored is kept.'],
  };

  async function is_updated() {
    try {
      const answer = await fetch('build.json', { cache: 'no-store' });
      return answer.ok && (await answer.json()).build !== id;
    } catch {
      return false;
    }
  }

  async function cause(file) {
    if (await is_updated()) return 'updated';
    let answer;
    try {
      answer = await fetch(file, { cache: 'no-store' });
    } catch {
      return 'unreachable';
    }
    if (!answer.ok) return 'missing';
    const type = answer.headers.get('content-type') || '';
    return /\.js$/.test(new URL(file, location).pathname) && !/javascript/i.test(type)
      ? 'type' : 'changed';
  }

  /** Asks the server why a file did not come, and says so. The program is not begun any more. */
  async function file_failed(file) {
    if (root.dataset.state !== 'starting') return;
    window.treadle_guard.has_failed = true;
    const [title, words] = k_words[await cause(file)];
    trouble(title, `${words} (${new URL(file, location).pathname.split('/').pop()})`);
  }

  /** A line over the page for what is missing and does not stop it. */
  function note(words) {
    document.getElementById('plain-why').textContent = words;
    document.getElementById('plain').hidden = false;
    root.dataset.note = '1';
  }

  window.treadle_guard = { trouble, file_failed, note, has_failed: false };

  window.addEventListener('error', ({ target }) => {
    if (target instanceof HTMLScriptElement && target.src) file_failed(target.src);
    else if (target instanceof HTMLLinkElement && /stylesheet|modulepreload/.test(target.rel))
      file_failed(target.href);
  }, true);
  // The style came before this script, or did not.
  const style = document.querySelector('link[rel=stylesheet]');
  if (style && !getComputedStyle(root).getPropertyValue('--paper')) file_failed(style.href);
})();
