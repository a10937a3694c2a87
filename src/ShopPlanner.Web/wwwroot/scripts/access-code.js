// The code of a link stands behind its '#', which a browser sends to nobody. It is put into the form, and out of the address.
const code = decodeURIComponent(location.hash.slice(1));
const field = document.querySelector("form.access-form input[name=Code]");
if (code && field) {
  field.value = code;
  history.replaceState(null, "", location.pathname);
  document.querySelector("form.access-form :is(input:placeholder-shown, button)")?.focus();
}
