// The page without a drawing surface: the mirror's elements are shown themselves, at the places
// where they would have been drawn, with ink and edges of their own (site.css, data-plain).

mergeInto(LibraryManager.library.$Treadle, {
  showPlain: function () {
    Treadle.plain = true;
    document.documentElement.dataset.plain = '1';
    var known = typeof WebGL2RenderingContext !== 'undefined';
    document.getElementById('plain-why').textContent = known
      ? 'Drawings are missing: this browser gave no drawing surface (WebGL 2). It may be switched ' +
        'off in its settings, or the graphics driver may be blocked. All else works.'
      : 'Drawings are missing: this browser has no WebGL 2. A newer one has. All else works.';
    document.getElementById('plain').hidden = false;
  },
  // Fields have no words of their own: a label stands above each. Other words are made to fit.
  dress: function (node) {
    var element = node.element, data = node.data;
    if (element.matches('.m-text, .m-number, .m-choice')) {
      if (!node.label) {
        node.label = document.createElement('span');
        node.label.className = 'm-label';
        node.label.setAttribute('aria-hidden', 'true');
      }
      var label = node.label;
      if (label.nextSibling !== element) element.parentNode.insertBefore(label, element);
      label.dataset.labelOf = data.id;
      label.textContent = data.name;
      label.style.left = element.style.left;
      label.style.width = element.style.width;
      label.style.top = (data.box[1] - 20) + 'px';
      return;
    }
    if (!/^(BUTTON|P|H\d)$/.test(element.tagName) && data.role !== 'picture') return;
    for (var px = data.role === 'heading' ? 22 : 18; px >= 11; --px) {
      element.style.fontSize = px + 'px';
      if (element.scrollHeight <= element.clientHeight + 1 &&
          element.scrollWidth <= element.clientWidth + 1) return;
    }
  },
  dressAll: function (changed) {
    changed.forEach(function (data) {
      var node = Treadle.nodes.get(data.id);
      if (node && node.element.isConnected) Treadle.dress(node);
    });
    Treadle.mirror.querySelectorAll('[data-label-of]').forEach(function (label) {
      if (!Treadle.nodes.has(label.dataset.labelOf)) label.remove();
    });
  },
});

mergeInto(LibraryManager.library, {
  treadle_plain__deps: ['$Treadle'],
  treadle_plain: function () { Treadle.showPlain(); },
});
