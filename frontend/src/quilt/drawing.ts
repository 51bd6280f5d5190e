/**
 * Draws a quilt into a group of an SVG, in inches. Each kind of unit is drawn once, and used wherever it lies; painting
 * touches the elements of the painted places alone, so that 1,600 units stay as smooth as ten.
 */
import type { QuiltView, UnitView } from "$/api/shapes";
import type { QuiltModel } from "./model";
import { attribute, inTurn } from "./motion";
import { paintOf, turnedBack, type Clothed, type Upright } from "./prints";
import { drawnAt, type Spot } from "./spots";

/** How a seam is drawn. As attributes: rules of a style sheet do not reach what is drawn by `use`. */
const SEAM = { stroke: "rgb(30 24 16 / 0.28)", "stroke-width": 0.03 };
const SVG = "http://www.w3.org/2000/svg";
let drawings = 0;

/** Return the style that fills with a fabric: a colour, or the pattern of a photo, kept as a property of the drawing. */
export function cloth(letter: string): string {
  return `fill:var(--cloth-${letter})`;
}

/** Return the properties that hold the colours of fabrics. */
export function clothProperties(fabrics: readonly Clothed[]): string {
  return fabrics.map((fabric) => `--cloth-${fabric.letter}:${paintOf(fabric)}`).join(";");
}

function element<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Record<string, string | number>,
  ...children: SVGElement[]
): SVGElementTagNameMap[K] {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.append(...children);
  return made;
}

/** Return the elements that draw a unit in its own frame: its cloth, and the seams round it. */
function unitParts(unit: UnitView): SVGElement[] {
  const faces = unit.faces.map((face) => {
    const path = element("path", { d: face.path });
    path.style.cssText = cloth(face.fabric);
    return path;
  });
  const seam = element("rect", { width: unit.width, height: unit.height, fill: "none", ...SEAM });
  return [...faces, seam];
}

export class Drawing {
  private readonly id = `q${++drawings}`;
  private uses: SVGUseElement[] = [];
  private model: QuiltModel | null = null;
  private defs: SVGDefsElement | null = null;
  private upright: readonly Upright[] = [];
  private ground = "";

  constructor(private readonly group: SVGGElement) {}

  /**
   * Draw a quilt anew. `more` are units that do not lie in it yet, so that they can be painted; `upright` names fabrics
   * whose prints stand upright.
   */
  draw(model: QuiltModel, more: Readonly<Record<string, UnitView>> = {}, upright: readonly Upright[] = []): void {
    this.upright = upright;
    const before = this.model;
    this.model = model;
    const { view } = model;
    const ground = JSON.stringify([view.units, view.cloths, view.binding, view.width, view.height, Object.keys(more), upright]);
    if (before && ground === this.ground && before.spots.length === model.spots.length) return this.amend(before);
    this.ground = ground;
    this.defs = element("defs", {});
    for (const [name, unit] of Object.entries({ ...more, ...view.units })) this.define(name, unit);
    const cloths = element("g", {}, ...view.cloths.map((each) => this.clothPath(each.path, each.fabric)));
    const laid = element("g", {}, ...this.unpainted(view));
    const uses = document.createDocumentFragment();
    this.uses = model.spots.map((spot) => {
      const use = element("use", {});
      this.lay(use, spot);
      uses.append(use);
      return use;
    });
    const painted = element("g", {});
    painted.append(uses);
    this.group.replaceChildren(this.defs, this.binding(view), cloths, laid, painted);
  }

  /** Draw some places anew. */
  repaint(spots: readonly Spot[]): void {
    for (const spot of spots) {
      const use = this.uses[spot.index];
      if (use) this.lay(use, spot);
    }
  }

  /** Draw anew only those places that look otherwise than in the model before: after a stroke, mostly none. */
  private amend(before: QuiltModel): void {
    const isSame = (spot: Spot, was: Spot | undefined): boolean =>
      was?.unit === spot.unit && was.turn === spot.turn && was.frame.every((each, k) => each === spot.frame[k]);
    this.repaint(this.model?.spots.filter((spot, k) => !isSame(spot, before.spots[k])) ?? []);
  }

  private define(name: string, unit: UnitView): void {
    this.defs?.append(element("g", { id: `${this.id}-${name}` }, ...unitParts(unit)));
  }

  private lay(use: SVGUseElement, spot: Spot): void {
    if (!spot.unit) return void use.removeAttribute("href");
    const unit = this.model?.view.units[spot.unit];
    const matrix = unit
      ? drawnAt(spot, unit.width, unit.height, spot.turn)
      : inTurn([spot.width, 0, 0, spot.height, 0, 0], spot.frame);
    if (!unit && /^[A-Z]/.test(spot.unit)) this.defineCloth(spot.unit);
    use.setAttribute("href", `#${this.id}-${spot.unit}`);
    use.setAttribute("transform", attribute(matrix));
    if (this.upright.length) use.style.cssText = turnedBack(this.upright, matrix);
  }

  private defineCloth(letter: string): void {
    if (!this.defs || this.defs.querySelector(`#${this.id}-${letter}`)) return;
    const square = element("rect", { width: 1, height: 1, id: `${this.id}-${letter}` });
    square.style.cssText = cloth(letter);
    this.defs.append(square);
  }

  private clothPath(path: string, fabric: string): SVGPathElement {
    const made = element("path", { d: path, ...SEAM });
    made.style.cssText = cloth(fabric);
    return made;
  }

  /** Units that no cell can paint, such as those of the strips of some borders: they are drawn as they lie. */
  private unpainted(view: QuiltView): SVGUseElement[] {
    return view.placed
      .filter((placed) => !placed.cell)
      .map((placed) =>
        element("use", { href: `#${this.id}-${placed.unit}`, transform: `matrix(${placed.at.join(" ")})` }),
      );
  }

  private binding(view: QuiltView): SVGRectElement {
    const depth = view.binding.depth;
    const made = element("rect", {
      x: -depth,
      y: -depth,
      width: view.width + 2 * depth,
      height: view.height + 2 * depth,
      rx: depth / 3,
      stroke: "rgb(0 0 0 / 0.35)",
      "stroke-width": 0.02,
    });
    made.style.cssText = cloth(view.binding.fabric);
    return made;
  }
}
