/** Light, dark, or as the machine has it; kept for this browser. */
export const LIGHTS = ["auto", "light", "dark"] as const;
export type Light = (typeof LIGHTS)[number];

const KEPT = "quarterturn-light";
const dark = matchMedia("(prefers-color-scheme: dark)");

function kept(): Light {
  try {
    const found = localStorage.getItem(KEPT) as Light | null;
    return found && LIGHTS.includes(found) ? found : "auto";
  } catch {
    return "auto"; // a browser that keeps nothing
  }
}

class Lamp {
  light = $state<Light>(kept());

  constructor() {
    this.show();
    dark.addEventListener("change", () => this.show());
  }

  get isDark(): boolean {
    return this.light === "dark" || (this.light === "auto" && dark.matches);
  }

  set(light: Light): void {
    this.light = light;
    try {
      localStorage.setItem(KEPT, light);
    } catch {
      // Then it holds until the window is closed.
    }
    this.show();
  }

  next(): void {
    this.set(LIGHTS[(LIGHTS.indexOf(this.light) + 1) % LIGHTS.length] ?? "auto");
  }

  private show(): void {
    document.documentElement.dataset.light = this.isDark ? "dark" : "light";
  }
}

export const lamp = new Lamp();
