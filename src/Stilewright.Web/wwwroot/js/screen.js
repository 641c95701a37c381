// What belongs to this screen alone: light or dark, the unit it is read in, dialogs, and the state of the connection.

export function watchScreen() {
  document.addEventListener("click", onClick);
  document.addEventListener("keydown", event => {
    const menu = event.key === "Escape" && event.target.closest?.("details[data-menu][open]");
    if (!menu) return;
    menu.open = false;
    menu.querySelector("summary").focus();
  });
  new MutationObserver(changes => {
    for (const change of changes) {
      for (const node of change.addedNodes)
        if (node.nodeType === Node.ELEMENT_NODE) {
          (node.matches("dialog[data-modal]") ? [node] : [...node.querySelectorAll("dialog[data-modal]")]).forEach(open);
          (node.matches("[data-arrive]") ? [node] : [...node.querySelectorAll("[data-arrive]")]).forEach(arrive);
        }
      if (change.type === "attributes" && change.target.dataset.arrive !== undefined && change.attributeName === "data-arrive") arrive(change.target);
    }
    showStep();
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-arrive", "aria-current"] });
  document.querySelectorAll("dialog[data-modal]").forEach(open);
  document.querySelectorAll("[data-arrive]").forEach(arrive);
  showStep();
}

// The row of steps is wider than a phone: the step at hand is brought into sight, once for each, so that the row can be moved by hand.
let shownStep;
function showStep() {
  const step = document.querySelector(".steps [aria-current]");
  if (step === shownStep) return;
  shownStep = step;
  const row = step?.closest(".steps");
  if (!row) return;
  const [inRow, ofRow] = [step.getBoundingClientRect(), row.getBoundingClientRect()];
  row.scrollLeft += inRow.left - ofRow.left - (ofRow.width - inRow.width) / 2;
}

// Where someone was led by a figure.
function arrive(element) {
  requestAnimationFrame(() => element.scrollIntoView({ block: element.tagName === "SECTION" ? "start" : "center" }));
}

function open(dialog) {
  if (dialog.open) return;
  dialog.showModal();
  dialog.addEventListener("cancel", event => {
    event.preventDefault();
    dialog.querySelector("[data-cancel]")?.click();
  });
}

function onClick(event) {
  // A menu closes with a choice or a touch beside it.
  for (const menu of document.querySelectorAll("details[data-menu][open]"))
    if (!menu.querySelector("summary").contains(event.target)) menu.open = false;
  const button = event.target.closest("button, a");
  if (!button) return;
  if (button.dataset.light !== undefined) {
    const dark = document.documentElement.hasAttribute("data-dark")
      || (!document.documentElement.hasAttribute("data-light") && matchMedia("(prefers-color-scheme: dark)").matches);
    document.documentElement.toggleAttribute("data-dark", !dark);
    document.documentElement.toggleAttribute("data-light", dark);
    localStorage.setItem("stilewright.light", dark ? "light" : "dark");
  }
  if (button.dataset.unit !== undefined) {
    document.cookie = `stilewright.unit=${button.dataset.unit}; path=/; max-age=31536000; samesite=strict`;
  }
  if (button.dataset.more !== undefined) {
    // On a narrow screen the tools of the head are folded away.
    const isOpen = button.closest(".head").toggleAttribute("data-open");
    button.setAttribute("aria-expanded", String(isOpen));
  }
  if (button.dataset.print !== undefined) window.print();
}
