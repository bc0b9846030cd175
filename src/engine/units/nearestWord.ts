/**
 * The word that a slip of the pen most likely meant: least edit distance (Levenshtein 1966), ties to the
 * earlier word. Answers nothing when more than a third of the letters, and more than one, would change.
 */

const editDistance = (from: string, to: string): number => {
  let above = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1] ? 0 : 1;
      const replaced = (above[column - 1] ?? 0) + same;
      current.push(Math.min(replaced, (above[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1));
    }
    above = current;
  }
  return above[to.length] ?? 0;
};

/** The nearest of `words` to `found` (letter case ignored), or undefined when none is near. */
export const nearestWord = (found: string, words: readonly string[]): string | undefined => {
  if (found.length > 60) return undefined;
  let best: string | undefined;
  let least = Number.MAX_SAFE_INTEGER;
  for (const word of words) {
    const distance = editDistance(found.toLowerCase(), word.toLowerCase());
    if (distance < least) {
      least = distance;
      best = word;
    }
  }
  const allowed = Math.max(1, Math.floor(found.length / 3));
  return least <= allowed ? best : undefined;
};
