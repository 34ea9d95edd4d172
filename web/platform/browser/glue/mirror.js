// The mirror: one element for each node that the program drew, with its role, name, value and place.

mergeInto(LibraryManager.library.$Treadle, {
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
    Treadle.attribute(element, 'data-keep', data.keep ? '1' : '');
    // The page draws keys for figures itself; the system's would lie over them.
    if (data.role === 'number') Treadle.attribute(element, 'inputmode', data.on ? 'none' : 'text');
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
    // What has no node any more goes first: an element that is put before it loses the keyboard.
    Treadle.mirror.querySelectorAll('[data-id]').forEach(function (element) {
      if (!wanted.has(element.dataset.id)) element.remove();
    });
    var cursors = new Map();
    order.forEach(function (entry) {
      var node = Treadle.nodes.get(entry[0]);
      var parent = entry[1] < 0 ? Treadle.mirror
        : Treadle.nodes.get(order[entry[1]][0]).element;
      if (!cursors.has(parent)) cursors.set(parent, parent.firstChild);
      var cursor = cursors.get(parent);
      while (cursor && cursor.dataset.labelOf) cursor = cursor.nextSibling; // goes with its field
      if (cursor === node.element) cursors.set(parent, cursor.nextSibling);
      else parent.insertBefore(node.element, cursor);
    });
    Treadle.followDialog(order);
  },
  // A dialog makes all beside it inert, takes the focus, and gives it back when it goes.
  followDialog: function (order) {
    var dialogs = Treadle.mirror.querySelectorAll(':scope > .m-dialog');
    var dialog = dialogs.length > 0 ? dialogs[dialogs.length - 1] : null;
    var id = dialog ? dialog.dataset.id : '';
    Array.prototype.forEach.call(Treadle.mirror.children, function (element) {
      element.inert = dialog !== null && element !== dialog && !element.dataset.keep;
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
        var made = Treadle.make(data);
        // The order may be as it was: what takes another role stays in its place.
        if (node) node.element.replaceWith(made);
        node = { element: made, data: null };
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
    if (Treadle.plain) Treadle.dressAll(changes.nodes);
    if (changes.focus && Treadle.nodes.has(changes.focus))
      Treadle.nodes.get(changes.focus).element.focus();
  },
});

mergeInto(LibraryManager.library, {
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
});
