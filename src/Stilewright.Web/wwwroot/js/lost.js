// Tells that the line to the server is lost, tries again, and loads the page anew where the server no longer knows it.
// Where the page itself has stopped, nothing may stand before the strip that says so.

const dialog = document.getElementById("components-reconnect-modal");

dialog.addEventListener("components-reconnect-state-changed", event => {
  const state = event.detail.state;
  if (state === "show") {
    if (!dialog.open) dialog.showModal();
  } else if (state === "hide") {
    dialog.close();
  } else if (state === "failed") {
    document.addEventListener("visibilitychange", again);
    retryLater();
  } else if (state === "rejected") {
    location.reload();
  }
});

document.getElementById("lost-again").addEventListener("click", again);

function retryLater() {
  setTimeout(again, 2000);
}

async function again() {
  document.removeEventListener("visibilitychange", again);
  try {
    if (!(await Blazor.reconnect())) location.reload();
    else dialog.close();
  } catch {
    retryLater();
  }
}

new MutationObserver(() => document.querySelectorAll("dialog[open]").forEach(each => each.close()))
  .observe(document.getElementById("blazor-error-ui"), { attributes: true, attributeFilter: ["style"] });
