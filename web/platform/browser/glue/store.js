// Where bytes are kept: a database, a second one when the first is broken, memory when there is
// none. It carries bytes and says what became of them; what they mean is the program's affair.

mergeInto(LibraryManager.library.$Treadle, {
  // Codes of platform::StoreResult.
  stored: { done: 0, notFound: 1, refused: 2, noStore: 3, full: 4, taken: 5, newer: 6, moved: 7 },
  places: ['treadle', 'treadle-reserve', null], // the last is memory
  place: 0,
  memory: null, // a Map, made when it is needed
  wasRead: false, // the place has been used: from now on a move is told, not made unseen
  isMoved: false, // and nothing is written before the program knows

  openNamed: function (name) {
    return new Promise(function (done, fail) {
      var late = setTimeout(function () { fail(new Error('the database does not answer')); }, 8000);
      var end = function (call) { return function (value) { clearTimeout(late); call(value); }; };
      var request = indexedDB.open(name, 1);
      request.onupgradeneeded = function () { request.result.createObjectStore('kept'); };
      request.onerror = end(function () { fail(request.error); });
      request.onsuccess = end(function () {
        var database = request.result;
        database.onclose = function () { Treadle.database = null; };
        // A newer page wants another layout: it gets it, and this one stops writing.
        database.onversionchange = function () { database.close(); Treadle.database = null; };
        done(database);
      });
    });
  },
  // The first place that works. A newer page's database is no broken one.
  open: function () {
    if (Treadle.database) return Promise.resolve(Treadle.database);
    var name = Treadle.places[Treadle.place];
    if (!name) {
      Treadle.memory = Treadle.memory || new Map();
      return Promise.resolve(null);
    }
    return Promise.resolve().then(function () { return Treadle.openNamed(name); })
      .then(function (database) { return Treadle.database = database; }, function (error) {
        if (error && error.name === 'VersionError') throw error;
        Treadle.leavePlace(name);
        return Treadle.open();
      });
  },
  // Several may find it broken at once, and only the first leaves it.
  leavePlace: function (name) {
    if (Treadle.places[Treadle.place] !== name || !name) return;
    Treadle.place += 1;
    Treadle.database = null;
    if (Treadle.wasRead) Treadle.isMoved = true;
  },
  // As much of an object store as is used here.
  memoryStore: function () {
    var kept = Treadle.memory;
    var keys = function (begin) {
      return Array.from(kept.keys()).filter(function (key) { return key.startsWith(begin); }).sort();
    };
    return {
      has: function (key) { return kept.has(key); },
      get: function (key) { return { result: kept.get(key) }; },
      keysOf: function (begin) { return { result: keys(begin) }; },
      allOf: function (begin) {
        return { result: keys(begin).map(function (key) { return kept.get(key); }) };
      },
      change: function (one) {
        if (one.bytes) kept.set(one.key, one.bytes); else kept.delete(one.key);
      },
    };
  },
  databaseStore: function (store) {
    var range = function (begin) { return IDBKeyRange.bound(begin, begin + '\uffff'); };
    return {
      get: function (key) { return store.get(key); },
      keysOf: function (begin) { return store.getAllKeys(range(begin)); },
      allOf: function (begin) { return store.getAll(range(begin)); },
      change: function (one) {
        if (!one.bytes) store.delete(one.key);
        else if (one.isNew) store.add(one.bytes, one.key);
        else store.put(one.bytes, one.key);
      },
    };
  },
  transact: function (mode, work, isSecondTry) {
    var name = Treadle.places[Treadle.place];
    return Treadle.open().then(function (database) {
      if (Treadle.isMoved && mode === 'readwrite') throw { name: 'Moved' };
      Treadle.wasRead = true;
      if (!database) return work(Treadle.memoryStore());
      return new Promise(function (done, fail) {
        var change = database.transaction('kept', mode, { durability: 'strict' });
        var asked = work(Treadle.databaseStore(change.objectStore('kept')));
        // A page that is going gets no answer any more: what was asked for is all there is.
        if (mode === 'readwrite' && change.commit) change.commit();
        change.oncomplete = function () { done(asked); };
        change.onerror = change.onabort = function (event) {
          fail(change.error || event.target.error || new Error('aborted'));
        };
      });
    }).catch(function (error) {
      // A dead handle never comes back by itself: once with a new one, then in another place.
      var dead = error && (error.name === 'InvalidStateError' || error.name === 'UnknownError');
      if (!dead) throw error;
      Treadle.database = null;
      if (isSecondTry) Treadle.leavePlace(name);
      if (isSecondTry === 'third') throw error;
      return Treadle.transact(mode, work, isSecondTry ? 'third' : true);
    });
  },
  read: function (work) { return Treadle.transact('readonly', work); },
  change: function (changes) {
    return Treadle.transact('readwrite', function (store) {
      if (store.has && changes.some(function (one) { return one.isNew && store.has(one.key); }))
        throw { name: 'ConstraintError' };
      changes.forEach(store.change);
      return null;
    });
  },
  codeOf: function (error) {
    var name = (error && error.name) || '', code = Treadle.stored;
    if (name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED' ||
        (error && (error.code === 22 || error.code === 1014))) return code.full;
    if (name === 'ConstraintError') return code.taken;
    if (name === 'VersionError') return code.newer;
    return name === 'Moved' ? code.moved : code.refused;
  },
  detailOf: function (error) {
    return (error && (error.message || error.name)) || 'the browser gave no reason';
  },
  answerStored: function (promise, ticket) {
    var answer = function (result, detail) {
      Treadle.withText(detail, function (words) { _treadle_on_stored(ticket, result, words); });
    };
    promise.then(function () {
      // What lies in memory is kept for this page, and that is not what anybody means by kept.
      if (Treadle.place === 2) answer(Treadle.stored.noStore, 'The browser keeps nothing for this page.');
      else answer(Treadle.stored.done, '');
    }, function (error) { answer(Treadle.codeOf(error), Treadle.detailOf(error)); });
  },
  // Bounded before it is read: no job, shop or list is larger.
  takeFile: function (file, ticket) {
    var most = 64 * 1024 * 1024;
    if (file.size > most) {
      Treadle.withText(file.name, function (name) {
        _treadle_on_picked(ticket, name, 0, -1);
      });
      return;
    }
    file.arrayBuffer().then(function (buffer) {
      Treadle.withText(file.name, function (name) {
        Treadle.withBytes(new Uint8Array(buffer), function (at, length) {
          _treadle_on_picked(ticket, name, at, length);
        });
      });
    }, function (error) {
      document.getElementById('status').textContent = 'The file could not be read: ' + error;
    });
  },
  // What was kept in the second place while the first was broken comes back, once it works again.
  bringBack: function () {
    if (Treadle.place !== 0 || !Treadle.database) return Promise.resolve(0);
    var reserve = null;
    return new Promise(function (done) {
      var request = indexedDB.open(Treadle.places[1], 1);
      request.onupgradeneeded = function () { request.transaction.abort(); }; // there is none
      request.onerror = function (event) { event.preventDefault(); done(null); };
      request.onsuccess = function () { done(request.result); };
    }).then(function (database) {
      if (!database) return 0;
      reserve = database;
      return new Promise(function (done, fail) {
        var store = database.transaction('kept').objectStore('kept');
        var keys = store.getAllKeys(), values = store.getAll();
        store.transaction.oncomplete = function () {
          done(keys.result.map(function (key, i) {
            return { key: key, bytes: values.result[i], isNew: false };
          }));
        };
        store.transaction.onerror = store.transaction.onabort = function () { fail(new Error()); };
      }).then(function (all) {
        var jobs = all.filter(function (one) { return /^(journal|card|point|aside)\//.test(one.key); });
        if (jobs.length === 0) return 0;
        return Treadle.change(jobs).then(function () { return jobs.length; });
      }).then(function (count) {
        reserve.close();
        indexedDB.deleteDatabase(Treadle.places[1]);
        return count;
      });
    }).catch(function () { return 0; }); // it stays where it is; the next start tries again
  },
});

mergeInto(LibraryManager.library, {
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
    Treadle.read(function (store) { return store.get(name); }).then(function (found) {
      if (found.result === undefined) answer(Treadle.stored.notFound, none, '');
      else answer(Treadle.stored.done, found.result, '');
    }, function (error) { answer(Treadle.codeOf(error), none, Treadle.detailOf(error)); });
  },

  treadle_store__deps: ['$Treadle'],
  treadle_store: function (key, bytes, length, ticket) {
    var one = { key: UTF8ToString(key), bytes: HEAPU8.slice(bytes, bytes + length), isNew: false };
    Treadle.answerStored(Treadle.change([one]), ticket);
  },

  treadle_protect: function () {
    if (navigator.storage && navigator.storage.persist) navigator.storage.persist().catch(function () {});
  },
  treadle_standing__deps: ['$Treadle'],
  treadle_standing: function (ticket) {
    var storage = navigator.storage || {};
    var ask = function (name, other) {
      return storage[name] ? storage[name]().catch(function () { return other; }) : Promise.resolve(other);
    };
    Promise.all([ask('persisted', false), ask('estimate', {})]).then(function (known) {
      var size = function (bytes) { return typeof bytes === 'number' ? bytes : -1; };
      _treadle_on_standing(ticket, Treadle.place, known[0] ? 1 : 0, size(known[1].usage),
        size(known[1].quota));
    });
  },
  treadle_accept_place__deps: ['$Treadle'],
  treadle_accept_place: function () { Treadle.isMoved = false; },
  treadle_bring_back__deps: ['$Treadle'],
  treadle_bring_back: function (ticket) {
    Treadle.bringBack().then(function (count) { _treadle_on_brought_back(ticket, count); });
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
      if (file) Treadle.takeFile(file, ticket);
    });
    input.click();
  },
});
