/** The views of the design that are on their way, so that a field can wait until all that follows from it is shown. */
import { tick } from "svelte";

const loads = new Set<Promise<void>>();

/** Count a view as on its way until it has come. */
export function coming(load: Promise<void>): Promise<void> {
  const counted = load.finally(() => loads.delete(counted));
  loads.add(counted);
  return counted;
}

/** Wait until the rooms show what the desk knows. */
export async function settled(): Promise<void> {
  do {
    await tick();
    await Promise.all(loads);
  } while (loads.size);
  await tick();
}
