// Drawings: picking a part, showing the same part in table and drawing, zoom and pan. The server knows only what was picked.

export function watchDrawings() {
  document.addEventListener("click", onClick);
  document.addEventListener("keydown", onKey);
  document.addEventListener("pointerover", event => light(event.target, true));
  document.addEventListener("pointerout", event => light(event.target, false));
  document.addEventListener("focusin", event => light(event.target, true));
  document.addEventListener("focusout", event => light(event.target, false));
  document.addEventListener("pointerdown", startPan);
  document.addEventListener("wheel", onWheel, { passive: false });
  new MutationObserver(changes => {
    for (const change of changes) {
      if (change.type === "attributes") place(change.target);
      else for (const node of change.addedNodes) if (node.nodeType === Node.ELEMENT_NODE) placeWithin(node);
    }
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-at", "data-ratio"] });
  placeWithin(document.body);
}

// What follows from a drawing's own measures: its ratio of width to height, and where fields stand on it, in per cent.
function placeWithin(root) {
  if (root.matches("[data-at], [data-ratio]")) place(root);
  root.querySelectorAll("[data-at], [data-ratio]").forEach(place);
}

function place(element) {
  if (element.dataset.ratio !== undefined) {
    element.style.setProperty("--ratio", element.dataset.ratio);
  } else {
    const [x, y] = element.dataset.at.split(" ");
    element.style.left = `${x}%`;
    element.style.top = `${y}%`;
  }
}

function pickable(target) {
  return target.closest?.("[data-pick]");
}

function pick(element) {
  element.dispatchEvent(new CustomEvent("picked", { bubbles: true, detail: { path: element.dataset.pick } }));
}

let panned = false;

function onClick(event) {
  const zoom = event.target.closest("[data-zoom]");
  if (zoom) {
    const drawing = zoom.closest("[data-drawing]");
    if (zoom.dataset.zoom === "whole") set(drawing, { scale: 1, x: 0, y: 0 });
    else scaleBy(drawing, zoom.dataset.zoom === "in" ? 1.4 : 1 / 1.4);
    return;
  }
  const element = pickable(event.target);
  if (element && !panned) pick(element);
}

function onKey(event) {
  if (event.key !== "Enter" && event.key !== " ") return;
  const element = event.target.closest?.("[data-pick]");
  if (!element || event.target !== element || element.tagName === "BUTTON" || element.tagName === "A") return;
  event.preventDefault();
  pick(element);
}

// The part under the pointer, in the drawing and in every table.
function light(target, on) {
  const element = target.closest?.("[data-pick], [data-of]");
  if (!element) return;
  const path = element.dataset.pick ?? element.dataset.of;
  document.querySelectorAll(`[data-pick="${CSS.escape(path)}"], [data-of="${CSS.escape(path)}"]`)
    .forEach(each => each.classList.toggle("lit", on));
}

// Zoom and pan move the drawing within its window; its own coordinates stay as the server drew them.
const views = new WeakMap();

function viewOf(drawing) {
  return views.get(drawing) ?? { scale: 1, x: 0, y: 0 };
}

function set(drawing, view) {
  view.scale = Math.min(12, Math.max(1, view.scale));
  if (view.scale === 1) view.x = view.y = 0;
  views.set(drawing, view);
  const moved = drawing.querySelector("[data-moved]");
  moved.style.transformOrigin = "0 0";
  moved.style.transform = view.scale === 1 ? "" : `translate(${view.x}px, ${view.y}px) scale(${view.scale})`;
  drawing.toggleAttribute("data-zoomed", view.scale > 1);
}

function scaleBy(drawing, factor, at) {
  const box = drawing.querySelector(".drawing-window").getBoundingClientRect();
  const point = at ?? { x: box.width / 2, y: box.height / 2 };
  const view = { ...viewOf(drawing) };
  const scale = Math.min(12, Math.max(1, view.scale * factor));
  view.x = point.x - ((point.x - view.x) * scale) / view.scale;
  view.y = point.y - ((point.y - view.y) * scale) / view.scale;
  view.scale = scale;
  set(drawing, view);
}

function onWheel(event) {
  const drawing = event.target.closest?.("[data-drawing]");
  if (!drawing || !event.ctrlKey) return;
  event.preventDefault();
  const box = drawing.querySelector(".drawing-window").getBoundingClientRect();
  scaleBy(drawing, Math.exp(-event.deltaY / 300), { x: event.clientX - box.left, y: event.clientY - box.top });
}

function startPan(event) {
  panned = false;
  const drawing = event.target.closest?.("[data-drawing]");
  if (!drawing || event.target.closest("button, input") || viewOf(drawing).scale === 1) return;
  const from = { x: event.clientX, y: event.clientY };
  const view = viewOf(drawing);
  const origin = { x: view.x, y: view.y };
  const move = each => {
    if (Math.hypot(each.clientX - from.x, each.clientY - from.y) > 4) panned = true;
    set(drawing, { scale: view.scale, x: origin.x + each.clientX - from.x, y: origin.y + each.clientY - from.y });
  };
  const stop = () => {
    removeEventListener("pointermove", move);
    removeEventListener("pointerup", stop);
    removeEventListener("pointercancel", stop);
  };
  addEventListener("pointermove", move);
  addEventListener("pointerup", stop);
  addEventListener("pointercancel", stop);
}
