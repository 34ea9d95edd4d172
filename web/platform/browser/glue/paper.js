// Documents: printed, and shown over the stage.

mergeInto(LibraryManager.library.$Treadle, {
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
  listenPreview: function () {
    document.getElementById('preview-close').addEventListener('click', Treadle.closePreview);
    document.getElementById('preview-print').addEventListener('click', function () {
      document.getElementById('preview-frame').contentWindow.print();
    });
    // Boxes of the shown sheet: the document runs no script of its own.
    var frame = document.getElementById('preview-frame');
    frame.addEventListener('load', function () {
      var inside = frame.contentDocument;
      if (!inside) return;
      inside.addEventListener('change', function (event) {
        var key = event.target.dataset && event.target.dataset.tick;
        if (!key) return;
        var on = event.target.checked ? 1 : 0;
        // A printed page shows what the attribute says.
        event.target.toggleAttribute('checked', event.target.checked);
        Treadle.withText(key, function (at) { _treadle_on_ticked(at, on); });
      });
    });
    document.getElementById('preview').addEventListener('keydown', function (event) {
      if (event.key === 'Escape') Treadle.closePreview();
    });
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
});

mergeInto(LibraryManager.library, {
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
});
