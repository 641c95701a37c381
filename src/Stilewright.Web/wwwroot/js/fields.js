// Fields whose text belongs to the browser until it is settled.
//
// A field is an input with data-field (its name, the same after a reload), data-saved (what the server has) and data-shown-in (the
// unit it is read in). The server never writes into it: this file copies data-saved into the field where nobody is typing and no
// draft waits. What is typed is kept as a draft in local storage, so that it outlives a lost connection, a reload and a restart of
// the server, and goes when the server has saved it (data-saved or data-settled says the same) or the person takes it back (Escape).

const prefix = "stilewright.draft.";

// What each field said when nobody was typing in it: what a typing that begins now is based on.
const bases = new WeakMap();

export function watchFields() {
  document.addEventListener("input", onInput);
  document.addEventListener("keydown", onKey);
  document.addEventListener("focusout", onLeave);
  document.addEventListener("focusin", onEnter);
  document.addEventListener("click", onTool);
  document.addEventListener("next", onNext);
  new MutationObserver(onChanges).observe(document.body, {
    subtree: true, childList: true, attributes: true, attributeFilter: ["data-saved", "data-field", "data-settled", "data-shown-in"],
  });
  document.querySelectorAll("[data-field]").forEach(show);
  document.querySelectorAll("[data-lines]").forEach(tellLines);
}

function isField(element) {
  return element.dataset !== undefined && element.dataset.field !== undefined;
}

function key(field) {
  return prefix + field.dataset.field;
}

function savedOf(field) {
  return field.dataset.saved ?? "";
}

// The draft as the field reads it: typed while another unit was shown, it says so.
function draftOf(field) {
  let draft;
  try {
    draft = JSON.parse(localStorage.getItem(key(field)));
  } catch {
    return null;
  }
  if (!draft || draft.unit === field.dataset.shownIn) return draft;
  return { text: withUnit(draft.text, draft.unit), basedOn: withUnit(draft.basedOn, draft.unit) };
}

function withUnit(text, unit) {
  return text === "" || /[A-Za-z"'\u2032\u2033]/.test(text) ? text : `${text} ${unit}`;
}

function keep(field, draft) {
  field.setAttribute("data-draft", "");
  try {
    localStorage.setItem(key(field), JSON.stringify({ ...draft, unit: field.dataset.shownIn }));
  } catch {
    // Storage that is full or forbidden: the text still stands in the field.
  }
}

function drop(field) {
  localStorage.removeItem(key(field));
  field.removeAttribute("data-draft");
}

// Brings a field to what it should show.
function show(field) {
  const saved = savedOf(field);
  const draft = draftOf(field);
  const isTyping = document.activeElement === field;
  if (draft && (draft.text === saved || draft.text === field.dataset.settled)) {
    drop(field);
    if (isTyping) bases.set(field, saved);
    else rest(field, saved);
  } else if (draft) {
    field.setAttribute("data-draft", "");
    if (!isTyping && field.value.trim() !== draft.text) field.value = draft.text;
    if (field.dataset.told !== draft.text) tell(field, "typed", draft);
  } else if (field.dataset.begin !== undefined && field.dataset.begun === undefined) {
    // What was read from a file stands in the field as if it had been typed.
    field.dataset.begun = "";
    field.value = field.dataset.begin;
    typed(field);
  } else {
    field.removeAttribute("data-draft");
    if (!isTyping) rest(field, saved);
    else if (!bases.has(field)) bases.set(field, field.value.trim());
  }
}

// Nobody is typing: the field says what is saved.
function rest(field, saved) {
  bases.set(field, saved);
  if (field.value !== saved) field.value = saved;
}

// A list whose lines are made as they are needed is told which of them have drafts, so that these stand there again after a reload.
function tellLines(list) {
  const start = `${prefix}${list.dataset.lines}/`;
  const lines = Object.keys(localStorage).filter(each => each.startsWith(start)).map(each => Number(each.slice(start.length).split("/")[0])).filter(Number.isInteger);
  if (lines.length > 0) list.dispatchEvent(new CustomEvent("lines", { bubbles: true, detail: { lines: [...new Set(lines)].sort((one, other) => one - other) } }));
}

function tell(field, name, draft) {
  field.dataset.told = draft.text;
  field.dispatchEvent(new CustomEvent(name, { bubbles: true, detail: { text: draft.text, basedOn: draft.basedOn } }));
}

function onInput(event) {
  if (isField(event.target)) typed(event.target);
}

function typed(field) {
  const before = draftOf(field);
  const draft = { text: field.value.trim(), basedOn: before ? before.basedOn : bases.get(field) ?? savedOf(field) };
  if (draft.text === savedOf(field) || draft.text === draft.basedOn) drop(field);
  else keep(field, draft);
  tell(field, "typed", draft);
  // The same thing may be entered in two places, beside a drawing and on it.
  document.querySelectorAll(`[data-field="${CSS.escape(field.dataset.field)}"]`).forEach(other => {
    if (other === field) return;
    other.dataset.told = draft.text;
    other.value = field.value;
    other.toggleAttribute("data-draft", field.hasAttribute("data-draft"));
  });
}

// Sends what is typed to be saved. Where nothing was typed, the field shows what is saved, also what another screen saved meanwhile.
function settle(field) {
  const draft = draftOf(field);
  if (draft) {
    tell(field, "settled", draft);
  } else {
    const saved = savedOf(field);
    rest(field, saved);
    if (field.dataset.told !== undefined && field.dataset.told !== saved) tell(field, "typed", { text: saved, basedOn: saved });
  }
}

function onKey(event) {
  const field = event.target;
  if (!isField(field)) return;
  if (event.key === "Enter" && field.tagName !== "TEXTAREA") {
    event.preventDefault();
    settle(field);
    field.dispatchEvent(new CustomEvent("next", { bubbles: true }));
  } else if (event.key === "Escape" && draftOf(field)) {
    event.preventDefault();
    event.stopPropagation();
    drop(field);
    rest(field, savedOf(field));
    tell(field, "typed", { text: field.value, basedOn: field.value });
  }
}

function onEnter(event) {
  const field = event.target;
  if (!isField(field)) return;
  lastField = field;
  // Where the page has a pad, a touch screen needs no keyboard of its own over it.
  const pad = field.dataset.words === undefined ? field.closest("[data-fields]")?.querySelector("[data-pad]") : null;
  field.inputMode = pad && matchMedia("(pointer: coarse)").matches ? "none" : "text";
  // A pad that stands at the foot of the screen while a field has the caret may not stand before that field.
  if (pad && getComputedStyle(pad).position === "sticky") {
    const covered = field.getBoundingClientRect().bottom + 8 - pad.getBoundingClientRect().top;
    if (covered > 0) scrollBy({ top: covered, behavior: "instant" });
  }
}

function onLeave(event) {
  const field = event.target;
  if (!isField(field)) return;
  // A key of the pad writes into the field it belongs to; that is not leaving it.
  if (event.relatedTarget && event.relatedTarget.closest("[data-pad]")) return;
  settle(field);
}

// The field that the pad writes into: the last one that had the focus.
let lastField = null;

function onTool(event) {
  const entry = document.querySelector("[data-entry]");
  if (entry && !entry.contains(event.target) && !event.target.closest("[data-dimension]")) entry.querySelector("[data-after]").click();
  const typist = event.target.closest("[data-type]");
  if (typist) {
    const typedInto = typist.closest("[data-types]").querySelector("[data-field]");
    replace(typedInto, typist.dataset.type);
    settle(typedInto);
    return;
  }
  const dropper = event.target.closest("[data-drops]");
  if (dropper) {
    dropper.closest(dropper.dataset.drops).querySelectorAll("[data-field]").forEach(drop);
    return;
  }
  const pressed = event.target.closest("[data-put], [data-marks]");
  if (!pressed) return;
  const pad = pressed.closest("[data-pad]");
  const field = fieldOf(pad);
  if (!field) return;
  const put = pressed.dataset.put ?? "";
  // A field that was just gone to is chosen whole, and its first key begins anew, as on a keyboard.
  const isWhole = field.value !== "" && field.selectionStart === 0 && field.selectionEnd === field.value.length;
  const there = isWhole ? "" : field.value;
  if (pressed.dataset.marks !== undefined) replace(field, markAt(pressed, event.clientX));
  else if (put === "back") replace(field, there.trimEnd().slice(0, -1).trimEnd());
  else if (put === "next") {
    settle(field);
    next(field, pad);
    return;
  } else if (put.length > 1) replace(field, withFraction(there, put));
  else replace(field, there + put);
  if (!matchMedia("(pointer: coarse)").matches) field.focus({ preventScroll: true });
}

function fieldOf(pad) {
  if (!pad) return null;
  if (lastField && lastField.isConnected && lastField.closest("[data-fields]") === pad.closest("[data-fields]")) return lastField;
  return pad.closest("[data-fields]")?.querySelector("[data-field]") ?? null;
}

// The mark of a drawn rule that lies nearest to where it was touched; marks stand evenly from edge to edge.
function markAt(rule, x) {
  const marks = rule.dataset.marks.split("|");
  const box = rule.getBoundingClientRect();
  // The drawing has an edge of 10 on each side of the 320 that hold the marks.
  const share = Math.min(1, Math.max(0, (((x - box.left) / box.width) * 340 - 10) / 320));
  return marks[Math.round(share * (marks.length - 1))];
}

function replace(field, text) {
  field.value = text;
  typed(field);
  // Keeps the pad writing where it wrote.
  lastField = field;
}

// Fractions add up as the marks of a rule do: 23, 1/2 and 1/8 make 23 5/8, and so are entered without typing a stroke.
function withFraction(text, key) {
  const [, whole, top, bottom] = /^\s*(\d+(?!\d*\/))?\s*(?:(\d+)\/(\d+))?\s*$/.exec(text) ?? [];
  if (whole === undefined && top === undefined && text.trim() !== "") return text;
  const [n, d] = key.split("/").map(Number);
  let [sum, parts] = [n, d];
  if (top !== undefined && Number(bottom) > 0) {
    sum = Number(top) * d + n * Number(bottom);
    parts = Number(bottom) * d;
  }
  const carried = Number(whole ?? 0) + Math.floor(sum / parts);
  sum %= parts;
  const common = divisor(sum, parts);
  const fraction = sum === 0 ? "" : `${sum / common}/${parts / common}`;
  return [carried === 0 && fraction ? "" : String(carried), fraction].filter(Boolean).join(" ");
}

function divisor(a, b) {
  return b === 0 ? a || 1 : divisor(b, a % b);
}

// The next reading of the same group; the first again after the last.
function next(field, pad) {
  const fields = [...pad.closest("[data-fields]").querySelectorAll("[data-field]:not([data-aside])")];
  const following = fields[fields.indexOf(field) + 1];
  if (following) {
    lastField = following;
    following.focus();
    following.select();
  } else {
    pad.querySelector("[data-after]")?.click();
  }
}

function onNext(event) {
  const pad = event.target.closest("[data-fields]")?.querySelector("[data-pad]");
  if (pad) next(event.target, pad);
}

function dimensionOf(entry) {
  return document.querySelector(`[data-dimension="${CSS.escape(entry.dataset.entry)}"]`);
}

// The field of a dimension that was touched takes the focus and the drawing stays where it is, unless the pad would cover the dimension.
function open(entry) {
  const field = entry.querySelector("[data-field]");
  field.focus({ preventScroll: true });
  field.select();
  const dimension = dimensionOf(entry);
  const covered = dimension ? dimension.getBoundingClientRect().bottom + 8 - entry.getBoundingClientRect().top : 0;
  if (covered > 0) scrollBy({ top: covered, behavior: "instant" });
}

function onChanges(changes) {
  for (const change of changes) {
    if (change.type === "attributes") {
      show(change.target);
    } else {
      for (const node of change.removedNodes)
        if (node.dataset?.entry !== undefined && document.activeElement === document.body) dimensionOf(node)?.focus({ preventScroll: true });
      for (const node of change.addedNodes) {
        if (node.nodeType !== Node.ELEMENT_NODE) continue;
        if (node.dataset && node.dataset.field !== undefined) show(node);
        node.querySelectorAll?.("[data-field]").forEach(show);
        if (node.dataset?.lines !== undefined) tellLines(node);
        node.querySelectorAll?.("[data-lines]").forEach(tellLines);
        if (node.dataset?.entry !== undefined) open(node);
      }
    }
  }
}
