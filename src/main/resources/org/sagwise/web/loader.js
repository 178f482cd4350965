(function () {
  "use strict";
  var root = document.documentElement;
  var packed = document.getElementById("engine");
  if (!("DecompressionStream" in window) || !packed.textContent.trim()) {
    return;
  }
  root.className = "live";
  var letters = packed.textContent.trim();
  packed.remove();
  var worth = new Uint8Array(128);
  for (var code = 33, next = 0; code < 127; code++) {
    if ("\"'<>&\\-`{".indexOf(String.fromCharCode(code)) < 0) {
      worth[code] = next++;
    }
  }
  var left = letters.length % 5;
  var bytes = new Uint8Array(Math.ceil(letters.length / 5) * 4);
  for (var i = 0, to = 0; i < letters.length; i += 5, to += 4) {
    var group = 0;
    for (var j = i; j < i + 5; j++) {
      group = group * 85 + (j < letters.length ? worth[letters.charCodeAt(j)] : 84);
    }
    for (var k = 3; k >= 0; k--) {
      bytes[to + k] = group % 256;
      group = Math.floor(group / 256);
    }
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
