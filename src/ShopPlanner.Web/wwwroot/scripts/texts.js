// Fields that hold text. Letters that are typed there, and the browser's own undo, belong to the field.
const texts = "textarea, input:not([type=checkbox], [type=radio], [type=range], [type=file])";

export const isText = el => el.matches(texts);

// A list of choices takes letters too: they go to a choice.
export const takesLetters = el => isText(el) || el.matches("select") || el.isContentEditable;
