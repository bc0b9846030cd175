/**
 * What is promised of the library, each as a share of its limit: every shipped scenario proved from nothing within five seconds
 * of one core, and variants drawn, thrown away, told anew and proved at the rate of a thousand in five minutes of two cores.
 * Processor time of this process, its collector's threads included. One after the other in one process, as `prove` does it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { bench, describe, expect } from 'vitest';
import { prove } from '../../src/engine/proof/prove.ts';
import { parse } from '../../src/engine/scenario/parse.ts';
import { variantAt } from '../../src/engine/variants/generate.ts';
import { build } from '../../src/engine/world/build.ts';

/** Seconds of one core for a proof, and for a variant: 300 s of two cores for a thousand. */
const PROOF = 5;
const VARIANT = (2 * 300) / 1000;

const SEED = 7;

const folder = new URL('../../scenarios/', import.meta.url);
const files = readdirSync(fileURLToPath(folder))
  .filter((name) => name.endsWith('.yaml'))
  .sort();
const scenarios = files.map((name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const parsed = parse(text, name);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return { ...parsed, name, text };
});

/** Seconds of the processor that something takes. */
const spentOn = (what: () => void): number => {
  const { user, system } = process.cpuUsage();
  what();
  const now = process.cpuUsage();
  return (now.user + now.system - user - system) / 1e6;
};

const share = (seconds: number, limit: number): string =>
  `${seconds.toFixed(2)} s of the processor, ${((100 * seconds) / limit).toFixed(0)} % of the limit`;

const memory = (): string => `${Math.round(process.memoryUsage().rss / 1e6)} MB in all`;

/** Done once, whatever the runner asks for: a second time everything is known already, and says less than the limit means. */
const once = (name: string, what: () => void): void => {
  let isDone = false;
  bench(
    name,
    () => {
      if (isDone) return;
      isDone = true;
      what();
    },
    { time: 0, warmupTime: 0, warmupIterations: 0, iterations: 1 },
  );
};

describe('the library proved', () => {
  for (const { name, scenario, hash } of scenarios) {
    once(name, () => {
      let states = 0;
      let transitions = 0;
      const seconds = spentOn(() => ({ states, transitions } = prove(build(scenario, hash, 1), { seed: 1 })));
      expect(states).toBeGreaterThan(0);
      console.log(`${name}: ${share(seconds, PROOF)}; ${states} scenes, ${transitions} acts; ${memory()}`);
    });
  }
});

describe('variants of the library', () => {
  // Each scenario of the library is drawn from twice.
  once('drawn and proved', () => {
    const bases = scenarios.map(({ scenario, text }) => ({ id: scenario.id, text }));
    const count = 2 * bases.length;
    let kept = 0;
    let draws = 0;
    const seconds = spentOn(() => {
      for (let number = 1; number <= count; number++) {
        const made = variantAt({ seed: SEED, bases }, number);
        draws += made.draws;
        if (made.variant !== null) kept += 1;
      }
    });
    expect(kept).toBeGreaterThan(0);
    console.log(`${kept} variants of ${draws} draws, each: ${share(seconds / kept, VARIANT)}; ${memory()}`);
  });
});
