/** The records that the server sends, by their names in its OpenAPI. */
import type { components } from "./types";

export type Schemas = components["schemas"];
export type QuiltView = Schemas["QuiltView"];
export type UnitView = Schemas["UnitView"];
export type PlacedView = Schemas["PlacedView"];
export type BoxView = Schemas["BoxView"];
export type FiguresView = Schemas["FiguresView"];
export type FindingView = Schemas["FindingView"];
export type FabricView = Schemas["FabricView"];
export type ColourwayView = Schemas["ColourwayView"];
export type KindView = Schemas["KindView"];
export type SectionView = Schemas["SectionView"];
export type BorderName = Schemas["BorderName"];
export type PaperView = Schemas["PaperView"];
export type StartView = Schemas["StartView"];
export type Outcome = Schemas["Outcome"];
export type JsonValue = Schemas["JsonValue"];
/** Why a request is refused, and what to do instead. */
export type Refused = Schemas["Refused"];

/** An act with its arguments, as the server takes it; what has a default may be left out. */
export type Act = Loose<Schemas["ActOrder"]["act"]>;
type Loose<T> = T extends { name: string } ? Pick<T, "name"> & Partial<Omit<T, "name">> : never;
export type MotifName = Schemas["MotifName"];
