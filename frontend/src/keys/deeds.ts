/**
 * Everything that a key does: the one list from which keys are heard and the sheet of keys is written. Keys that are a
 * single character work only where the quilt has the focus, or can be switched off with the others on the sheet.
 */
export type Where = "everywhere" | "quilt" | "mat" | "drafting" | "cutting" | "booklet" | "making";

export interface Deed {
  id: string;
  keys: readonly string[];
  where: Where;
}

export const DEEDS = [
  { id: "undo", keys: ["Ctrl+z"], where: "everywhere" },
  { id: "redo", keys: ["Ctrl+Shift+z", "Ctrl+y"], where: "everywhere" },
  { id: "save", keys: ["Ctrl+s"], where: "everywhere" },
  { id: "key-sheet", keys: ["F1", "?"], where: "everywhere" },
  { id: "room", keys: ["Alt+1", "Alt+2", "Alt+3", "Alt+4", "Alt+5", "Alt+6", "Alt+7", "Alt+8"], where: "everywhere" },
  { id: "start", keys: ["Alt+0"], where: "everywhere" },
  { id: "close", keys: ["Escape"], where: "everywhere" },
  { id: "needle", keys: ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"], where: "quilt" },
  { id: "needle-far", keys: ["Home", "End", "PageUp", "PageDown"], where: "quilt" },
  { id: "mark-more", keys: ["Shift+ArrowLeft", "Shift+ArrowRight", "Shift+ArrowUp", "Shift+ArrowDown"], where: "quilt" },
  { id: "mark-all", keys: ["Ctrl+a"], where: "quilt" },
  { id: "turn", keys: ["r"], where: "quilt" },
  { id: "turn-back", keys: ["Shift+r"], where: "quilt" },
  { id: "lay", keys: ["Enter", " "], where: "quilt" },
  { id: "fill", keys: ["f"], where: "quilt" },
  { id: "copy", keys: ["c", "Ctrl+c"], where: "quilt" },
  { id: "stamp", keys: ["s", "Ctrl+v"], where: "quilt" },
  { id: "swap", keys: ["x"], where: "quilt" },
  { id: "pick", keys: ["p"], where: "quilt" },
  { id: "brush-next", keys: ["]"], where: "quilt" },
  { id: "brush-before", keys: ["["], where: "quilt" },
  { id: "brush-turn", keys: ["."], where: "quilt" },
  { id: "symmetry", keys: ["y"], where: "quilt" },
  { id: "tool", keys: ["t"], where: "quilt" },
  { id: "sections", keys: ["Shift+n"], where: "quilt" },
  { id: "borders", keys: ["b"], where: "quilt" },
  { id: "motif", keys: ["m"], where: "quilt" },
  { id: "zoom-in", keys: ["+", "="], where: "mat" },
  { id: "zoom-out", keys: ["-"], where: "mat" },
  { id: "fit", keys: ["0"], where: "mat" },
  { id: "handle", keys: ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"], where: "drafting" },
  { id: "handle-far", keys: ["Shift+ArrowLeft", "Shift+ArrowRight", "Shift+ArrowUp", "Shift+ArrowDown"], where: "drafting" },
  { id: "handle-drop", keys: ["Enter"], where: "drafting" },
  { id: "piece", keys: ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown", "Home", "End"], where: "cutting" },
  { id: "piece-mark", keys: ["Enter", " "], where: "cutting" },
  { id: "page-before", keys: ["ArrowLeft", "PageUp"], where: "booklet" },
  { id: "page-next", keys: ["ArrowRight", "PageDown"], where: "booklet" },
  { id: "page-first", keys: ["Home"], where: "booklet" },
  { id: "page-last", keys: ["End"], where: "booklet" },
  { id: "page-nearer", keys: ["+", "="], where: "booklet" },
  { id: "page-farther", keys: ["-"], where: "booklet" },
  { id: "page-whole", keys: ["0"], where: "booklet" },
  { id: "step-before", keys: ["ArrowLeft"], where: "making" },
  { id: "step-next", keys: ["ArrowRight"], where: "making" },
] as const satisfies readonly Deed[];

export type DeedId = (typeof DEEDS)[number]["id"];
export type Handlers = Partial<Record<DeedId, (key: string) => void>>;

interface Pressed {
  key: string;
  ctrlKey: boolean;
  metaKey: boolean;
  altKey: boolean;
  shiftKey: boolean;
}

/** Return a key as the list writes it; the command key of a Mac counts as Ctrl. */
export function pressed(event: Pressed): string {
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const isSign = event.key.length === 1 && event.key.toLowerCase() === event.key.toUpperCase();
  const parts = [
    event.ctrlKey || event.metaKey ? "Ctrl" : "",
    event.altKey ? "Alt" : "",
    event.shiftKey && !(isSign && key !== " ") ? "Shift" : "",
    key,
  ];
  return parts.filter(Boolean).join("+");
}

/** Return which deed a key does at a place, if any. */
export function deedOf(event: Pressed, where: Where): DeedId | null {
  const key = pressed(event);
  return DEEDS.find((deed) => deed.where === where && (deed.keys as readonly string[]).includes(key))?.id ?? null;
}

/** Tell whether a key is a single character, which those who speak to their machine must be able to switch off. */
export function isSingle(event: Pressed): boolean {
  return event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey;
}

/** Hear a key: do its deed where there is one for it. */
export function hear(event: KeyboardEvent, where: Where, handlers: Handlers): boolean {
  const deed = deedOf(event, where);
  const handler = deed && handlers[deed];
  if (!handler) return false;
  event.preventDefault();
  handler(pressed(event));
  return true;
}
