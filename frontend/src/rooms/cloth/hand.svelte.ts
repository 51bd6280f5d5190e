/** The fabric in hand and how the quilt is seen, kept while other rooms are visited. */
/** As it looks, in greys of its values, or with the ways of its prints. */
export const SEEN = ["cloth", "grey", "ways"] as const;
export type Seen = (typeof SEEN)[number];

class Hand {
  letter = $state("");
  seen = $state<Seen>("cloth");
}

export const hand = new Hand();
