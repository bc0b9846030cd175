/**
 * Every shipped scenario is proved: its par lies in scenarios/par with the route that shows it, and the route is played
 * here. What is missing or does not hold any more is proved in short, which takes a while; UPDATE=1 proves it whole and
 * writes it. The whole proofs run in the long tests.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Log } from '../../../src/engine/acts/types.ts';
import { faultIn, parFile, parFor, parForm } from '../../../src/engine/proof/parForm.ts';
import { prove } from '../../../src/engine/proof/prove.ts';
import { score } from '../../../src/engine/score/score.ts';
import { root } from '../../../src/setup/run.mjs';
import { sceneOf, shipped } from './scenes.ts';

const fileOf = (name: string): string => join(root, 'scenarios/par', `${name}.json`);
const parIn = (name: string) => parForm.parse(JSON.parse(readFileSync(fileOf(name), 'utf8')));

const isGood = (name: string): boolean => existsSync(fileOf(name)) && faultIn(sceneOf(name), parIn(name)) === null;

describe.each(shipped)('%s', (name) => {
  it('is proved: its par is shown by a route, or where there is none that fits, it is proved here and now', () => {
    if (isGood(name)) return;
    const update = process.env.UPDATE === '1';
    const proof = prove(sceneOf(name), { seed: 1, ...(update ? {} : { most: 2000, tries: 20, runs: 0 }) });
    expect(proof.claims.filter(({ outcome }) => outcome === 'fails').map(({ words }) => words)).toEqual([]);
    const made = parFile(proof);
    if (made === null) throw new Error('no par');
    expect(faultIn(sceneOf(name), made)).toBeNull();
    if (update) writeFileSync(fileOf(name), `${JSON.stringify(made)}\n`);
  }, 240_000);

  it('has a par that is not under its bound', () => {
    const par = parIn(name);
    expect(par.atLeast).toBeLessThanOrEqual(par.minutes);
  });
});

describe('a par', () => {
  const name = 'mill-lane-refuse';
  const par = parIn(name);

  it('does not hold for another scenario or another engine', () => {
    expect(parFor(par, par.scenarioHash)).not.toBeNull();
    expect(parFor(par, 'other')).toBeNull();
    expect(parFor({ ...par, engine: '0.0.0' }, par.scenarioHash)).toBeNull();
    expect(faultIn(sceneOf(name), { ...par, scenarioHash: 'other' })).toMatch(/another scenario/);
  });

  it('is found out when its minutes or its route are not what they were', () => {
    expect(faultIn(sceneOf(name), { ...par, minutes: par.minutes - 1 })).toMatch(/minutes, not/);
    expect(faultIn(sceneOf(name), { ...par, acts: par.acts.slice(0, -1), minutes: par.minutes - 2 })).toMatch(
      /does not end/,
    );
    const bare = par.acts.filter(({ act: kind }) => kind !== 'check-tool' && kind !== 'wear');
    expect(faultIn(sceneOf(name), { ...par, acts: bare })).toMatch(/exposes somebody/);
  });

  it('scores as a pass with full service when it is played as a drill', () => {
    const start = sceneOf(name);
    let world = start;
    let log: Log = newLog(start, 1, parFor(par, start.scenarioHash));
    for (const each of par.acts) {
      world = act(world, each).world;
      log = appendEntry(log, each, world);
    }
    const played = replay(start, log);
    if (!played.ok) throw new Error(played.problem.words);
    const judged = score(played.replay);
    expect(judged.verdict, judged.reasons.join(' ')).toBe('pass');
    expect(judged.parts.find((part) => part.name === 'service')?.value).toBe(1);
  });
});
