var sagwiseFiles = (function (files) {
  var coded = {};
  Object.keys(files).forEach(function (name) {
    // Only when it is asked for: a start reads few of them.
    Object.defineProperty(coded, name, {
      get: function () {
        var bytes = new TextEncoder().encode(files[name]);
        var letters = "";
        for (var i = 0; i < bytes.length; i += 8192) {
          letters += String.fromCharCode.apply(null, bytes.subarray(i, i + 8192));
        }
        return btoa(letters);
      },
    });
  });
  return coded;
})({{files}});
