// Text to the clipboard, also on plain http, where browsers hide the newer way.

mergeInto(LibraryManager.library.$Treadle, {
  listenCopyBox: function () {
    var box = document.getElementById('copy');
    document.getElementById('copy-close').addEventListener('click', Treadle.closeCopyBox);
    box.addEventListener('keydown', function (event) {
      if (event.key === 'Escape') Treadle.closeCopyBox();
      event.stopPropagation();
    });
  },
  closeCopyBox: function () {
    var box = document.getElementById('copy');
    if (box.hidden) return;
    box.hidden = true;
    Treadle.stage.inert = false;
    if (Treadle.focusBeforeCopy && Treadle.focusBeforeCopy.isConnected)
      Treadle.focusBeforeCopy.focus();
  },
  showCopyBox: function (words) {
    var box = document.getElementById('copy');
    var text = document.getElementById('copy-text');
    Treadle.focusBeforeCopy = document.activeElement;
    text.value = words;
    box.hidden = false;
    Treadle.stage.inert = true;
    text.focus();
    text.select();
  },
  copyByCommand: function (words) {
    var before = document.activeElement;
    var text = document.createElement('textarea');
    text.value = words;
    text.readOnly = true;
    text.className = 'beside';
    document.body.appendChild(text);
    text.select();
    var done = false;
    try {
      done = document.execCommand('copy');
    } catch (refused) {
      done = false;
    }
    text.remove();
    if (before && before.focus) before.focus({ preventScroll: true });
    return done;
  },
  // A promise of whether it is on the clipboard. If not, the text stands selected in a box.
  copy: function (words) {
    var newer = navigator.clipboard && navigator.clipboard.writeText
      ? navigator.clipboard.writeText(words).then(function () { return true; },
        function () { return Treadle.copyByCommand(words); })
      : Promise.resolve(Treadle.copyByCommand(words));
    return newer.then(function (done) {
      if (!done) Treadle.showCopyBox(words);
      return done;
    });
  },
});

mergeInto(LibraryManager.library, {
  treadle_copy__deps: ['$Treadle'],
  treadle_copy: function (text, ticket) {
    Treadle.copy(UTF8ToString(text)).then(function (done) {
      _treadle_on_copied(ticket, done ? 1 : 0);
    });
  },
});
