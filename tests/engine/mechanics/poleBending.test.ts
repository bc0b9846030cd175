/** What bends a pole: guy held and lost, decay, wind, climber, against moments that can be worked out. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conductorNamed } from '../../../src/engine/catalogue/conductorNames.ts';
import { distance } from '../../../src/engine/math/vec3.ts';
import { poleBending, pullOf, pullsAt, strengthLeft } from '../../../src/engine/mechanics/poleBending.ts';
import { poleWindMoment, windPressure } from '../../../src/engine/standards/poleLoad.ts';
import { poleDimensions } from '../../../src/engine/standards/poles.ts';
import { gravity, tensionForSag, weightPerMetre } from '../../../src/engine/standards/sag.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import { partForm } from '../../../src/engine/world/partForm.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { model, only } from '../circuit/models/scenes.ts';
import { laid } from '../circuit/scene.ts';

const sound = only(model('wye-bank'));
const lost = only(model('wye-bank'), 'guy');
const tension = (word: string, span: number, sag: number): number =>
  tensionForSag(weightPerMetre(conductorNamed(word).kilogramsPerMetre), span, sag);
const twoFeet = 0.6096;

describe('a dead end of three phases and neutral', () => {
  const pulls = pullsAt(sound, 'p3');

  test('is pulled by each conductor with w S2/8D toward its span', () => {
    expect(pulls.map(({ part }) => part).sort()).toEqual(['s2.neutral', 's2.phase-a', 's2.phase-b', 's2.phase-c']);
    for (const { part, newtons, along } of pulls) {
      expect(newtons).toBeCloseTo(tension(part.endsWith('neutral') ? 'Sparrow' : 'Raven', 50, twoFeet), 6);
      expect(along[0]).toBeCloseTo(-1, 9);
    }
  });

  test('leaves nothing to the pole while its guy holds, which carries the moment over its height and slope', () => {
    const { unbalanced, guyTension } = poleBending(sound, 'p3');
    expect(unbalanced).toBeCloseTo(0, 6);
    const guy = partById(sound, 'p3.guy');
    const moment = pulls.reduce((sum, { newtons, height }) => sum + newtons * height, 0);
    const run = distance([guy.at[0], guy.at[1], 0], [guy.end?.[0] ?? 0, guy.end?.[1] ?? 0, 0]);
    const slope = distance(guy.at, guy.end ?? guy.at) / run;
    expect(guyTension).toBeCloseTo((moment / guy.at[2]) * slope, 6);
  });

  test('bends the pole with all of it when the guy is lost', () => {
    const moment = pulls.reduce((sum, { newtons, height }) => sum + newtons * height, 0);
    expect(poleBending(lost, 'p3')).toMatchObject({ unbalanced: expect.closeTo(moment, 6), guyTension: 0 });
  });

  test('is the less held the more of its wood is gone: what the sound pole carries, a decayed one may not', () => {
    const decayed = (strength: number): World =>
      withPart(lost, 'p3.pole', { values: { ...partById(lost, 'p3.pole').values, strength } });
    const { demand, capacity, holds } = poleBending(lost, 'p3');
    expect(holds).toBe(capacity >= demand);
    const edge = demand / capacity;
    expect(poleBending(decayed(edge * 0.99), 'p3').holds).toBe(false);
    expect(poleBending(decayed(edge * 0.99), 'p3').capacity).toBeCloseTo(capacity * edge * 0.99, 3);
  });
});

test('spans that pull alike from both sides leave to a tangent pole what its tap pulls across the line', () => {
  const { unbalanced } = poleBending(sound, 'p2');
  const across = pullsAt(sound, 'p2')
    .filter(({ part }) => part.startsWith('s4'))
    .reduce((sum, { newtons, height }) => sum + newtons * height, 0);
  expect(across).toBeGreaterThan(1000);
  expect(unbalanced).toBeCloseTo(across, 6);
});

test('a line that leaves the scene on pins runs on outside it, its neutral too, and pulls at nothing', () => {
  expect(pullsAt(sound, 'p1')).toEqual([]);
  expect(pullsAt(sound, 'p2').some(({ part }) => part === 's3.phase')).toBe(false);
});

test('a conductor that has parted pulls at neither end, and its fellow of the next span is left to the pole', () => {
  const broken = only(model('delta'), 'break');
  const whole = only(model('delta'));
  expect(pullsAt(broken, 'p3').some(({ part }) => part === 's2.phase-c')).toBe(false);
  const next = pullsAt(broken, 'p2').find(({ part }) => part === 's1.phase-c');
  expect(poleBending(broken, 'p2').unbalanced - poleBending(whole, 'p2').unbalanced).toBeGreaterThan(
    0.5 * (next?.newtons ?? Number.NaN) * (next?.height ?? 0),
  );
});

test('a guy goes down away from the span that ends at its pole, whichever way that comes', () => {
  const guy = partById(sound, 'p4.guy');
  expect(guy.end?.[0]).toBeCloseTo(guy.at[0], 9);
  expect(guy.end?.[1]).toBeGreaterThan(guy.at[1] + 4);
  expect(poleBending(sound, 'p4').unbalanced).toBeCloseTo(0, 6);
});

test('wind bends it by pressure on pole and half spans', () => {
  const pole = poleDimensions(45 * 0.3048, 4);
  if (!pole) throw new Error('no such pole');
  const pressure = windPressure(20);
  const wires = pullsAt(sound, 'p3').reduce((sum, { diameter, height }) => sum + pressure * diameter * 25 * height, 0);
  const { wind } = poleBending(sound, 'p3', { wind: 20 });
  expect(Math.abs(wind / (poleWindMoment(pole, pressure) + wires) - 1)).toBeLessThan(0.02);
  expect(poleBending(sound, 'p3', { wind: 40 }).wind / wind).toBeCloseTo(4, 9);
});

test('a wind across a span draws it tighter, by the change of state of its length, and none does nothing', () => {
  const swan = conductorNamed('Swan');
  const rest = pullOf(swan, 50, 0.6, 0);
  expect(rest).toBeCloseTo(tension('Swan', 50, 0.6), 9);
  const windy = pullOf(swan, 50, 0.6, 25);
  const w = weightPerMetre(swan.kilogramsPerMetre);
  const across = Math.hypot(w, windPressure(25) * swan.diameter);
  // Without stretch the length stays and the pull follows the load; with it, it stays below.
  expect(windy).toBeGreaterThan(rest);
  expect(windy).toBeLessThan((rest * across) / w);
});

test('more wind never asks less of a pole', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.double({ min: 0, max: 50, noNaN: true }), (a, b) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      for (const world of [sound, lost]) {
        expect(poleBending(world, 'p3', { wind: more }).demand).toBeGreaterThanOrEqual(
          poleBending(world, 'p3', { wind: less }).demand - 1e-6,
        );
      }
    }),
    { numRuns: 30 },
  );
});

test('a climber adds twice 120 kg at 0.6 m', () => {
  const { climber, demand } = poleBending(sound, 'p1', { climber: true });
  expect(climber).toBeCloseTo(2 * 120 * gravity * 0.6, 9);
  expect(demand).toBeCloseTo(climber, 9);
});

test('a sound 40 ft class 4 carries about its class load two feet from the top (ANSI O5.1: 2400 lb, from memory)', () => {
  const size = poleDimensions(40 * 0.3048, 4);
  if (!size) throw new Error('no such pole');
  const arm = size.length - size.setting - 2 * 0.3048;
  const { capacity } = poleBending(model('delta'), 'p1');
  expect(capacity / (size.classLoad * arm)).toBeGreaterThan(0.95);
  expect(capacity / (size.classLoad * arm)).toBeLessThan(1.1);
});

test('a guy that holds never asks more of the pole than one that is lost, whatever pulls', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 3, noNaN: true }),
      fc.double({ min: 0, max: 40, noNaN: true }),
      (sagM, wind) => {
        const pulled = (world: World): World =>
          ['a', 'b', 'c'].reduce((w, letter) => {
            const id = `s2.phase-${letter}`;
            return withPart(w, id, { values: { ...partById(w, id).values, sagM } });
          }, world);
        const held = poleBending(pulled(sound), 'p3', { wind, climber: true });
        const bare = poleBending(pulled(lost), 'p3', { wind, climber: true });
        expect(held.demand).toBeLessThanOrEqual(bare.demand);
        expect(held.capacity).toBe(bare.capacity);
      },
    ),
    { numRuns: 40 },
  );
});

describe('the two-thirds rule', () => {
  test('rejects a pole with shell rot or decay at the ground line whatever it carries', () => {
    expect(poleBending(only(model('wye-bank'), 'rot'), 'p1')).toMatchObject({
      left: 0.6,
      rejected: true,
      holds: false,
    });
    expect(poleBending(only(model('delta'), 'decay'), 'p2')).toMatchObject({
      left: 0.45,
      rejected: true,
      holds: false,
    });
    expect(poleBending(sound, 'p1')).toMatchObject({ left: 1, rejected: false });
  });

  test("takes the worse of the pole's own figure and its faults", () => {
    const part = partById(sound, 'p1.pole');
    const at = (strength: number, kind: string): number =>
      strengthLeft({ ...part, values: { ...part.values, strength }, faults: [laid(kind)] });
    expect([at(0.8, 'pole-shell-rot'), at(0.5, 'pole-shell-rot'), at(0.7, 'water-stain')]).toEqual([0.6, 0.5, 0.7]);
  });
});

test('an anchor that has pulled loses the guy as a broken strand does', () => {
  const guy = partById(sound, 'p3.guy');
  const anchor = {
    ...partForm({ id: 'p3.anchor', kind: 'anchor', owner: { pole: 'p3' }, where: 'pole', at: guy.end ?? [0, 0, 0] }),
    faults: [laid('anchor-pulled')],
  };
  const pulled: World = { ...sound, parts: [...sound.parts, anchor] };
  expect(poleBending(pulled, 'p3')).toMatchObject({
    unbalanced: expect.closeTo(poleBending(lost, 'p3').unbalanced, 6),
    guyTension: 0,
  });
});
