// Fields whose text belongs to the browser until it is settled.
//
// A field is an input with data-field (its name, the same after a reload) and data-saved (what the server has). The server never
// writes into it: this file copies data-saved into the field where nobody is typing and no draft waits. What is typed is kept as a
// draft in local storage, so that it outlives a lost connection, a reload and a restart of the server, and goes when the server
// has saved it (data-saved says the same) or the person takes it back (Escape).

const prefix = "stilewright.draft.";
let changing = false;

export function watchFields() {
  document.addEventListener("input", onInput);
  document.addEventListener("keydown", onKey);
  document.addEventListener("focusout", onLeave);
  document.addEventListener("focusin", onEnter);
  document.addEventListener("click", onTool);
  new MutationObserver(onChanges).observe(document.body, {
    subtree: true, childList: true, attributes: true, attributeFilter: ["data-saved", "data-field", "data-dropped"],
  });
  document.querySelectorAll("[data-field]").forEach(show);
}

function key(field) {
  return prefix + field.dataset.field;
}

function draftOf(field) {
  try {
    return JSON.parse(localStorage.getItem(key(field)));
  } catch {
    return null;
  }
}

function keep(field, draft) {
  try {
    localStorage.setItem(key(field), JSON.stringify(draft));
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
  const saved = field.dataset.saved ?? "";
  const draft = draftOf(field);
  if (draft && (draft.text === saved || field.dataset.dropped === draft.text)) {
    drop(field);
    if (document.activeElement !== field || field.value.trim() === draft.text) write(field, saved);
    return;
  }
  if (draft) {
    field.setAttribute("data-draft", "");
    if (document.activeElement !== field && field.value.trim() !== draft.text) {
      write(field, draft.text);
    }
    if (field.dataset.toldDraft !== draft.text) {
      field.dataset.toldDraft = draft.text;
      tell(field, "typed", draft);
    }
    return;
  }
  field.removeAttribute("data-draft");
  if (document.activeElement !== field) write(field, saved);
}

function write(field, text) {
  if (field.value === text) return;
  changing = true;
  field.value = text;
  changing = false;
}

function tell(field, name, draft) {
  field.dispatchEvent(new CustomEvent(name, { bubbles: true, detail: { text: draft.text, basedOn: draft.basedOn } }));
}

function onInput(event) {
  const field = event.target;
  if (changing || !field.dataset || field.dataset.field === undefined) return;
  typed(field);
}

function typed(field) {
  const before = draftOf(field);
  const draft = { text: field.value.trim(), basedOn: before ? before.basedOn : field.dataset.saved ?? "" };
  if (draft.text === (field.dataset.saved ?? "")) {
    drop(field);
  } else {
    keep(field, draft);
    field.setAttribute("data-draft", "");
  }
  field.dataset.toldDraft = draft.text;
  tell(field, "typed", draft);
  // The same thing may be entered in two places, beside a drawing and on it.
  document.querySelectorAll(`[data-field="${CSS.escape(field.dataset.field)}"]`).forEach(other => {
    if (other === field) return;
    other.dataset.toldDraft = draft.text;
    write(other, field.value);
    other.toggleAttribute("data-draft", field.hasAttribute("data-draft"));
  });
}

// The draft in the field, or null where it says what is saved.
export function settle(field) {
  const draft = draftOf(field) ?? { text: field.value.trim(), basedOn: field.dataset.saved ?? "" };
  draft.text = field.value.trim();
  if (draft.text === (field.dataset.saved ?? "")) {
    drop(field);
    return;
  }
  keep(field, draft);
  tell(field, "settled", draft);
}

function onKey(event) {
  const field = event.target;
  if (!field.dataset || field.dataset.field === undefined) return;
  if (event.key === "Enter" && field.tagName !== "TEXTAREA") {
    event.preventDefault();
    settle(field);
    field.dispatchEvent(new CustomEvent("next", { bubbles: true }));
  } else if (event.key === "Escape" && draftOf(field)) {
    event.preventDefault();
    event.stopPropagation();
    drop(field);
    write(field, field.dataset.saved ?? "");
    field.dataset.toldDraft = "";
    tell(field, "typed", { text: field.value, basedOn: field.value });
  }
}

function onEnter(event) {
  const field = event.target;
  if (!field.dataset || field.dataset.field === undefined) return;
  lastField = field;
  // Where the page has a pad, a touch screen needs no keyboard of its own over it.
  const hasPad = field.closest("[data-fields]")?.querySelector("[data-pad]");
  field.inputMode = hasPad && matchMedia("(pointer: coarse)").matches ? "none" : "text";
}

function onLeave(event) {
  const field = event.target;
  if (!field.dataset || field.dataset.field === undefined) return;
  // A key of the pad writes into the field it belongs to; that is not leaving it.
  if (event.relatedTarget && event.relatedTarget.closest("[data-pad]")) return;
  if (draftOf(field)) settle(field);
  else show(field);
}

// The field that the pad writes into: the last one that had the focus.
let lastField = null;

function onTool(event) {
  const pressed = event.target.closest("[data-put], [data-marks]");
  if (!pressed) return;
  const pad = pressed.closest("[data-pad]");
  const field = fieldOf(pad);
  if (!field) return;
  const put = pressed.dataset.put ?? "";
  if (pressed.dataset.marks !== undefined) replace(field, markAt(pressed, event.clientX));
  else if (put === "back") replace(field, field.value.trimEnd().slice(0, -1).trimEnd());
  else if (put === "next") {
    settle(field);
    next(field, pad);
    return;
  } else if (put.includes("/")) replace(field, withFraction(field.value, put));
  else replace(field, withDigit(field.value, put));
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
  write(field, text);
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

document.addEventListener("next", event => {
  const pad = event.target.closest("[data-fields]")?.querySelector("[data-pad]");
  if (pad) next(event.target, pad);
});

function onChanges(changes) {
  for (const change of changes) {
    if (change.type === "attributes") {
      show(change.target);
    } else {
      for (const node of change.addedNodes) {
        if (node.nodeType !== Node.ELEMENT_NODE) continue;
        if (node.dataset && node.dataset.field !== undefined) show(node);
        node.querySelectorAll?.("[data-field]").forEach(show);
      }
    }
  }
}
