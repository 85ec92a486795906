(function () {
  'use strict';
  var box = document.getElementById('play');
  if (!box) { return; }
  var data = JSON.parse(document.getElementById('play-data').textContent);
  var axes = ['panels', 'banks', 'uses'];
  function answer() {
    var at = 0;
    axes.forEach(function (axis) {
      var input = document.getElementById('play-' + axis);
      var said = data[axis][Number(input.value)];
      document.getElementById('play-' + axis + '-said').textContent = said;
      input.setAttribute('aria-valuetext', said);
      at = at * data[axis].length + Number(input.value);
    });
    data.answers[at].forEach(function (text, k) {
      document.getElementById('play-answer-' + k).textContent = text;
    });
  }
  function asItStands() {
    axes.forEach(function (axis, k) {
      document.getElementById('play-' + axis).value = data.present[k];
    });
    answer();
  }
  axes.forEach(function (axis) {
    document.getElementById('play-' + axis).addEventListener('input', answer);
  });
  document.getElementById('play-reset').addEventListener('click', asItStands);
  asItStands();
  box.hidden = false;
})();
