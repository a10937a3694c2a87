// Where a field stands: its page, its form or scope, its name.
export const pageOf = () => location.pathname;
export const scopeOf = el => el.closest("[data-form]")?.dataset.form ?? el.closest("[data-scope]")?.dataset.scope ?? "";
export const isOfForm = el => el.closest("[data-form]") !== null;
export const isShut = el => el.closest("fieldset.until-live[disabled]") !== null;
export const fields = (root = document) => [...root.querySelectorAll("[data-field]")];
export const named = (scope, ...kinds) =>
  document.querySelector(kinds.map(kind => `[data-${kind}="${CSS.escape(scope)}"]`).join(", "));
