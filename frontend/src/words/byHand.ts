/** What a finding says, for one who works by hand: keys of the file are called by what they are. */
import { told } from "./words";

const WORDS = "in-words";
const TABLES = "making|class|money|kits|house|binding|backing|batting";

/** A key between backticks, a key of a table, one of a fabric or recipe, a key with its value, or a key that is no English word. */
const SAID = new RegExp(
  [
    '(?<key>[a-z_]+) = "(?<value>[^"]+)"(?: in recipes\\.(?<recipe>[\\w-]+))?',
    "shape = \\{ flow = true \\}",
    "`(?<quoted>[a-z_]+)`",
    "fabrics\\.(?<letter>[A-Z]+)\\.(?<of>[a-z_]+)",
    "recipes\\.(?<alone>[\\w-]+)",
    `\\b(?:${TABLES})\\.[a-z_]+(?:\\.[a-z_]+)*[a-z_]`,
    "\\b[a-z]+(?:_[a-z]+)+\\b",
    "\\b(?:underlap|finished)(?= (?:larger|smaller|\\d))",
  ].join("|"),
  "g",
);

/** Return a sentence in which each key that has words is called by them; all else stays as it is. */
export function byHand(sentence: string): string {
  return sentence.replace(SAID, (whole: string, ...rest: unknown[]) => {
    const { key, value, recipe, quoted, letter, of, alone } = rest.at(-1) as Record<string, string | undefined>;
    if (alone) return told(`${WORDS}.of-recipe`, { recipe: alone }, whole);
    if (letter && of) return told(`${WORDS}.of-fabric`, { letter, what: called(of, of) }, whole);
    if (key && value) {
      const worded = told(`${WORDS}.is`, { what: called(key, key), value });
      return recipe ? `${worded} ${told(`${WORDS}.in-recipe`, { recipe })}` : worded;
    }
    return called(quoted ?? whole, whole);
  });
}

function called(key: string, otherwise: string): string {
  const field = told(`values.of.${slug(key)}.name`);
  return told(`${WORDS}.${slug(key)}`, {}, field ? told(`${WORDS}.field`, { name: field }) : otherwise);
}

/** The catalogue's name of a key: `making.ring_in` is `making-ring-in`. */
export function slug(key: string): string {
  return key.replace(/[^a-z]+/g, "-").replace(/^-|-$/g, "");
}
