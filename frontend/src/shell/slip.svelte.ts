/** Whether the slip lies open: folded away it says nothing, and a refusal must be told elsewhere. */
class SlipState {
  isOpen = $state(true);
}

export const slip = new SlipState();
