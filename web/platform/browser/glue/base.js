// Carries bytes between the browser and the program. It decides nothing about jobs or looks.
//
// Linked with --js-library, before the other files of this folder, which add to $Treadle. Traps of
// that: no Map as a property's value (made in treadle_listen), and names of the runtime such as
// UTF8ToString are used but not listed as dependencies.

mergeInto(LibraryManager.library, {
  $Treadle: {
    nodes: null, // id -> {element, data}
    dirty: null, // id -> frames until the element is set back to what the program holds
    stage: null,
    mirror: null,
    canvas: null,
    pointerUpAt: 0,
    lastPointer: 'mouse',
    byTouch: false, // the last press was a finger's, and no key of a keyboard came since
    wakeTimer: 0,
    contextTimer: 0,
    database: null,
    wakeLock: null,
    wantsAwake: false,
    focusBeforeDialog: null,
    focusBeforePreview: null,
    focusBeforeCopy: null,
    plain: false, // without a drawing surface
    dialogId: '',
    ownTab: '', // a name that no other tab has
    cutting: null, // a promise of the function that asks the cutter

    // ---- strings and bytes ---------------------------------------------------------------------

    text: function (words) {
      var length = lengthBytesUTF8(words) + 1;
      var at = _malloc(length);
      stringToUTF8(words, at, length);
      return at;
    },
    withText: function (words, call) {
      var at = Treadle.text(words);
      try {
        return call(at);
      } finally {
        _free(at);
      }
    },
    withBytes: function (bytes, call) {
      var at = _malloc(bytes.length + 1);
      HEAPU8.set(bytes, at);
      HEAPU8[at + bytes.length] = 0;
      try {
        return call(at, bytes.length);
      } finally {
        _free(at);
      }
    },

    // ---- trouble -------------------------------------------------------------------------------

    trouble: function (title, words) {
      var box = document.getElementById('trouble');
      document.getElementById('trouble-title').textContent = title;
      document.getElementById('trouble-words').textContent = words;
      document.getElementById('splash').hidden = true;
      box.hidden = false;
      document.documentElement.dataset.state = 'trouble';
    },

    // Where a system keyboard covers the page instead of making it smaller, the stage is made so.
    listenKeyboardRoom: function () {
      var seen = window.visualViewport;
      if (!seen) return;
      var fit = function () {
        // Two fingers that enlarge the page are no keyboard.
        var covered = seen.scale > 1.01 ? 0 : window.innerHeight - seen.height;
        var isKeyboard = covered > 100;
        Treadle.stage.style.setProperty('--covered', (isKeyboard ? covered : 0) + 'px');
        Treadle.stage.style.setProperty('--shift', (isKeyboard ? seen.offsetTop : 0) + 'px');
      };
      seen.addEventListener('resize', fit);
      seen.addEventListener('scroll', fit);
    },

    // ---- size and preferences ------------------------------------------------------------------

    listenSize: function () {
      var coarse = matchMedia('(pointer: coarse)');
      // The program draws on whole pixels of the screen: sizes are given so that none is left over.
      var drawable = function (pixels, density) {
        var size = pixels / density;
        return Math.fround(size) * Math.fround(density) < pixels ? size + 0.005 : size;
      };
      var exact = null; // pixels, as only the browser knows them where a pixel is no whole number
      var tell = function () {
        var density = window.devicePixelRatio || 1;
        var box = Treadle.stage.getBoundingClientRect();
        var pixels = function (length, known) {
          var most = length * density; // a density that a test makes up is not known to the box
          return Math.max(1, known && Math.abs(known - most) < 1.5 ? known : Math.round(most));
        };
        var width = pixels(box.width, exact && exact.inlineSize);
        var height = pixels(box.height, exact && exact.blockSize);
        exact = null;
        if (Treadle.canvas.width !== width) Treadle.canvas.width = width;
        if (Treadle.canvas.height !== height) Treadle.canvas.height = height;
        _treadle_on_resize(drawable(width, density), drawable(height, density), density,
          coarse.matches ? 1 : 0);
      };
      var observer = new ResizeObserver(function (entries) {
        var sizes = entries[entries.length - 1].devicePixelContentBoxSize;
        exact = sizes ? sizes[0] : null;
        tell();
      });
      try {
        observer.observe(Treadle.stage, { box: 'device-pixel-content-box' });
      } catch (unknown) {
        observer.observe(Treadle.stage);
      }
      coarse.addEventListener('change', tell);
      var watchDensity = function () {
        matchMedia('(resolution: ' + window.devicePixelRatio + 'dppx)')
          .addEventListener('change', function () { tell(); watchDensity(); }, { once: true });
      };
      watchDensity();
      tell();
      var wishes = ['(prefers-color-scheme: dark)', '(prefers-reduced-motion: reduce)',
        '(prefers-contrast: more)'].map(function (query) { return matchMedia(query); });
      var prefer = function () {
        _treadle_on_prefer(wishes[0].matches, wishes[1].matches, wishes[2].matches);
      };
      wishes.forEach(function (wish) { wish.addEventListener('change', prefer); });
      prefer();
    },

    takeWakeLock: function () {
      if (!Treadle.wantsAwake || !navigator.wakeLock || document.hidden || Treadle.wakeLock) return;
      navigator.wakeLock.request('screen').then(function (lock) {
        Treadle.wakeLock = lock;
        lock.addEventListener('release', function () { Treadle.wakeLock = null; });
        if (!Treadle.wantsAwake) lock.release();
      }, function () {});
    },
  },

  treadle_listen__deps: ['$Treadle'],
  treadle_listen: function () {
    Treadle.nodes = new Map();
    Treadle.dirty = new Map();
    Treadle.stage = document.getElementById('stage');
    Treadle.mirror = document.getElementById('mirror');
    Treadle.canvas = document.getElementById('canvas');
    Treadle.listenSize();
    Treadle.listenPointers();
    Treadle.listenKeys();
    // For whoever compares the picture with the mirror: what can be pressed, and where.
    window['treadle_drawn'] = function () { return JSON.parse(UTF8ToString(_treadle_drawn())); };
    Treadle.listenPreview();
    Treadle.listenCopyBox();
    Treadle.listenKeyboardRoom();
    document.addEventListener('visibilitychange', Treadle.takeWakeLock);
  },

  treadle_count_frame__deps: ['$Treadle'],
  treadle_count_frame: function (drawn, milliseconds) {
    Treadle.stage.dataset.frameMs = milliseconds.toFixed(2);
    Treadle.stage.dataset.frames = drawn;
    // A picture without anything in it is none yet: the job is still being read.
    if (document.documentElement.dataset.state === 'starting' && Treadle.nodes.size > 0) {
      document.documentElement.dataset.state = 'ready';
      document.getElementById('splash').hidden = true;
    }
  },

  treadle_trouble__deps: ['$Treadle'],
  treadle_trouble: function (title, words) {
    Treadle.trouble(UTF8ToString(title), UTF8ToString(words));
  },

  treadle_context__deps: ['$Treadle'],
  treadle_context: function (lost) {
    clearTimeout(Treadle.contextTimer);
    var box = document.getElementById('trouble');
    if (!lost) {
      box.hidden = true;
      document.documentElement.dataset.state = 'ready';
      return;
    }
    Treadle.contextTimer = setTimeout(function () {
      Treadle.trouble('The graphics went away',
        'The browser took the drawing surface back and has not returned it. What you entered is ' +
        'stored. Reload the page to go on.');
    }, 3000);
  },

  treadle_boot_file__deps: ['$Treadle'],
  treadle_boot_file: function (index, length) {
    var bytes = (Module['bootFiles'] || [])[index] || new Uint8Array(0);
    var at = _malloc(bytes.length + 1);
    HEAPU8.set(bytes, at);
    HEAP32[length >> 2] = bytes.length;
    return at;
  },

  treadle_wake_in__deps: ['$Treadle'],
  treadle_wake_in: function (seconds) {
    clearTimeout(Treadle.wakeTimer);
    Treadle.wakeTimer = setTimeout(function () { _treadle_on_wake(); }, seconds * 1000);
  },

  treadle_cut__deps: ['$Treadle'],
  treadle_cut: function (ticket, list, most) {
    var words = UTF8ToString(list);
    var answered = function (of, answer) {
      Treadle.withText(answer, function (at) { _treadle_on_cut(of, at); });
    };
    if (!Treadle.cutting) Treadle.cutting = Module['startCutting'](answered);
    Treadle.cutting.then(function (ask) { ask(ticket, words, most); },
      function () { answered(ticket, ''); });
  },

  treadle_now_text__deps: ['$Treadle'],
  treadle_now_text: function () {
    return Treadle.text(new Date().toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' }));
  },

  treadle_day_text__deps: ['$Treadle'],
  treadle_day_text: function () {
    return Treadle.text(new Date().toLocaleDateString([], { day: 'numeric', month: 'short' }));
  },

  treadle_announce__deps: ['$Treadle'],
  treadle_announce: function (sentence) {
    var status = document.getElementById('status');
    var words = UTF8ToString(sentence);
    // The same words twice are only read again when the text differs.
    status.textContent = status.textContent === words ? words + '\u00a0' : words;
  },

  treadle_look: function (name, scale) {
    document.documentElement.dataset.look = UTF8ToString(name);
    document.documentElement.style.setProperty('--text-scale', scale);
  },

  treadle_keep_awake__deps: ['$Treadle'],
  treadle_keep_awake: function (awake) {
    Treadle.wantsAwake = !!awake;
    if (awake) Treadle.takeWakeLock();
    else if (Treadle.wakeLock) Treadle.wakeLock.release();
  },

  treadle_can_keep_awake: function () {
    return navigator.wakeLock ? 1 : 0;
  },

  treadle_fragment__deps: ['$Treadle'],
  treadle_fragment: function () {
    return Treadle.text(location.hash.slice(1));
  },
});
