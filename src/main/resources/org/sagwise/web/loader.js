(function () {
  "use strict";
  var root = document.documentElement;
  var packed = document.getElementById("engine");
  if (!("DecompressionStream" in window) || !packed.textContent.trim()) {
    return;
  }
  root.className = "live";
  var letters = new TextEncoder().encode(packed.textContent.trim());
  packed.remove();
  var worth = new Uint8Array(128);
  for (var code = 33, next = 0; code < 127; code++) {
    if ("\"'<>&\\-`{".indexOf(String.fromCharCode(code)) < 0) {
      worth[code] = next++;
    }
  }
  var left = letters.length % 5;
  var all = new Uint8Array(Math.ceil(letters.length / 5) * 5).fill(126);
  all.set(letters);
  var bytes = new Uint8Array((all.length / 5) * 4);
  // Piece by piece, so that the browser finds out early that this is worth being compiled.
  function unpack(from, end) {
    for (var i = from, to = (from / 5) * 4; i < end; i += 5, to += 4) {
      var high = ((worth[all[i]] * 85 + worth[all[i + 1]]) * 85 + worth[all[i + 2]]) * 85 + worth[all[i + 3]];
      var low = high * 85 + worth[all[i + 4]];
      bytes[to] = low / 16777216;
      bytes[to + 1] = low / 65536;
      bytes[to + 2] = low / 256;
      bytes[to + 3] = low;
    }
  }
  for (var at = 0; at < all.length; at += 5000) {
    unpack(at, Math.min(at + 5000, all.length));
  }
  bytes = bytes.subarray(0, bytes.length - (left ? 5 - left : 0));
  new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip")))
    .text()
    .then(function (text) {
      var script = document.createElement("script");
      script.textContent = text;
      document.body.appendChild(script);
      main([]);
    })
    .catch(function (failure) {
      root.className = "";
      document.getElementById("broken").hidden = false;
      throw failure;
    });
})();
