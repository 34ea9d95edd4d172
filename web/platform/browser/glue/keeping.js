// What lasts beyond the page: many keys in one transaction, and the moment before the page goes.

mergeInto(LibraryManager.library, {
  $Keeping: {
    typed: '', // id of the field whose text was told last

    // Packed as keeping.cpp has it: key length, byte length (or all ones: removed), whether it is
    // new, key, bytes.
    unpack: function (packed) {
      var view = new DataView(packed.buffer);
      var changes = [];
      for (var at = 0; at < packed.length;) {
        var key = view.getUint32(at, true), size = view.getUint32(at + 4, true);
        var isNew = view.getUint32(at + 8, true) === 1;
        var name = new TextDecoder().decode(packed.subarray(at + 12, at + 12 + key));
        at += 12 + key;
        var removed = size === 0xffffffff;
        changes.push({ key: name, bytes: removed ? null : packed.slice(at, at + size), isNew: isNew });
        if (!removed) at += size;
      }
      return changes;
    },
    pack: function (keys, values) {
      var names = keys.map(function (key) { return new TextEncoder().encode(key); });
      var length = names.reduce(function (sum, name, i) {
        return sum + 8 + name.length + values[i].length;
      }, 0);
      var packed = new Uint8Array(length);
      var view = new DataView(packed.buffer);
      var at = 0;
      names.forEach(function (name, i) {
        view.setUint32(at, name.length, true);
        view.setUint32(at + 4, values[i].length, true);
        packed.set(name, at + 8);
        packed.set(values[i], at + 8 + name.length);
        at += 8 + name.length + values[i].length;
      });
      return packed;
    },
    // What was entered or left is no longer being typed.
    tellTyping: function (element, isTyping) {
      var id = element.dataset.id, node = Treadle.nodes.get(id);
      var typing = isTyping && node && element.value !== node.data.value;
      if (!typing && Keeping.typed !== id) return;
      Keeping.typed = typing ? id : '';
      Treadle.withText(Keeping.typed, function (at) {
        Treadle.withText(typing ? element.value : '', function (value) {
          _treadle_on_unfinished(at, value);
        });
      });
    },
  },

  treadle_load_all__deps: ['$Treadle', '$Keeping'],
  treadle_load_all: function (prefix, ticket) {
    var begin = UTF8ToString(prefix);
    var answer = function (result, packed, detail) {
      Treadle.withBytes(packed, function (at, length) {
        Treadle.withText(detail, function (words) {
          _treadle_on_loaded_all(ticket, result, at, length, words);
        });
      });
    };
    Treadle.read(function (store) {
      return { keys: store.keysOf(begin), values: store.allOf(begin) };
    }).then(function (found) {
      answer(Treadle.stored.done, Keeping.pack(found.keys.result, found.values.result), '');
    }, function (error) {
      answer(Treadle.codeOf(error), new Uint8Array(0), Treadle.detailOf(error));
    });
  },
  // One key a line: no key has a line's end in it.
  treadle_load_keys__deps: ['$Treadle'],
  treadle_load_keys: function (prefix, ticket) {
    var begin = UTF8ToString(prefix);
    var answer = function (result, keys) {
      Treadle.withText(keys.join('\n'), function (at) { _treadle_on_keys(ticket, result, at); });
    };
    Treadle.read(function (store) { return store.keysOf(begin); }).then(function (found) {
      answer(Treadle.stored.done, found.result);
    }, function (error) { answer(Treadle.codeOf(error), []); });
  },

  treadle_store_all__deps: ['$Treadle', '$Keeping'],
  treadle_store_all: function (packed, length, ticket) {
    var changes = Keeping.unpack(HEAPU8.slice(packed, packed + length));
    Treadle.answerStored(Treadle.change(changes), ticket);
  },

  treadle_own_word__deps: ['$Treadle'],
  treadle_own_word: function () {
    var random = crypto.getRandomValues(new Uint32Array(3));
    return Treadle.text(Array.from(random, function (part) { return part.toString(36); }).join(''));
  },

  treadle_call_in: function (seconds, ticket) {
    setTimeout(function () { _treadle_on_called(ticket); }, seconds * 1000);
  },

  treadle_listen_leaving__deps: ['$Treadle'],
  treadle_listen_leaving: function () {
    document.addEventListener('visibilitychange', function () {
      if (document.hidden) _treadle_on_leaving();
    });
    window.addEventListener('pagehide', function () { _treadle_on_leaving(); });
  },

  treadle_listen_typing__deps: ['$Treadle', '$Keeping'],
  treadle_listen_typing: function () {
    var isField = function (element) {
      return element.matches('input[data-id]:not([type=checkbox])');
    };
    ['input', 'focusout'].forEach(function (kind) {
      Treadle.mirror.addEventListener(kind, function (event) {
        if (isField(event.target)) Keeping.tellTyping(event.target, kind === 'input');
      });
    });
    Treadle.mirror.addEventListener('keydown', function (event) {
      var ends = event.key === 'Enter' || event.key === 'Escape';
      if (ends && isField(event.target)) Keeping.tellTyping(event.target, false);
    }, true);
  },

  treadle_type_again__deps: ['$Treadle'],
  treadle_type_again: function (id, text) {
    var name = UTF8ToString(id), words = UTF8ToString(text);
    var tries = 0;
    var attempt = function () {
      var node = Treadle.nodes.get(name);
      if (!node || !node.element.isConnected) {
        if (++tries < 40) setTimeout(attempt, 50);
        return;
      }
      if (document.activeElement !== document.body) return; // something else is being done
      node.element.focus();
      node.element.value = words;
      node.element.setSelectionRange(words.length, words.length);
    };
    attempt();
  },
});
