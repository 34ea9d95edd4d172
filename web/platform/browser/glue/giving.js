// What comes to the page from outside while it is open: dropped files, pasted tables, the address,
// and what the host offers beside it.

mergeInto(LibraryManager.library.$Treadle, {
  giveText: function (words) {
    Treadle.withText('pasted table', function (name) {
      Treadle.withBytes(new TextEncoder().encode(words), function (at, length) {
        _treadle_on_picked(0, name, at, length);
      });
    });
  },
  listenGiven: function () {
    var page = document.documentElement;
    page.addEventListener('dragover', function (event) { event.preventDefault(); });
    page.addEventListener('drop', function (event) {
      event.preventDefault();
      var file = event.dataTransfer && event.dataTransfer.files[0];
      if (file) Treadle.takeFile(file, 0);
    });
    document.addEventListener('paste', function (event) {
      if (event.target.matches && event.target.matches('input, textarea')) return;
      var words = event.clipboardData ? event.clipboardData.getData('text/plain') : '';
      // A word or a line is no table.
      if (/[\t;,].*[\r\n]|[\r\n].*[\t;,]/s.test(words)) Treadle.giveText(words);
    });
    var box = document.getElementById('paste');
    var close = function () {
      box.hidden = true;
      Treadle.stage.inert = false;
      if (Treadle.focusBeforeCopy && Treadle.focusBeforeCopy.isConnected) Treadle.focusBeforeCopy.focus();
    };
    document.getElementById('paste-close').addEventListener('click', close);
    document.getElementById('paste-take').addEventListener('click', function () {
      var words = document.getElementById('paste-text').value;
      close();
      if (words.trim()) Treadle.giveText(words);
    });
    box.addEventListener('keydown', function (event) {
      if (event.key === 'Escape') close();
      event.stopPropagation();
    });
  },
  // At most so many bytes are taken, whatever the host says of the length.
  fetchBeside: function (name, most) {
    if (!/^https?:$/.test(location.protocol)) return Promise.resolve(null);
    var here = new URL('./', location.href), url = new URL(name, here);
    if (url.origin !== here.origin || !url.pathname.startsWith(here.pathname) || url.search || url.hash)
      return Promise.resolve(null);
    return fetch(url.href, { cache: 'no-cache', credentials: 'same-origin', redirect: 'error' })
      .then(function (answer) {
        if (!answer.ok || !answer.body) return null;
        var reader = answer.body.getReader(), parts = [], length = 0;
        var more = function (part) {
          if (part.done) {
            var all = new Uint8Array(length), at = 0;
            parts.forEach(function (one) { all.set(one, at); at += one.length; });
            return all;
          }
          length += part.value.length;
          if (length > most) {
            reader.cancel();
            return null;
          }
          parts.push(part.value);
          return reader.read().then(more);
        };
        return reader.read().then(more);
      });
  },
});

mergeInto(LibraryManager.library, {
  treadle_listen_given__deps: ['$Treadle'],
  treadle_listen_given: function () { Treadle.listenGiven(); },
  treadle_ask_for_table__deps: ['$Treadle'],
  treadle_ask_for_table: function () {
    Treadle.focusBeforeCopy = document.activeElement;
    document.getElementById('paste-text').value = '';
    document.getElementById('paste').hidden = false;
    Treadle.stage.inert = true;
    document.getElementById('paste-text').focus();
  },
  treadle_forget_fragment: function () {
    try { history.replaceState(null, '', location.pathname + location.search); } catch (refused) { location.hash = ''; }
  },
  treadle_page_address__deps: ['$Treadle'],
  treadle_page_address: function () { return Treadle.text(location.href.split('#')[0]); },
  treadle_fetch_beside__deps: ['$Treadle'],
  treadle_fetch_beside: function (name, most, ticket) {
    var answer = function (code, bytes) {
      Treadle.withBytes(bytes, function (at, length) {
        Treadle.withText('', function (words) { _treadle_on_loaded(ticket, code, at, length, words); });
      });
    };
    var none = new Uint8Array(0);
    Treadle.fetchBeside(UTF8ToString(name), most).then(function (bytes) {
      answer(bytes ? Treadle.stored.done : Treadle.stored.notFound, bytes || none);
    }, function () { answer(Treadle.stored.notFound, none); });
  },
});
