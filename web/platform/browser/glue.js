// Carries bytes between the browser and the program, and keeps the mirror's elements. It decides
// nothing about jobs or looks.
//
// Linked with --js-library. Traps of that: no Map as a property's value (made in init), and names
// of the runtime such as UTF8ToString are used but not listed as dependencies.

mergeInto(LibraryManager.library, {
  $Treadle: {
    nodes: null, // id -> {element, data}
    dirty: null, // id -> frames until the element is set back to what the program holds
    stage: null,
    mirror: null,
    canvas: null,
    pointerUpAt: 0,
    lastPointer: 'mouse',
    wakeTimer: 0,
    contextTimer: 0,
    database: null,
    wakeLock: null,
    wantsAwake: false,
    focusBeforeDialog: null,
    dialogId: '',
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

    // ---- pointers ------------------------------------------------------------------------------

    sendPointer: function (phase, event) {
      var box = Treadle.stage.getBoundingClientRect();
      var kind = event.pointerType === 'touch' ? 1 : event.pointerType === 'pen' ? 2 : 0;
      _treadle_on_pointer(phase, kind, event.pointerId, event.clientX - box.left,
        event.clientY - box.top, event.timeStamp / 1000);
    },
    listenPointers: function () {
      var stage = Treadle.stage;
      var down = null; // only pointers that went down on the stage are followed outside it
      stage.addEventListener('pointerdown', function (event) {
        if (event.pointerType === 'mouse' && event.button !== 0) return;
        Treadle.lastPointer = event.pointerType;
        down = down || {};
        down[event.pointerId] = true;
        Treadle.tellScrolls();
        Treadle.sendPointer(0, event);
      });
      window.addEventListener('pointermove', function (event) {
        if ((down && down[event.pointerId]) || stage.contains(event.target))
          Treadle.sendPointer(1, event);
      });
      window.addEventListener('pointerup', function (event) {
        if (!down || !down[event.pointerId]) return;
        delete down[event.pointerId];
        Treadle.pointerUpAt = performance.now();
        Treadle.sendPointer(2, event);
      });
      window.addEventListener('pointercancel', function (event) {
        if (!down || !down[event.pointerId]) return;
        delete down[event.pointerId];
        Treadle.sendPointer(3, event);
      });
      stage.addEventListener('pointerleave', function (event) {
        Treadle.sendPointer(4, event);
      });
      stage.addEventListener('wheel', function (event) {
        if (event.ctrlKey) return; // the browser's own zoom
        event.preventDefault();
        var unit = event.deltaMode === 1 ? 3 : event.deltaMode === 2 ? 0.125 : 100;
        var notches = function (delta) { return Math.max(-4, Math.min(4, delta / unit)); };
        var box = stage.getBoundingClientRect();
        _treadle_on_wheel(event.clientX - box.left, event.clientY - box.top,
          notches(event.deltaX), notches(event.deltaY));
      }, { passive: false });
      stage.addEventListener('contextmenu', function (event) {
        if (event.target.tagName !== 'INPUT') event.preventDefault();
      });
      // Pointers were handled above; what comes without one is a key, a reader or a script.
      stage.addEventListener('click', function (event) {
        var element = event.target.closest('[data-id]');
        if (!element || !Treadle.isPressable(element)) return;
        if (element.type === 'checkbox') Treadle.dirty.set(element.dataset.id, 2);
        if (event.detail !== 0 && performance.now() - Treadle.pointerUpAt < 700) return;
        Treadle.withText(element.dataset.id, _treadle_on_activate);
      });
      window.addEventListener('blur', function () {
        for (var id in down || {})
          _treadle_on_pointer(3, 0, Number(id), 0, 0, performance.now() / 1000);
        down = null;
      });
    },
    isPressable: function (element) {
      return element.tagName === 'BUTTON' || element.type === 'checkbox';
    },

    // ---- keys and focus ------------------------------------------------------------------------

    sendKey: function (event) {
      var key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
      return Treadle.withText(key, function (at) {
        return _treadle_on_key(at, event.ctrlKey || event.metaKey, event.shiftKey, event.altKey);
      });
    },

    listenKeys: function () {
      document.addEventListener('keydown', function (event) {
        var target = event.target;
        if (event.isComposing || event.defaultPrevented) return;
        var tag = target.tagName;
        if (tag === 'SELECT' || (tag === 'INPUT' && target.type !== 'checkbox')) return;
        if ((event.key === 'Enter' || event.key === ' ') && Treadle.isPressable(target)) return;
        if (document.getElementById('preview').contains(target)) return;
        if (Treadle.sendKey(event)) event.preventDefault();
      });
      Treadle.mirror.addEventListener('focusin', function (event) {
        var element = event.target.closest('[data-id]');
        var seen = element && element.matches(':focus-visible');
        Treadle.withText(seen ? element.dataset.id : '', _treadle_on_focus);
      });
      Treadle.mirror.addEventListener('focusout', function () {
        Treadle.withText('', _treadle_on_focus);
      });
    },

    // ---- fields --------------------------------------------------------------------------------

    commit: function (element) {
      var id = element.dataset.id;
      var node = Treadle.nodes.get(id);
      if (!node || element.value === node.data.value) return;
      if (!node.data.live) Treadle.dirty.set(id, 2); // the letters of a live field stay the user's
      Treadle.withText(id, function (at) {
        Treadle.withText(element.value, function (value) {
          _treadle_on_text(at, value);
        });
      });
    },
    isLive: function (element) {
      var node = Treadle.nodes.get(element.dataset.id);
      return Boolean(node && node.data.live);
    },
    // What a field of words does not need itself: Ctrl+K everywhere, and in a live field the keys
    // that move among what was found.
    isForThePage: function (element, event) {
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k') return true;
      return Treadle.isLive(element) && /^(Enter|Escape|ArrowUp|ArrowDown)$/.test(event.key);
    },
    wireText: function (element) {
      // Entering a field selects all of it; the click that entered it must not undo that.
      var entered = false;
      element.addEventListener('focus', function () {
        entered = true;
        element.select();
      });
      element.addEventListener('click', function () {
        if (entered) element.select();
        entered = false;
      });
      element.addEventListener('input', function (event) {
        entered = false;
        if (Treadle.isLive(element) && !event.isComposing) Treadle.commit(element);
      });
      element.addEventListener('blur', function () { Treadle.commit(element); });
      element.addEventListener('keydown', function (event) {
        if (event.isComposing) return;
        if (Treadle.isForThePage(element, event)) {
          Treadle.commit(element);
          if (Treadle.sendKey(event)) event.preventDefault();
        } else if (event.key === 'Enter') {
          Treadle.commit(element);
          if (Treadle.lastPointer === 'touch') element.blur();
          event.preventDefault();
        } else if (event.key === 'Escape') {
          var node = Treadle.nodes.get(element.dataset.id);
          if (node) element.value = node.data.value;
          element.blur();
          event.preventDefault();
        }
        event.stopPropagation();
      });
    },
    wireChoice: function (element) {
      element.addEventListener('change', function () {
        Treadle.dirty.set(element.dataset.id, 2);
        Treadle.withText(element.dataset.id, function (at) {
          _treadle_on_choose(at, element.selectedIndex);
        });
      });
    },
    wireScroll: function (element) {
      element.addEventListener('scroll', function () { Treadle.tellScroll(element); });
    },
    tellScroll: function (element) {
      // The program's own scrolling comes back as an event, a frame late: not news.
      var node = Treadle.nodes.get(element.dataset.id);
      if (!node || Math.abs(element.scrollTop - node.data.offset) < 1) return;
      Treadle.withText(element.dataset.id, function (at) {
        _treadle_on_scrolled(at, element.scrollTop);
      });
    },
    // A press may come before the event of the scroll that brought its target into sight.
    tellScrolls: function () {
      Treadle.mirror.querySelectorAll('.m-scroll').forEach(Treadle.tellScroll);
    },

    // ---- mirror --------------------------------------------------------------------------------

    make: function (data) {
      var tags = {
        button: 'button', tab: 'button', row: 'button', toggle: 'input', text: 'input',
        number: 'input', choice: 'select', words: 'p', message: 'p',
      };
      var tag = data.role === 'heading' ? 'h' + data.level : tags[data.role] || 'div';
      var element = document.createElement(tag);
      element.dataset.id = data.id;
      element.className = 'm-' + data.role;
      var roles = { tab: 'tab', picture: 'img', group: 'group', tabs: 'tablist', list: 'group',
        scroll: 'group', dialog: 'dialog' };
      if (roles[data.role]) element.setAttribute('role', roles[data.role]);
      if (tag === 'button') element.type = 'button';
      if (data.role === 'toggle') element.type = 'checkbox';
      if (data.role === 'dialog') element.setAttribute('aria-modal', 'true');
      if (data.role === 'text' || data.role === 'number') {
        element.type = 'text';
        var fixed = { autocomplete: 'off', autocapitalize: 'off', autocorrect: 'off',
          spellcheck: 'false', enterkeyhint: 'done' };
        for (var name in fixed) element.setAttribute(name, fixed[name]);
        Treadle.wireText(element);
      }
      if (data.role === 'choice') Treadle.wireChoice(element);
      if (data.role === 'scroll') {
        element.appendChild(document.createElement('div')).className = 'm-space';
        Treadle.wireScroll(element);
      }
      return element;
    },
    attribute: function (element, name, value) {
      if (value === '' || value === null) element.removeAttribute(name);
      else if (element.getAttribute(name) !== value) element.setAttribute(name, value);
    },
    // Sets what the user can change by hand back to what the program holds.
    settle: function (node) {
      var element = node.element, data = node.data;
      if (data.role === 'toggle') element.checked = data.on;
      if (data.role === 'choice') element.selectedIndex = data.selected;
      if (data.role === 'text' || data.role === 'number') element.value = data.value;
    },
    update: function (node, data) {
      var element = node.element, before = node.data;
      node.data = data;
      var speaksByContent = /^(BUTTON|P|H\d)$/.test(element.tagName);
      if (speaksByContent) {
        if (element.textContent !== data.name) element.textContent = data.name;
      } else {
        Treadle.attribute(element, 'aria-label', data.name);
      }
      var said = [data.error, data.note].filter(Boolean).join('. ');
      Treadle.attribute(element, 'aria-description', said);
      Treadle.attribute(element, 'aria-invalid', data.error ? 'true' : '');
      if (data.role === 'tab') Treadle.attribute(element, 'aria-selected', String(data.on));
      if (data.role === 'row') Treadle.attribute(element, 'aria-pressed', String(data.on));
      if (element.tagName === 'BUTTON') {
        Treadle.attribute(element, 'aria-disabled', data.enabled ? '' : 'true');
        Treadle.attribute(element, 'title', data.enabled ? '' : data.note);
      } else if ('disabled' in element) {
        element.disabled = !data.enabled;
      }
      if (data.role === 'choice' &&
          (!before || before.options.join('\n') !== data.options.join('\n'))) {
        element.replaceChildren.apply(element, data.options.map(function (words) {
          var option = document.createElement('option');
          option.textContent = words;
          return option;
        }));
      }
      var style = element.style;
      style.left = data.box[0] + 'px';
      style.top = data.box[1] + 'px';
      style.width = data.box[2] + 'px';
      style.height = data.box[3] + 'px';
      // What is being typed is the user's until it is committed.
      var typing = document.activeElement === element && before &&
        element.value !== before.value && !Treadle.dirty.has(data.id);
      if (!typing) Treadle.settle(node);
      if (data.role === 'scroll') {
        node.element.querySelector(':scope > .m-space').style.height = data.height + 'px';
        if (Math.abs(element.scrollTop - data.offset) >= 1) element.scrollTop = data.offset;
      }
    },
    reorder: function (order) {
      var wanted = new Set(order.map(function (entry) { return entry[0]; }));
      Treadle.nodes.forEach(function (unused, id) {
        if (wanted.has(id)) return;
        Treadle.nodes.delete(id);
      });
      var cursors = new Map();
      order.forEach(function (entry) {
        var node = Treadle.nodes.get(entry[0]);
        var parent = entry[1] < 0 ? Treadle.mirror
          : Treadle.nodes.get(order[entry[1]][0]).element;
        if (!cursors.has(parent)) cursors.set(parent, parent.firstChild);
        var cursor = cursors.get(parent);
        if (cursor === node.element) cursors.set(parent, cursor.nextSibling);
        else parent.insertBefore(node.element, cursor);
      });
      // Whatever still stands has no node any more.
      Treadle.mirror.querySelectorAll('[data-id]').forEach(function (element) {
        if (!wanted.has(element.dataset.id)) element.remove();
      });
      Treadle.followDialog(order);
    },
    // A dialog makes all beside it inert, takes the focus, and gives it back when it goes.
    followDialog: function (order) {
      var dialog = Treadle.mirror.querySelector(':scope > .m-dialog:last-of-type');
      var id = dialog ? dialog.dataset.id : '';
      Array.prototype.forEach.call(Treadle.mirror.children, function (element) {
        element.inert = dialog !== null && element !== dialog;
      });
      if (id === Treadle.dialogId) return;
      if (dialog) {
        if (!Treadle.dialogId) Treadle.focusBeforeDialog = document.activeElement;
        var first = dialog.querySelector('button, input, select');
        if (first) first.focus({ preventScroll: true });
      } else if (Treadle.focusBeforeDialog && Treadle.focusBeforeDialog.isConnected) {
        Treadle.focusBeforeDialog.focus({ preventScroll: true });
      }
      Treadle.dialogId = id;
    },
    apply: function (words) {
      var changes = JSON.parse(words);
      changes.nodes.forEach(function (data) {
        var node = Treadle.nodes.get(data.id);
        var same = node && node.data.role === data.role &&
          (data.role !== 'heading' || node.data.level === data.level);
        if (!same) {
          if (node) node.element.remove();
          node = { element: Treadle.make(data), data: null };
          Treadle.nodes.set(data.id, node);
        }
        Treadle.update(node, data);
      });
      if (changes.order) Treadle.reorder(changes.order);
      // A scroll can only be set once its element is in the page.
      changes.nodes.forEach(function (data) {
        var node = Treadle.nodes.get(data.id);
        if (node && data.role === 'scroll' && node.element.scrollTop !== data.offset)
          node.element.scrollTop = data.offset;
      });
      if (changes.focus && Treadle.nodes.has(changes.focus))
        Treadle.nodes.get(changes.focus).element.focus();
    },

    // ---- size and preferences ------------------------------------------------------------------

    listenSize: function () {
      var coarse = matchMedia('(pointer: coarse)');
      var tell = function () {
        var density = window.devicePixelRatio || 1;
        var width = Treadle.stage.clientWidth, height = Treadle.stage.clientHeight;
        Treadle.canvas.width = Math.max(1, Math.round(width * density));
        Treadle.canvas.height = Math.max(1, Math.round(height * density));
        _treadle_on_resize(width, height, density, coarse.matches ? 1 : 0);
      };
      new ResizeObserver(tell).observe(Treadle.stage);
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

    // ---- store ---------------------------------------------------------------------------------

    open: function () {
      return new Promise(function (done, fail) {
        if (Treadle.database) return done(Treadle.database);
        var request = indexedDB.open('treadle', 1);
        request.onupgradeneeded = function () { request.result.createObjectStore('kept'); };
        request.onerror = function () { fail(request.error); };
        request.onblocked = function () { fail(new Error('blocked by another tab')); };
        request.onsuccess = function () {
          Treadle.database = request.result;
          Treadle.database.onclose = function () { Treadle.database = null; };
          Treadle.database.onversionchange = function () {
            request.result.close();
            Treadle.database = null;
          };
          done(Treadle.database);
        };
      });
    },
    transact: function (mode, work, isSecondTry) {
      return Treadle.open().then(function (database) {
        return new Promise(function (done, fail) {
          var change = database.transaction('kept', mode, { durability: 'strict' });
          var request = work(change.objectStore('kept'));
          change.oncomplete = function () { done(request.result); };
          change.onerror = change.onabort = function () {
            fail(change.error || request.error || new Error('aborted'));
          };
        });
      }).catch(function (error) {
        // A dead handle never comes back by itself: once with a new one.
        var dead = error && (error.name === 'InvalidStateError' || error.name === 'UnknownError');
        if (!dead || isSecondTry) throw error;
        Treadle.database = null;
        return Treadle.transact(mode, work, true);
      });
    },
    storeCode: function () {
      return typeof indexedDB === 'undefined' ? 3 : 2;
    },

    // ---- print and preview ---------------------------------------------------------------------

    // The policy of the page refuses inline style, so a document's <style> goes in as a sheet.
    fillFrame: function (frame, title, html, then) {
      var css = '';
      html = html.replace(/<style[^>]*>([\s\S]*?)<\/style>/gi, function (whole, inside) {
        css += inside + '\n';
        return '';
      });
      frame.title = title;
      frame.onload = function () {
        var inside = frame.contentWindow;
        if (!frame.contentDocument || !frame.srcdoc) return;
        var sheet = new inside.CSSStyleSheet();
        sheet.replaceSync(css);
        frame.contentDocument.adoptedStyleSheets = [sheet];
        if (!frame.contentDocument.title) frame.contentDocument.title = title;
        if (then) then(inside);
      };
      frame.srcdoc = html;
    },
    closePreview: function () {
      var preview = document.getElementById('preview');
      if (preview.hidden) return;
      preview.hidden = true;
      Treadle.stage.inert = false;
      document.getElementById('preview-frame').removeAttribute('srcdoc');
      if (Treadle.focusBeforePreview && Treadle.focusBeforePreview.isConnected)
        Treadle.focusBeforePreview.focus();
    },
    focusBeforePreview: null,

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
    document.getElementById('preview-close').addEventListener('click', Treadle.closePreview);
    document.getElementById('preview-print').addEventListener('click', function () {
      document.getElementById('preview-frame').contentWindow.print();
    });
    document.getElementById('preview').addEventListener('keydown', function (event) {
      if (event.key === 'Escape') Treadle.closePreview();
    });
    document.addEventListener('visibilitychange', Treadle.takeWakeLock);
  },

  treadle_mirror__deps: ['$Treadle'],
  treadle_mirror: function (changes) {
    var words = UTF8ToString(changes);
    if (words) Treadle.apply(words);
    Treadle.dirty.forEach(function (frames, id) {
      if (frames > 1) return Treadle.dirty.set(id, frames - 1);
      Treadle.dirty.delete(id);
      if (Treadle.nodes.has(id)) Treadle.settle(Treadle.nodes.get(id));
    });
  },

  treadle_count_frame__deps: ['$Treadle'],
  treadle_count_frame: function (drawn) {
    Treadle.stage.dataset.frames = drawn;
    if (document.documentElement.dataset.state === 'starting') {
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

  treadle_load__deps: ['$Treadle'],
  treadle_load: function (key, ticket) {
    var name = UTF8ToString(key);
    var answer = function (result, bytes, detail) {
      Treadle.withBytes(bytes, function (at, length) {
        Treadle.withText(detail, function (words) {
          _treadle_on_loaded(ticket, result, at, length, words);
        });
      });
    };
    var none = new Uint8Array(0);
    Promise.resolve().then(function () {
      return Treadle.transact('readonly', function (store) { return store.get(name); });
    }).then(function (found) {
      if (found === undefined) answer(1, none, '');
      else answer(0, found, '');
    }, function (error) { answer(Treadle.storeCode(), none, String(error)); });
  },

  treadle_store__deps: ['$Treadle'],
  treadle_store: function (key, bytes, length, ticket) {
    var name = UTF8ToString(key);
    var copy = HEAPU8.slice(bytes, bytes + length);
    var answer = function (result, detail) {
      Treadle.withText(detail, function (words) { _treadle_on_stored(ticket, result, words); });
    };
    Promise.resolve().then(function () {
      return Treadle.transact('readwrite', function (store) { return store.put(copy, name); });
    }).then(function () { answer(0, ''); },
      function (error) { answer(Treadle.storeCode(), String(error)); });
  },

  treadle_download__deps: ['$Treadle'],
  treadle_download: function (name, type, bytes, length) {
    var blob = new Blob([HEAPU8.slice(bytes, bytes + length)], { type: UTF8ToString(type) });
    var link = document.createElement('a');
    link.href = URL.createObjectURL(blob);
    link.download = UTF8ToString(name);
    link.click();
    setTimeout(function () { URL.revokeObjectURL(link.href); }, 30000);
  },

  treadle_pick_file__deps: ['$Treadle'],
  treadle_pick_file: function (accept, ticket) {
    var input = document.createElement('input');
    input.type = 'file';
    input.accept = UTF8ToString(accept);
    input.addEventListener('change', function () {
      var file = input.files[0];
      if (!file) return;
      file.arrayBuffer().then(function (buffer) {
        Treadle.withText(file.name, function (name) {
          Treadle.withBytes(new Uint8Array(buffer), function (at, length) {
            _treadle_on_picked(ticket, name, at, length);
          });
        });
      }, function (error) {
        document.getElementById('status').textContent = 'The file could not be read: ' + error;
      });
    });
    input.click();
  },

  treadle_print__deps: ['$Treadle'],
  treadle_print: function (title, html) {
    Treadle.fillFrame(document.getElementById('print-frame'), UTF8ToString(title),
      UTF8ToString(html), function (inside) {
        inside.focus();
        inside.print();
      });
  },

  treadle_preview__deps: ['$Treadle'],
  treadle_preview: function (title, html) {
    var preview = document.getElementById('preview');
    document.getElementById('preview-title').textContent = UTF8ToString(title);
    if (preview.hidden) Treadle.focusBeforePreview = document.activeElement;
    Treadle.fillFrame(document.getElementById('preview-frame'), UTF8ToString(title),
      UTF8ToString(html), null);
    preview.hidden = false;
    Treadle.stage.inert = true;
    document.getElementById('preview-print').focus();
  },

  treadle_hide_preview__deps: ['$Treadle'],
  treadle_hide_preview: function () {
    Treadle.closePreview();
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

  treadle_announce__deps: ['$Treadle'],
  treadle_announce: function (sentence) {
    var status = document.getElementById('status');
    var words = UTF8ToString(sentence);
    // The same words twice are only read again when the text differs.
    status.textContent = status.textContent === words ? words + '\u00a0' : words;
  },

  treadle_look: function (name) {
    document.documentElement.dataset.look = UTF8ToString(name);
  },

  treadle_keep_awake__deps: ['$Treadle'],
  treadle_keep_awake: function (awake) {
    Treadle.wantsAwake = !!awake;
    if (awake) Treadle.takeWakeLock();
    else if (Treadle.wakeLock) Treadle.wakeLock.release();
  },

  treadle_fragment__deps: ['$Treadle'],
  treadle_fragment: function () {
    return Treadle.text(location.hash.slice(1));
  },
});
