(function () {
  "use strict";
  var root = document.documentElement;
  var packed = document.getElementById("engine");
  if (!("DecompressionStream" in window) || !packed.textContent.trim()) {
    return;
  }
  root.className = "live";
  var letters = atob(packed.textContent.trim());
  packed.remove();
  var bytes = new Uint8Array(letters.length);
  for (var i = 0; i < letters.length; i++) {
    bytes[i] = letters.charCodeAt(i);
  }
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
      throw failure;
    });
})();
