/** The rooms, in the order of the envelope's flaps. A room is loaded when it is first entered. */
import type { Component } from "svelte";
import type { IconName } from "$/shell/icons";

export type RoomId = "quilt" | "drafting" | "cloth" | "finder" | "cutting" | "proof" | "booklet" | "making";

export interface Room {
  id: RoomId;
  icon: IconName;
  /** Whether the ledge with colourways, fabrics and the brush lies below it. */
  ledge: boolean;
  load: () => Promise<{ default: Component }>;
}

export const ROOMS: readonly Room[] = [
  { id: "quilt", icon: "quilt", ledge: true, load: () => import("./quilt/Quilt.svelte") },
  { id: "drafting", icon: "drafting", ledge: false, load: () => import("./drafting/Drafting.svelte") },
  { id: "cloth", icon: "cloth", ledge: false, load: () => import("./cloth/Cloth.svelte") },
  { id: "finder", icon: "finder", ledge: false, load: () => import("./finder/Finder.svelte") },
  { id: "cutting", icon: "cutting", ledge: false, load: () => import("./cutting/Cutting.svelte") },
  { id: "proof", icon: "proof", ledge: false, load: () => import("./proof/Proof.svelte") },
  { id: "booklet", icon: "booklet", ledge: false, load: () => import("./booklet/Booklet.svelte") },
  { id: "making", icon: "making", ledge: false, load: () => import("./making/Making.svelte") },
];
