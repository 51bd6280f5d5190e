/** What a finding says, for one who works by hand: keys of the file are called by what they are. */
import { t, told } from "./words";

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
    "(?<file> at the top of the file| in \\[[a-z]+\\])",
    "`?\\b(?<code>[a-z]{1,2})-(?<piece>tl|tr|br|bl|lh|rh|th|bh|tt|rt|bt|lt)(?<turn>[0-3])?\\b`?",
  ].join("|"),
  "g",
);

/** Return a sentence in which each key that has words is called by them; all else stays as it is. */
export function byHand(sentence: string): string {
  return sentence.replace(SAID, (whole: string, ...rest: unknown[]) => {
    const { key, value, recipe, quoted, letter, of, alone, file, code, piece } = rest.at(-1) as Record<string, string | undefined>;
    if (file) return "";
    if (code && piece) return t(`${WORDS}.unit`, { code, piece: told(`${WORDS}.piece.${piece}`, {}, piece) });
    if (alone) return told(`${WORDS}.of-recipe`, { recipe: alone }, whole);
    if (letter && of) return told(`${WORDS}.of-fabric`, { letter, what: called(of, of) }, whole);
    if (key && value) {
      const worded = told(`${WORDS}.is`, { what: called(key, key), value });
      return recipe ? `${worded} ${told(`${WORDS}.in-recipe`, { recipe })}` : worded;
    }
    return called(quoted ?? whole, whole);
  });
}

/** Call a dotted key by what it is: `fabrics.A.colour` is the colour of fabric A. */
export function keyInWords(at: string): string {
  const [table = "", name = "", ...rest] = at.split(".");
  const last = rest.at(-1) ?? name;
  const what = called(at, called(last, last.replaceAll("_", " ")) || table);
  if (table === "fabrics" && rest.length) return told(`${WORDS}.of-fabric`, { letter: name, what });
  return table === "recipes" && rest.length ? told(`${WORDS}.key-of-recipe`, { recipe: name, what }) : what;
}

function called(key: string, otherwise: string): string {
  const field = told(`values.of.${slug(key)}.name`);
  return told(`${WORDS}.${slug(key)}`, {}, field ? told(`${WORDS}.field`, { name: field }) : otherwise);
}

/** The catalogue's name of a key: `making.ring_in` is `making-ring-in`. */
export function slug(key: string): string {
  return key.replace(/[^a-z]+/g, "-").replace(/^-|-$/g, "");
}
