/**
 * Listens for changes of the page it stands in and loads it anew, at the same place. A hidden page does not listen:
 * browsers keep six connections to one server (RFC 9112, section 9.4, sets no number), so a seventh page would wait for
 * ever. While a page of faults stands in, the place of the page before is kept. The faces of the book change the height
 * of its lines, so the place is taken once more when they are there.
 */
export const RELOAD_SCRIPT = `(function () {
  'use strict';
  var mark = document.currentScript.dataset.mark;
  var key = 'place of ' + location.pathname;
  var stream = null;
  var isFault = document.body.classList.contains('fault');
  function keepPlace() {
    if (!isFault) sessionStorage.setItem(key, scrollX + ' ' + scrollY);
    history.scrollRestoration = 'manual';
  }
  function takePlace() {
    var kept = sessionStorage.getItem(key);
    if (isFault) return;
    history.scrollRestoration = 'auto';
    if (kept === null) return;
    sessionStorage.removeItem(key);
    var place = kept.split(' ');
    function go() {
      scrollTo({ left: Number(place[0]), top: Number(place[1]), behavior: 'instant' });
    }
    go();
    addEventListener('load', function () {
      go();
      document.fonts.ready.then(go);
    });
  }
  function listen() {
    if (stream !== null || document.hidden) return;
    stream = new EventSource('/-/changes?page=' + encodeURIComponent(location.pathname));
    stream.onmessage = function (event) {
      if (event.data === mark) return;
      stop();
      keepPlace();
      location.reload();
    };
  }
  function stop() {
    if (stream !== null) stream.close();
    stream = null;
  }
  document.addEventListener('visibilitychange', function () {
    if (document.hidden) stop();
    else listen();
  });
  addEventListener('pagehide', stop);
  addEventListener('pageshow', listen);
  takePlace();
  listen();
})();
`;
