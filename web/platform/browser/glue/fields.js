// The input and select elements that lie over the drawn fields, and areas that scroll.

mergeInto(LibraryManager.library.$Treadle, {
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
  isFigure: function (element) {
    return element.classList.contains('m-number');
  },
  // What stands in a field goes to the page at every letter; it is read there, never planned.
  tellTyping: function (element) {
    Treadle.withText(element ? element.dataset.id : '', function (at) {
      Treadle.withText(element ? element.value : '', function (words) {
        _treadle_on_entry(at, words, Treadle.byTouch ? 1 : 0);
      });
    });
  },
  // Takes what was typed and goes to the next figure; the last one stays, with all of it selected.
  goOn: function (element) {
    Treadle.commit(element);
    var figures = Array.prototype.filter.call(
      Treadle.mirror.querySelectorAll('.m-number:not(:disabled)'),
      function (one) { return !one.closest('[inert]'); });
    var next = figures[figures.indexOf(element) + 1];
    if (next) next.focus();
    else element.select();
  },
  edit: function (element, kind, words) {
    if (document.activeElement !== element) element.focus({ preventScroll: true });
    if (kind === 3) return Treadle.goOn(element);
    if (kind === 4) return element.blur();
    var from = element.selectionStart, to = element.selectionEnd;
    if (kind === 1 && from === to) from = Math.max(0, from - 1);
    if (kind === 2) {
      from = 0;
      to = element.value.length;
    }
    element.setRangeText(words, from, to, 'end');
    element.dispatchEvent(new Event('input', { bubbles: true }));
  },
  wireText: function (element) {
    // Entering a field selects all of it; the click that entered it must not undo that.
    var entered = false;
    element.addEventListener('focus', function () {
      entered = true;
      element.select();
      Treadle.tellTyping(element);
    });
    element.addEventListener('click', function () {
      if (entered) element.select();
      entered = false;
    });
    element.addEventListener('input', function (event) {
      entered = false;
      Treadle.dirty.delete(element.dataset.id); // typed anew, before what was taken was shown
      if (Treadle.isLive(element) && !event.isComposing) Treadle.commit(element);
      if (Treadle.isFigure(element)) Treadle.tellTyping(element);
    });
    element.addEventListener('blur', function () {
      Treadle.commit(element);
      Treadle.tellTyping(null);
    });
    element.addEventListener('compositionend', function () {
      if (Treadle.isLive(element)) Treadle.commit(element);
    });
    element.addEventListener('keydown', function (event) {
      if (event.isComposing) return;
      if (event.key !== 'Unidentified') Treadle.byTouch = false; // a real key: no pad is needed
      if (Treadle.isForThePage(element, event)) {
        Treadle.commit(element);
        if (Treadle.sendKey(event)) event.preventDefault();
      } else if (event.key === 'Enter' && Treadle.isFigure(element)) {
        Treadle.goOn(element);
        event.preventDefault();
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
});

mergeInto(LibraryManager.library, {
  // A key that the page draws for a field: insert, erase, replace, next, done. Done when the frame
  // is over in which the key was pressed: what it commits belongs to the next one.
  treadle_edit_text__deps: ['$Treadle'],
  treadle_edit_text: function (id, kind, text) {
    var node = Treadle.nodes.get(UTF8ToString(id));
    var words = UTF8ToString(text);
    if (node) Promise.resolve().then(function () { Treadle.edit(node.element, kind, words); });
  },
});
