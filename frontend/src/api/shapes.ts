/** The records that the server sends, by their names in its OpenAPI. */
import type { components } from "./types";

type Schemas = components["schemas"];
export type QuiltView = Schemas["QuiltView"];
export type UnitView = Schemas["UnitView"];
export type PlacedView = Schemas["PlacedView"];
export type ClothView = Schemas["ClothView"];
export type BoxView = Schemas["BoxView"];
export type FiguresView = Schemas["FiguresView"];
export type FindingView = Schemas["FindingView"];
export type FabricView = Schemas["FabricView"];
export type ColourwayView = Schemas["ColourwayView"];
export type KindView = Schemas["KindView"];
export type SectionView = Schemas["SectionView"];
export type RecipeName = Schemas["RecipeName"];
export type PaperFacts = Schemas["PaperFacts"];

/** All acts, as the server takes them: a name, and the arguments that it asks for. */
export interface Act {
  name: string;
  [argument: string]: unknown;
}

/** The design as it stands on the desk: what its text says, and what became of its file. */
export interface PaperView extends PaperFacts {
  id: string;
  revision: number;
  path: string | null;
  saved: boolean;
  outside: boolean;
  can_undo: boolean;
  can_redo: boolean;
  undo_of: string | null;
  redo_of: string | null;
}

/** What an act came to; the page has the words for its facts. */
export interface Outcome {
  revision: number;
  changed: boolean;
  act: string;
  facts: Record<string, string | number>;
}

export interface Fault {
  detail: string;
  remedy?: string;
  revision?: number;
  line?: number | null;
  column?: number | null;
}
