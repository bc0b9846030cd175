/** The next drill is worked out from what was missed and what lies in the scenarios, and a proven route is shown only if it is safe. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { faultKind } from '../../../src/engine/catalogue/faults.ts';
import { likeness, nextDrill } from '../../../src/engine/debrief/nextDrill.ts';
import { routeRows, safeSteps } from '../../../src/engine/debrief/routes.ts';
import { parse } from '../../../src/engine/scenario/parse.ts';
import type { Scenario } from '../../../src/engine/scenario/types.ts';
import { score } from '../../../src/engine/score/score.ts';
import { start } from '../acts/scene.ts';
import { committed, fresh } from '../score/logs.ts';

const folder = fileURLToPath(new URL('../../../scenarios/', import.meta.url));
const shipped: readonly Scenario[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => {
    const parsed = parse(readFileSync(`${folder}${name}`, 'utf8'), name);
    if (!parsed.ok) throw new Error(`${name} cannot be read`);
    return parsed.scenario;
  });
const scenarioOf = (id: string): Scenario => {
  const found = shipped.find((each) => each.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const quarryRoad = scenarioOf('quarry-road-fog');
const nothingDone = score(fresh());
/** A drill of Quarry Road in which this kind alone was missed. */
const missing = (kind: string) => {
  const [cause] = nothingDone.causes;
  if (cause === undefined) throw new Error('no cause');
  return { ...nothingDone, causes: [{ ...cause, kind, found: false }], lookAlikes: [] };
};
const holding = (id: string, ...kinds: readonly string[]) => ({
  ...quarryRoad,
  id,
  title: id,
  faults: kinds.map((kind) => ({ id: kind, kind, on: 'x' })),
  lookAlikes: [],
});

describe('likeness', () => {
  it('is most for the same kind, less for another that the same condition names, nothing between fault and look-alike', () => {
    const [dog, child, bystander] = ['dog-loose', 'child-in-zone', 'bystander-in-zone'].map(faultKind);
    if (!dog || !child || !bystander) throw new Error('no kind');
    expect(likeness(child, child)).toBe(4);
    expect(likeness(child, bystander)).toBe(3);
    expect(likeness(dog, child)).toBeGreaterThan(likeness(dog, faultKind('pin-insulator-cracked')));
    expect(likeness(faultKind('water-stain'), child)).toBe(0);
  });
});

describe('the next drill', () => {
  it('is the one that holds the kind that was missed, whatever its name or place in the list', () => {
    const offers = [
      quarryRoad,
      holding('a', 'dog-loose'),
      holding('b', 'bystander-in-zone'),
      holding('c', 'child-in-zone'),
    ];
    for (const order of [offers, [...offers].reverse()]) {
      expect(nextDrill(missing('child-in-zone'), quarryRoad, order)?.scenario).toBe('c');
      expect(nextDrill(missing('dog-loose'), quarryRoad, order)?.scenario).toBe('a');
    }
    const next = nextDrill(missing('child-in-zone'), quarryRoad, [quarryRoad, holding('b', 'bystander-in-zone')]);
    expect(next?.scenario).toBe('b');
    expect(next?.why).toBe(
      'Of what went by here (one cause missed), all can be practised there: something that moves or falls, a conductor that can come down and current through the body.',
    );
  });

  it('is the same one only where there is no other', () => {
    expect(nextDrill(nothingDone, quarryRoad, [quarryRoad])?.scenario).toBe(quarryRoad.id);
    expect(nextDrill(nothingDone, quarryRoad, [])).toBeNull();
    expect(nextDrill(nothingDone, quarryRoad, shipped)?.scenario).not.toBe(quarryRoad.id);
  });

  it('brings what lay elsewhere once nothing was missed', () => {
    const offers = [quarryRoad, { ...quarryRoad, id: 'again' }, holding('new', 'child-in-zone')];
    const careful = score(committed('careful'));
    expect(nextDrill(careful, quarryRoad, offers)).toMatchObject({ scenario: 'new' });
  });

  it('holds, for each kind shipped in two scenarios or more, that kind again', () => {
    const kinds = new Map<string, Scenario[]>();
    for (const each of shipped) for (const { kind } of each.faults) kinds.set(kind, [...(kinds.get(kind) ?? []), each]);
    const twice = [...kinds].filter(([, all]) => new Set(all.map(({ id }) => id)).size > 1);
    expect(twice.length).toBeGreaterThan(3);
    for (const [kind, [first]] of twice) {
      if (first === undefined) throw new Error(kind);
      const next = nextDrill(missing(kind), first, shipped);
      expect(scenarioOf(next?.scenario ?? '').faults.map((fault) => fault.kind)).toContain(kind);
    }
  });
});

describe('a route', () => {
  it('is not shown when it exposes somebody or cannot be played', () => {
    const acts = committed('hasty').steps.map(({ entry }) => entry.act);
    expect(safeSteps(start(), acts)).toBeNull();
    expect(safeSteps(start(), [{ act: 'go', to: 'nowhere' }])).toBeNull();
  });

  it('that is safe is told in few rows, in order of time', () => {
    const acts = committed('careful').steps.map(({ entry }) => entry.act);
    const steps = safeSteps(start(), acts);
    const rows = routeRows(steps ?? []);
    expect(rows.length).toBeGreaterThan(20);
    expect(rows.length).toBeLessThan(acts.length);
    expect(rows.some(({ words }) => /^looked at \d+ things$/.test(words))).toBe(true);
    const minutes = rows.map(({ minute }) => minute);
    expect(minutes).toEqual([...minutes].sort((a, b) => a - b));
  });
});
