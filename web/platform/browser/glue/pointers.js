// Pointers, wheel, keys and focus, told to the program.

mergeInto(LibraryManager.library.$Treadle, {
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
      Treadle.byTouch = event.pointerType === 'touch';
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
      var unit = event.deltaMode === 1 ? 3 : event.deltaMode === 2 ? 0.125 : 100;
      var notches = function (delta) { return Math.max(-4, Math.min(4, delta / unit)); };
      var box = stage.getBoundingClientRect();
      var zoom = event.ctrlKey || event.metaKey;
      var used = _treadle_on_wheel(event.clientX - box.left, event.clientY - box.top,
        notches(event.deltaX), notches(event.deltaY), zoom ? 1 : 0);
      if (used || !zoom) event.preventDefault();
    }, { passive: false });
    // Keys that the page draws for a field leave the keyboard in the field.
    stage.addEventListener('mousedown', function (event) {
      if (event.target.closest('[data-keep]')) event.preventDefault();
    });
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
    // What goes up while the page is not looking is never told.
    var giveUp = function () {
      for (var id in down || {})
        _treadle_on_pointer(3, 0, Number(id), 0, 0, performance.now() / 1000);
      down = null;
    };
    window.addEventListener('blur', giveUp);
    window.addEventListener('pagehide', giveUp);
    document.addEventListener('visibilitychange', function () {
      if (document.hidden) giveUp();
    });
    // One browser enlarges the page at a pinch whatever touch-action says.
    ['gesturestart', 'gesturechange'].forEach(function (kind) {
      stage.addEventListener(kind, function (event) { event.preventDefault(); });
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
      if (event.key !== 'Unidentified') Treadle.byTouch = false;
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
});
