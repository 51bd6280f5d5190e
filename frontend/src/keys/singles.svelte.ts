/** Whether keys that are a single character do something; kept for this browser. */
const KEPT = "quarterturn-single-keys";

class Singles {
  on = $state(read());

  set(on: boolean): void {
    this.on = on;
    try {
      localStorage.setItem(KEPT, String(on));
    } catch {
      // Then it holds until the window is closed.
    }
  }
}

function read(): boolean {
  try {
    return localStorage.getItem(KEPT) !== "false";
  } catch {
    return true;
  }
}

export const singles = new Singles();
