// What is kept in the browser, and files in and out.

mergeInto(LibraryManager.library.$Treadle, {
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
        // A page that is going gets no answer any more: what was asked for is all there is.
        if (mode === 'readwrite' && change.commit) change.commit();
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
});
