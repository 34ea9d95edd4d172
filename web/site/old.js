// For a browser that knows no modules: says so, in words that such a browser can read.

(function () {
  var say = function () {
    document.getElementById('splash').hidden = true;
    document.getElementById('splash').style.display = 'none';
    document.getElementById('trouble-title').textContent = 'This browser is too old for the page';
    document.getElementById('trouble-words').textContent = 'It needs a browser of the last five ' +
      'years: Chrome, Edge, Firefox or Safari as they are now. What you stored is kept.';
    document.getElementById('trouble').removeAttribute('hidden');
  };
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', say);
  else say();
})();
