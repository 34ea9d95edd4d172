// Other versions of the page: the worker that keeps one, the news of another, and going over to it
// in all tabs at once. Words between tabs, version 1: { treadle: 1, say, token }
//   flush    store what you have; answered by `here` at once and `flushed` when all is stored
//   go       everything is stored: open again as soon as the new version answers
//   stay     somebody could not store; nothing changes

mergeInto(LibraryManager.library, {
  $Versions: {
    k_again_ms: 4 * 60 * 60 * 1000,
    k_here_ms: 300, // a tab that lives has said `here` by then
    k_flush_ms: 8000,
    offline: 0, // as VersionNews::Offline
    waiting: false,
    switching: false,
    couldNot: false,
    going: false, // this tab opens again when the new version answers
    registration: null,
    channel: null,
    flushes: null, // ticket -> what to call
    tickets: 0,
    token: '', // of the switch that this tab asked for
    others: null, // tab -> has flushed
    waitingBuild: '', // of the worker that waits
    isDue: false, // asking for versions, as soon as the tab is seen

    tell: function () {
      _treadle_on_versions(Versions.offline, window.isSecureContext ? 1 : 0,
        Versions.waiting ? 1 : 0, Versions.switching ? 1 : 0, Versions.couldNot ? 1 : 0);
    },
    // Never done when something cannot be stored.
    flush: function () {
      return new Promise(function (done) {
        Versions.flushes.set(++Versions.tickets, done);
        _treadle_on_flush(Versions.tickets);
      });
    },
    openAgain: function () {
      if (!Versions.going) return;
      Versions.going = false;
      Versions.flush().then(function () { location.reload(); });
    },
    say: function (words) {
      if (Versions.channel) Versions.channel.postMessage(Object.assign({ treadle: 1 }, words));
    },

    // ---- going over ----------------------------------------------------------------------------

    heard: function (words) {
      if (!words || words.treadle !== 1) return;
      if (words.say === 'flush') {
        var tab = Treadle.ownTab;
        Versions.switching = true;
        Versions.say({ say: 'here', token: words.token, tab: tab });
        Versions.flush().then(function () {
          Versions.say({ say: 'flushed', token: words.token, tab: tab });
        });
        return Versions.tell();
      }
      if (words.say === 'go') {
        Versions.going = true;
        // Nothing to wait for where no worker answers.
        if (!navigator.serviceWorker || !navigator.serviceWorker.controller) Versions.openAgain();
      }
      if (words.say === 'stay') {
        Versions.switching = false;
        Versions.tell();
      }
      if (words.token !== Versions.token || !Versions.others) return;
      if (words.say === 'here' && !Versions.others.has(words.tab)) Versions.others.set(words.tab, false);
      if (words.say === 'flushed') Versions.others.set(words.tab, true);
    },
    allFlushed: function (own) {
      var wait = function (ms) { return new Promise(function (done) { setTimeout(done, ms); }); };
      var end = Date.now() + Versions.k_flush_ms;
      var mine = false;
      own.then(function () { mine = true; });
      var look = function () {
        if (mine && Array.from(Versions.others.values()).every(Boolean)) return true;
        return Date.now() > end ? false : wait(50).then(look);
      };
      return wait(Versions.k_here_ms).then(look);
    },
    go: function () {
      Versions.say({ say: 'go', token: Versions.token });
      Versions.going = true;
      var waiting = Versions.registration && Versions.registration.waiting;
      if (!waiting) return Versions.openAgain();
      waiting.addEventListener('statechange', function () {
        if (waiting.state === 'activated') Versions.openAgain();
      });
      // A worker that is just answering is not replaced, and the browser may forget that it was to be.
      var again = setInterval(function () {
        if (waiting.state === 'installed') waiting.postMessage({ treadle: 1, do: 'skipWaiting' });
        else clearInterval(again);
      }, 1000);
      waiting.postMessage({ treadle: 1, do: 'skipWaiting' });
    },
    switchNow: function () {
      if (Versions.switching) return;
      Versions.switching = true;
      Versions.couldNot = false;
      Versions.others = new Map();
      Versions.token = Treadle.ownTab + Date.now();
      Versions.tell();
      Versions.say({ say: 'flush', token: Versions.token });
      Versions.allFlushed(Versions.flush()).then(function (all) {
        if (all) return Versions.go();
        Versions.say({ say: 'stay', token: Versions.token });
        Versions.switching = false;
        Versions.couldNot = true;
        Versions.tell();
      });
    },

    // ---- with a worker -------------------------------------------------------------------------

    // What a worker says of itself; nothing when it does not answer.
    stateOf: function (worker) {
      if (!worker) return Promise.resolve(null);
      return new Promise(function (done) {
        var ways = new MessageChannel();
        ways.port1.onmessage = function (event) { done(event.data); };
        setTimeout(function () { done(null); }, 30000);
        worker.postMessage({ treadle: 1, ask: 'state' }, [ways.port2]);
      });
    },
    look: function () {
      var own = Module['build'].id, found = Versions.registration;
      Promise.all([Versions.stateOf(found.active), Versions.stateOf(found.waiting)]).then(function (is) {
        var active = is[0], waiting = is[1];
        Versions.waitingBuild = waiting ? waiting.build : '';
        Versions.waiting = Boolean(waiting) || Boolean(active && active.build !== own);
        if (active && active.complete) Versions.offline = 1;
        else if (!found.installing) Versions.offline = 2;
        if (active && active.build === own && !navigator.serviceWorker.controller)
          found.active.postMessage({ treadle: 1, do: 'claim' });
        Versions.tell();
      });
    },
    follow: function (worker) {
      if (worker) worker.addEventListener('statechange', Versions.look);
    },
    register: function () {
      navigator.serviceWorker.addEventListener('controllerchange', function () {
        if (Versions.going) Versions.openAgain();
        else if (Versions.registration) Versions.look();
      });
      // Where one is registered the browser asks for its next version by itself at each opening.
      navigator.serviceWorker.getRegistration().then(function (registration) {
        return registration ||
          navigator.serviceWorker.register('sw.js', { updateViaCache: 'none' });
      }).then(function (registration) {
        if (!registration) throw new Error('none');
        Versions.registration = registration;
        Versions.follow(registration.installing);
        registration.addEventListener('updatefound', function () {
          Versions.follow(registration.installing);
        });
        Versions.look();
        Versions.ask();
        Versions.askNowAndThen();
      }).catch(Versions.withoutWorker);
    },

    // Browsers look for another worker at each opening, but at their lowest priority: on a busy device
    // minutes later, and what is asked for meanwhile waits behind it. So the host is asked for the id
    // of its build, and another one has its worker registered under an address of its own at once.
    ask: function () {
      Versions.isDue = document.hidden;
      if (Versions.isDue) return;
      fetch('build.json', { cache: 'no-store' }).then(function (answer) {
        return answer.ok ? answer.json() : null;
      }).then(Versions.hostHas).catch(function () {}); // not to be reached just now
    },
    hostHas: function (found) {
      if (!found || typeof found.build !== 'string') return;
      var isOther = found.build !== Module['build'].id;
      if (Versions.registration) {
        if (isOther && found.build !== Versions.waitingBuild)
          return navigator.serviceWorker.register('sw.js?build=' + encodeURIComponent(found.build),
            { updateViaCache: 'none' });
      } else if (Versions.waiting !== isOther) {
        Versions.waiting = isOther;
        Versions.tell();
      }
    },
    askNowAndThen: function () {
      setInterval(function () {
        Versions.ask();
        // The same build may have a worker that takes it all away.
        if (Versions.registration && !Versions.isDue)
          Versions.registration.update().catch(function () {});
      }, Versions.k_again_ms);
      document.addEventListener('visibilitychange', function () {
        if (Versions.isDue) Versions.ask();
      });
    },

    // ---- without one ---------------------------------------------------------------------------

    withoutWorker: function () {
      Versions.offline = 2;
      Versions.tell();
      Versions.ask();
      Versions.askNowAndThen();
    },
  },

  treadle_build__deps: ['$Treadle'],
  treadle_build: function () {
    var build = Module['build'];
    return Treadle.text([build.version, build.id, build.sources,
      build.isOneFile ? 'one file' : 'hosted', build.copy && !build.isOneFile ? 'copy' : ''].join('\n'));
  },

  treadle_watch_versions__deps: ['$Treadle', '$Versions'],
  treadle_watch_versions: function () {
    Versions.flushes = new Map();
    Treadle.ownTab = crypto.getRandomValues(new Uint32Array(2)).join('-');
    if (Module['build'].isOneFile) return Versions.tell();
    if (window.BroadcastChannel) {
      Versions.channel = new BroadcastChannel('treadle-versions');
      Versions.channel.onmessage = function (event) { Versions.heard(event.data); };
    }
    // What a test or somebody who waits may do: ask for news now.
    window['treadle_look_for_versions'] = Versions.ask;
    if (window.isSecureContext && 'serviceWorker' in navigator) Versions.register();
    else Versions.withoutWorker();
    if (!navigator.serviceWorker || !navigator.serviceWorker.controller)
      setTimeout(Module['build'].warm, 1000);
  },

  treadle_switch_version__deps: ['$Versions'],
  treadle_switch_version: function () { Versions.switchNow(); },

  treadle_flushed__deps: ['$Versions'],
  treadle_flushed: function (ticket) {
    var done = Versions.flushes.get(ticket);
    Versions.flushes.delete(ticket);
    if (done) done();
  },

  treadle_hand_part: function (part) {
    var build = Module['build'];
    var link = document.createElement('a');
    var press = function () {
      document.body.append(link);
      link.click();
      link.remove();
    };
    if (part === 0) {
      link.href = link.download = build.copy;
      return press();
    }
    link.target = '_blank';
    link.rel = 'noopener';
    if (!build.isOneFile) {
      link.href = build.files['licences.txt'][0];
      return press();
    }
    build.textOf('licences.txt').then(function (words) {
      link.href = URL.createObjectURL(new Blob([words], { type: 'text/plain;charset=utf-8' }));
      press();
    });
  },

  treadle_keep_in_tab: function (text) {
    try {
      sessionStorage.setItem('treadle-place', UTF8ToString(text));
    } catch (refused) {} // then the place that all tabs share is the next best
  },

  treadle_take_from_tab__deps: ['$Treadle'],
  treadle_take_from_tab: function () {
    var found = null;
    try {
      found = sessionStorage.getItem('treadle-place');
      sessionStorage.removeItem('treadle-place');
    } catch (refused) {}
    return Treadle.text(found || '');
  },
});
