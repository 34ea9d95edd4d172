// Which of this browser's pages writes a job, and words between them.
//
// Where the browser has locks, one is held as long as the page writes; it goes with the page. Where
// it has none (plain http), a page that wants to write asks the others, and one that writes answers;
// without an answer it puts its word under a key, unless that key was changed meanwhile. No clock
// and no beat: a page in the background answers, but its timers may sleep for a minute. A page that
// is wrong about it all the same finds its turn taken when it stores (job_store.h).

mergeInto(LibraryManager.library, {
  $Holding: {
    channel: null,
    holds: null, // name -> {ticket, isMine, release, stop}
    word: '',
    hears: null, // a call for words between pages
    mine: 0, others: 1, asked: 2, // platform::Claim
    answerMs: 3000, // who writes answers at once, but may be busy drawing
    insistMs: 4000,

    start: function () {
      if (Holding.holds) return;
      Holding.holds = new Map();
      Holding.word = Math.random().toString(36).slice(2) + Date.now().toString(36);
      if (typeof BroadcastChannel === 'undefined') return;
      Holding.channel = new BroadcastChannel('treadle-pages');
      Holding.channel.onmessage = function (event) { Holding.hear(event.data || {}); };
      window.addEventListener('pagehide', function () {
        Holding.holds.forEach(function (hold, name) {
          if (hold.isMine && !Holding.locks()) Holding.post({ free: name });
        });
      });
    },
    locks: function () { return navigator.locks; },
    post: function (words) { if (Holding.channel) Holding.channel.postMessage(words); },
    tell: function (hold, how) {
      var isMine = how === Holding.mine;
      if (how !== Holding.asked && hold.isMine === isMine && hold.isTold) return;
      if (how !== Holding.asked) { hold.isMine = isMine; hold.isTold = true; }
      if (isMine) hold.insists = false; // what it asked for came, and may be given away again
      _treadle_on_hold(hold.ticket, how);
      if (!isMine || !hold.wasAsked) return;
      hold.wasAsked = false;
      setTimeout(function () { if (hold.isMine) Holding.tell(hold, Holding.asked); }, 100);
    },
    hear: function (words) {
      if (typeof words.told === 'string') return Holding.hears && Holding.hears(words.told);
      var name = words.ask || words.who || words.free || words.here || words.taken;
      var hold = Holding.holds.get(name);
      if (!hold) return;
      if (words.ask && hold.isMine) Holding.tell(hold, Holding.asked);
      else if (words.ask) hold.wasAsked = true; // just before it came
      if (words.who && hold.isMine && words.from !== Holding.word) Holding.post({ here: name });
      if (words.here && hold.onAnswer) hold.onAnswer();
      if (Holding.locks()) return;
      if (words.free && !hold.isMine) Holding.claim(name, hold, true);
      if (words.taken && hold.isMine) Holding.tell(hold, Holding.others);
    },

    // ---- with locks ----------------------------------------------------------------------------

    request: function (name, hold, options) {
      var stop = new AbortController();
      hold.stop = function () { stop.abort(); };
      if (!options.ifAvailable && !options.steal) options.signal = stop.signal;
      return Holding.locks().request('treadle-job-' + name, options, function (lock) {
        if (Holding.holds.get(name) !== hold) return null;
        if (!lock) { Holding.tell(hold, Holding.others); return null; }
        return new Promise(function (done) {
          hold.release = done;
          Holding.tell(hold, Holding.mine);
        });
      });
    },
    // Waits until it is free, and again after it was taken away.
    wait: function (name, hold) {
      Holding.request(name, hold, {}).catch(function () {
        var isLost = hold.isMine && Holding.holds.get(name) === hold;
        hold.release = null;
        if (!isLost) return;
        Holding.tell(hold, Holding.others);
        Holding.wait(name, hold);
      });
    },
    takeLock: function (name, hold, insist) {
      if (!insist) {
        Holding.request(name, hold, { ifAvailable: true }).then(function () {
          if (Holding.holds.get(name) === hold && !hold.isMine) Holding.wait(name, hold);
        }, function () {
          if (Holding.holds.get(name) !== hold) return;
          Holding.tell(hold, Holding.others);
          Holding.wait(name, hold);
        });
        return;
      }
      Holding.post({ ask: name });
      Holding.wait(name, hold);
      hold.insists = true;
      setTimeout(function () {
        if (Holding.holds.get(name) !== hold || !hold.insists) return;
        hold.stop();
        Holding.request(name, hold, { steal: true }).catch(function () {
          hold.release = null;
          if (Holding.holds.get(name) !== hold) return;
          Holding.tell(hold, Holding.others);
          Holding.wait(name, hold);
        });
      }, Holding.insistMs);
    },

    // ---- without ---------------------------------------------------------------------------------

    lease: function (name) { return 'lease/' + name; },
    // Puts this page's word there unless another one was put there since `seen`.
    exchange: function (name, seen) {
      var got = false;
      return Treadle.open().then(function (database) {
        if (!database) return true; // in memory there is no other page
        return new Promise(function (done, fail) {
          var change = database.transaction('kept', 'readwrite');
          var store = change.objectStore('kept');
          var asked = store.get(Holding.lease(name));
          asked.onsuccess = function () {
            got = Holding.wordOf(asked.result) === seen;
            if (got) store.put(new TextEncoder().encode(Holding.word), Holding.lease(name));
          };
          change.oncomplete = function () { done(got); };
          change.onerror = change.onabort = function () { fail(change.error); };
        });
      });
    },
    wordOf: function (bytes) { return bytes ? new TextDecoder().decode(bytes) : ''; },
    claim: function (name, hold, isFree) {
      var seen = '';
      Treadle.read(function (store) { return store.get(Holding.lease(name)); })
        .then(function (found) {
          seen = Holding.wordOf(found.result);
          if (!seen || isFree) return Holding.exchange(name, seen);
          Holding.post({ who: name, from: Holding.word });
          return new Promise(function (done) {
            hold.onAnswer = function () { done(true); };
            setTimeout(function () { done(false); }, Holding.answerMs);
          }).then(function (answered) { return answered ? false : Holding.exchange(name, seen); });
        }).catch(function () { return true; }) // a store that cannot be read is told elsewhere
        .then(function (got) {
          hold.onAnswer = null;
          if (Holding.holds.get(name) !== hold || hold.isMine) return;
          Holding.tell(hold, got ? Holding.mine : Holding.others);
          if (got) Holding.post({ taken: name });
          else setTimeout(function () {
            if (Holding.holds.get(name) === hold && !hold.isMine) Holding.claim(name, hold);
          }, 5000);
        });
    },
    takeLease: function (name, hold, insist) {
      if (!insist) return Holding.claim(name, hold);
      Holding.post({ ask: name });
      hold.insists = true;
      setTimeout(function () {
        if (Holding.holds.get(name) !== hold || !hold.insists) return;
        Treadle.read(function (store) { return store.get(Holding.lease(name)); })
          .then(function (found) { return Holding.exchange(name, Holding.wordOf(found.result)); })
          .then(function (got) {
            Holding.tell(hold, got ? Holding.mine : Holding.others);
            if (got) Holding.post({ taken: name });
          }, function () { Holding.tell(hold, Holding.others); });
      }, Holding.insistMs);
    },
  },

  treadle_hold__deps: ['$Treadle', '$Holding'],
  treadle_hold: function (at, insist, ticket) {
    var name = UTF8ToString(at);
    Holding.start();
    var before = Holding.holds.get(name);
    if (before && before.stop) before.stop();
    var hold = { ticket: ticket, isMine: false, isTold: false, release: null, stop: null, insists: false,
      wasAsked: false };
    Holding.holds.set(name, hold);
    if (Holding.locks()) Holding.takeLock(name, hold, insist);
    else Holding.takeLease(name, hold, insist);
  },
  treadle_let_go__deps: ['$Treadle', '$Holding'],
  treadle_let_go: function (at, stay) {
    var name = UTF8ToString(at);
    var hold = Holding.holds && Holding.holds.get(name);
    if (!hold) return;
    var wasMine = hold.isMine;
    if (!stay) Holding.holds.delete(name);
    hold.isMine = false;
    if (hold.release) hold.release();
    else if (hold.stop) hold.stop();
    hold.release = null;
    if (!Holding.locks() && wasMine) Holding.post({ free: name });
    if (!stay) return;
    Promise.resolve().then(function () {
      if (Holding.holds.get(name) !== hold) return;
      _treadle_on_hold(hold.ticket, Holding.others);
      if (Holding.locks()) Holding.wait(name, hold);
    });
  },
  treadle_tell_pages__deps: ['$Holding'],
  treadle_tell_pages: function (words) {
    Holding.start();
    Holding.post({ told: UTF8ToString(words) });
  },
  treadle_listen_pages__deps: ['$Treadle', '$Holding'],
  treadle_listen_pages: function () {
    Holding.start();
    Holding.hears = function (words) {
      Treadle.withText(words, function (at) { _treadle_on_told(at); });
    };
  },
  treadle_page_text__deps: ['$Treadle'],
  treadle_page_text: function () {
    try { return Treadle.text(sessionStorage.getItem('treadle-page') || ''); } catch (closed) { return Treadle.text(''); }
  },
  treadle_keep_page_text: function (words) {
    try { sessionStorage.setItem('treadle-page', UTF8ToString(words)); } catch (closed) { /* only a wish */ }
  },
});
