/** Cloth that is dragged from a swatch to a part of a colourway. */
const KIND = "application/x-quarterturn-cloth";

export function begin(event: DragEvent, letter: string): void {
  event.dataTransfer?.setData(KIND, letter);
  event.dataTransfer?.setData("text/plain", letter);
  if (event.dataTransfer) event.dataTransfer.effectAllowed = "copy";
}

export function mayDrop(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes(KIND) ?? false;
}

export function dropped(event: DragEvent): string {
  return event.dataTransfer?.getData(KIND) ?? "";
}
