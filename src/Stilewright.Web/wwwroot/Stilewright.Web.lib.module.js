// Loaded by the framework itself, before and after it starts.
import { watchFields } from "./js/fields.js";
import { watchDrawings } from "./js/drawings.js";
import { watchScreen } from "./js/screen.js";

export function afterWebStarted(blazor) {
  // A field is settled with Enter, by leaving it or by going on to the next one; until then its text is the browser's.
  blazor.registerCustomEventType("typed", { createEventArgs: told });
  blazor.registerCustomEventType("settled", { createEventArgs: told });
  blazor.registerCustomEventType("lines", { createEventArgs: told });
  blazor.registerCustomEventType("picked", { createEventArgs: told });
  watchFields();
  watchDrawings();
  watchScreen();
}

function told(event) {
  return event.detail;
}
