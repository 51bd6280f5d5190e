import { expect, it } from "vitest";
import { contrast, inkOn } from "./ink";

it("knows the contrast of black and white", () => expect(contrast("#000000", "#ffffff")).toBeCloseTo(21));
it("writes so that it can be read on any colour", () => {
  for (const colour of ["#ffffff", "#000000", "#777777", "#a12b2b", "#f3dcd6", "#2f6b47", "#808000"]) {
    expect(contrast(inkOn(colour), colour)).toBeGreaterThan(4.1);
  }
});
