/** Which size and which plan lie on the cutting bench, kept while other rooms are visited. */
class Bench {
  /** A size by its name; null for the file's own. */
  size = $state<string | null>(null);
  /** A fabric's letter, `web`, or nothing for the first plan. */
  shown = $state("");
}

export const bench = new Bench();
