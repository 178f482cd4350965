var sagwiseFiles = (function (files) {
  for (var name in files) {
    var bytes = new TextEncoder().encode(files[name]);
    var letters = "";
    for (var i = 0; i < bytes.length; i += 8192) {
      letters += String.fromCharCode.apply(null, bytes.subarray(i, i + 8192));
    }
    files[name] = btoa(letters);
  }
  return files;
})({{files}});
