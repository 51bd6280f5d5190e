/** The fabric in hand and how the quilt is seen, kept while other rooms are visited. */
class Hand {
  letter = $state("");
  isGrey = $state(false);
}

export const hand = new Hand();
