/** Return the ids of what is told of a field, for `aria-describedby`: its sentence of help, and what is found of it. */
export function describedBy(id: string, hint: string, isTold: boolean): string | undefined {
  return [...(hint ? [`${id}-hint`] : []), ...(isTold ? [`${id}-told`] : [])].join(" ") || undefined;
}
