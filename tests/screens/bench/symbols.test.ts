/** Which graphical symbol each kind of equipment has in the one-line; after which standard each is drawn stands in symbolSources.ts. */
import { expect, test } from 'vitest';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { partForm } from '../../../src/engine/world/partForm.ts';
import { branchesIn } from '../../../src/screens/bench/partBranches.ts';
import { type SymbolName, symbolOf, symbols } from '../../../src/screens/bench/symbolOf.ts';
import { symbolSources } from '../../../src/screens/bench/symbolSources.ts';

const symbolsOf = (kind: string): ReadonlyMap<string, SymbolName> => {
  const part = partForm({ id: 'x', kind, owner: { pole: 'p1' }, where: 'here', at: [0, 0, 0] });
  return new Map(
    branchesIn(part).map(({ branch, state }) => [branch.name, symbolOf(part, branch, state !== null)] as const),
  );
};

test.each([
  ['cutout', 'link', 'fuse-switch'],
  ['recloser', 'contacts', 'recloser'],
  ['upstream-recloser', 'contacts', 'recloser'],
  ['main-breaker', 'pole-1', 'breaker'],
  ['generator', 'breaker-1', 'breaker'],
  ['disconnect', 'blade', 'disconnector'],
  ['hot-line-clamp', 'clamp', 'disconnector'],
  ['transformer', 'core', 'primary'],
  ['bank-unit-120', 'core', 'primary'],
  ['bank-unit-240', 'core', 'primary'],
  ['transformer-two-bushing', 'core', 'primary'],
  ['regulator', 'core', 'regulator'],
  ['regulator', 'series', 'regulator'],
  ['capacitor', 'can', 'capacitor'],
  ['capacitor', 'charge', 'capacitor'],
  ['arrester', 'blocks', 'arrester'],
  ['ground-rod', 'electrode', 'electrode'],
  ['house-ground', 'electrode', 'electrode'],
  ['generator', 'half-1', 'set'],
  ['photovoltaic-plant', 'output', 'inverter'],
  ['photovoltaic-plant', 'inverter', 'inverter'],
  ['battery-plant', 'output', 'battery'],
  ['meter', 'jaw-1', 'meter'],
  ['transfer-switch', 'line-1', 'switch'],
  ['transfer-switch', 'set-1', 'switch'],
  ['household-load', 'leg-1', 'load'],
  ['system-source', 'thevenin', 'system'],
  ['system-source-wye', 'thevenin-a', 'system'],
  ['system-source-delta', 'thevenin-a', 'system'],
  ['crossing-line', 'thevenin', 'system'],
] as const)('the branch of %s, %s, is drawn as %s', (kind, branch, symbol) => {
  expect(symbolsOf(kind).get(branch)).toBe(symbol);
});

test('each symbol says after what it is drawn, and each is some kind’s or a fault’s', () => {
  expect(Object.keys(symbolSources).sort()).toEqual([...symbols].sort());
  for (const { after, basis } of Object.values(symbolSources)) {
    expect(after.length).toBeGreaterThan(10);
    if (basis === 'standard, from memory') expect(after).toMatch(/IEC 60617|IEEE 315|the same/);
  }
  const drawn = new Set(componentKinds.flatMap(({ id }) => [...symbolsOf(id).values()]));
  const others = ['line', 'ladder', 'secondary', 'leak', 'gap', 'impedance'];
  expect(symbols.filter((symbol) => !drawn.has(symbol) && !others.includes(symbol))).toEqual([]);
});

test('a G in a circle is an engine set and nothing else', () => {
  const sets = componentKinds.filter(({ id }) => [...symbolsOf(id).values()].includes('set')).map(({ id }) => id);
  expect(sets).toEqual(['generator', 'governed-generator']);
});
