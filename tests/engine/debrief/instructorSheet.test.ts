/** The instructor's sheet names every cause and look-alike laid, where it is really made out, and the notes, which no trainee meets. */
import { describe, expect, it } from 'vitest';
import type { Act } from '../../../src/engine/acts/types.ts';
import { instructorSheet } from '../../../src/engine/debrief/instructorSheet.ts';
import { leftWords, safeSteps } from '../../../src/engine/debrief/routes.ts';
import { sheetText } from '../../../src/engine/debrief/sheetText.ts';
import { canonicalJson } from '../../../src/engine/math/hash.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { signsFrom } from '../../../src/engine/senses/signsFrom.ts';
import { build } from '../../../src/engine/world/build.ts';
import { yaml } from '../world/shuffled.ts';

const read = (text: string) => {
  const parsed = parse(text, 'sheet.yaml');
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('; '));
  return { ...parsed, world: build(parsed.scenario, parsed.hash) };
};
const { scenario, hash, world } = read(yaml);
const sheet = instructorSheet(scenario, world, 'us');

describe('the sheet of Quarry Road', () => {
  it('has every fault as a cause and every look-alike apart, deadly causes first', () => {
    const ids = (faults: readonly { readonly id: string }[]) => faults.map(({ id }) => id).sort();
    expect(sheet.causes.map(({ cause }) => cause).sort()).toEqual(ids(scenario.faults));
    expect(sheet.lookAlikes.map(({ lookAlike }) => lookAlike).sort()).toEqual(ids(scenario.lookAlikes));
    const deadly = sheet.causes.map(({ severity }) => severity === 'fatal');
    expect(deadly).toEqual([...deadly].sort((a, b) => Number(b) - Number(a)));
    expect(deadly).toContain(true);
  });

  it('names a place with the bare eye exactly for what the bare eye makes out from there', () => {
    const quiet = { ...world, truck: { ...world.truck, place: 'clear', engine: false } } as const;
    const ground = world.stands.filter(({ aloft }) => aloft === null);
    for (const { cause, found } of sheet.causes) {
      for (const { id, name } of ground) {
        const seen = signsFrom(quiet, id, 'eyes').filter((sign) => sign.fault === cause && sign.sense === 'see');
        const made = seen.filter(({ perceived }) => perceived);
        const said = found.some(
          (line) => line.includes(`${name}, by eye`) || line.toLowerCase().includes(`${name.toLowerCase()}, by eye`),
        );
        expect(`${cause} ${id} ${said}`).toBe(`${cause} ${id} ${made.length > 0}`);
      }
    }
  });

  it('gives each cause what it does in numbers, what holds it and what only tempts', () => {
    for (const { does, controls, tempting } of sheet.causes)
      expect([does.length > 0, controls.length > 0, tempting.length > 0]).toEqual([true, true, true]);
    expect(sheet.causes.some(({ does }) => does.some((line) => /\d kV/.test(line)))).toBe(true);
  });

  it('loses the card of a fault that is not laid', () => {
    const without = read(yaml.replace(/^.*kind: tie-broken.*\n/m, ''));
    const less = instructorSheet(without.scenario, without.world, 'us');
    const ids = less.causes.map(({ cause }) => cause);
    const gone = sheet.causes.filter(({ cause }) => !ids.includes(cause));
    expect([gone.length, ids.length]).toEqual([1, sheet.causes.length - 1]);
    expect(sheetText(sheet)).toContain(gone[0]?.tellApart);
    expect(sheetText(less)).not.toContain(gone[0]?.tellApart);
  });
});

describe('notes for the instructor', () => {
  const note = 'Ask who would have opened the tap first.';
  const noted = read(yaml.replace('\ninstructor:\n', `\ninstructor:\n  - ${note}\n`));
  const bare = read(yaml.slice(0, yaml.indexOf('\ninstructor:\n') + 1));

  it('stand first of what to talk about, and on the printed sheet', () => {
    const { discussion } = instructorSheet(noted.scenario, noted.world, 'us');
    expect(discussion[0]).toBe(note);
    expect(discussion.slice(1)).toEqual(sheet.discussion);
    expect(sheetText(instructorSheet(noted.scenario, noted.world, 'us'))).toContain(`- ${note}`);
  });

  it('leave the drill what it is: the same hash, the same World, the note nowhere in it', () => {
    expect([noted.hash, bare.hash]).toEqual([hash, hash]);
    expect(canonicalJson(noted.world)).toBe(canonicalJson(world));
    expect(canonicalJson(noted.world)).not.toContain(note);
  });
});

describe('a route that exposes nobody', () => {
  const left = (acts: readonly Act[]): string => leftWords(safeSteps(world, acts) ?? []);

  it('is told with all that is wrong still when it ends, look-alikes apart', () => {
    const words = left([{ act: 'acknowledge' }, { act: 'park', at: 'clear' }]);
    for (const { title, part } of sheet.causes)
      expect(words.toLowerCase()).toContain(`${title} (${part})`.toLowerCase());
    for (const { title } of sheet.lookAlikes) expect(words).not.toContain(title);
  });

  it('is told without what was never wrong', () => {
    const none = read(
      yaml
        .replace(/^faults:\n(?: {2}.*\n)+/m, 'faults: []\n')
        .replace(/^look-alikes:\n(?: {2}.*\n)+/m, 'look-alikes: []\n'),
    );
    const steps = safeSteps(none.world, [{ act: 'acknowledge' }]) ?? [];
    expect([steps.length, leftWords(steps)]).toEqual([1, '']);
  });
});
