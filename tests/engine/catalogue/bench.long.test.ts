/**
 * Each fault of equipment on its bench: it bites by a mechanism that its entry names, does not without it, and a control that
 * its entry names keeps it off. Computed from the World; there is no answer key.
 */
import { describe, expect, it } from 'vitest';
import { faultKind } from '../../../src/engine/catalogue/faults.ts';
import { met } from '../../../src/engine/hazards/exposuresOf.ts';
import { hazardsIn } from '../../../src/engine/hazards/hazardsIn.ts';
import { probesOf, unprotected } from '../../../src/engine/hazards/probes.ts';
import type { Reach } from '../../../src/engine/hazards/types.ts';
import { withoutFault } from '../../../src/engine/world/edit.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { benchWith, type Case, cases } from './bench.ts';
import { controls } from './controlled.ts';

/** What is met is less by a fifth, as causes are reckoned (hazards/causes.ts), here with devices stepped. */
const LESS = 0.8;

const reachesOf = (world: World): readonly Reach[] => {
  const { touching, being, switching } = probesOf(unprotected(world));
  return [...touching, ...being, ...switching];
};

type Found = { readonly hazard: string; readonly reach: Reach };

const numbers = (quantities: readonly { readonly name: string; readonly value: number }[]): readonly number[] =>
  quantities.filter(({ name }) => /voltage|current|energy|duration|bending asked/.test(name)).map(({ value }) => value);

/** Reaches that meet something by one of the mechanisms, which is gone or less without the fault. */
function bites(world: World, mechanisms: readonly string[]): readonly Found[] {
  const without = withoutFault(world, 'it');
  const caused = new Set(
    hazardsIn(world)
      .filter(({ causes }) => causes.includes('it'))
      .map(({ id }) => id),
  );
  return reachesOf(world).flatMap((reach) => {
    const now = met(reach, world, world).filter(({ mechanism }) => mechanisms.includes(mechanism));
    if (now.length === 0) return [];
    const then = new Map(met(reach, without, without).map((meeting) => [meeting.hazard, meeting]));
    return now.flatMap(({ hazard, measure, quantities }): readonly Found[] => {
      const left = then.get(hazard);
      const less = left === undefined || left.measure < LESS * measure;
      const shorter =
        left !== undefined && numbers(left.quantities).some((value, i) => value < LESS * (numbers(quantities)[i] ?? 0));
      return caused.has(hazard) || less || shorter ? [{ hazard, reach }] : [];
    });
  });
}

/** Whether a control keeps a hazard off a reach. */
const keepsOff = (world: World, control: string, { hazard, reach }: Found): boolean => {
  const taken = controls[control]?.(world, reach);
  return taken !== undefined && !met(taken.reach, taken.world, taken.world).some((each) => each.hazard === hazard);
};

const staysAway = ['keep-clear', 'hand-over'];

describe.each(cases.map((each) => [each.kind, each] as const))('%s', (kind, bench: Case) => {
  const world = benchWith(bench);
  const { mechanisms, controls: named } = faultKind(kind);

  it('bites by a mechanism that its entry names, and not without it; a control that its entry names keeps it off', () => {
    const found = bites(world, mechanisms);
    expect(found.length).toBeGreaterThan(0);
    const working = named.filter((control) => found.some((each) => keepsOff(world, control, each)));
    expect(working).not.toEqual([]);
    // Metal is made dead, bridged or covered; nobody needs to leave the work for it.
    if (found.every(({ hazard }) => /^(contact|approach):/.test(hazard)))
      expect(working.filter((control) => !staysAway.includes(control))).not.toEqual([]);
  });
});
