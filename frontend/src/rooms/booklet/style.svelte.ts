/** Whether the sheet of house style lies beside the pages. */
class Style {
  isShown = $state(false);
}

export const style = new Style();
