/**
 * Conductors between two poles that act on each other: several phases, or a conductor beside others, by
 * catalogue/coupledLineValues.ts. The neutral of the first span is the neutral of all; a delta has none. A phase alone with
 * its neutral is taken without their mutual field.
 */
import { coupledLineValues } from '../catalogue/coupledLineValues.ts';
import { lettersOf, type Phase, phaseNet } from '../catalogue/phaseNets.ts';
import { length as size, type Vec3 } from '../math/vec3.ts';
import type { Scenario, ScenarioPole, ScenarioSpan } from '../scenario/types.ts';
import { besideAt, heldAt, isArm } from './armParts.ts';
import { partForm } from './partForm.ts';
import { heightOf, neutralBelow, serviceBelow } from './poleParts.ts';
import { phaseHeight, poleOf, spanParts } from './spanParts.ts';
import type { Part } from './types.ts';

/** One conductor from pole to pole. */
interface Wire {
  readonly id: string;
  readonly kind: 'coupled-span' | 'coupled-neutral';
  readonly conductor: string;
  readonly sagM: number;
  readonly at: Vec3;
  readonly end: Vec3;
  readonly nets: readonly [string, string];
}

const phaseAt = (pole: ScenarioPole, net: string, letter: Phase | null, span: ScenarioSpan): Vec3 => {
  if (span.beside !== undefined) return besideAt(pole, span.beside);
  if (letter !== null && isArm(pole)) return heldAt(pole, letter);
  // A tap that leaves an arm pole hangs from the insulator below the arm.
  return [pole.x, pole.y, isArm(pole) ? heightOf(pole) - 0.9 : phaseHeight(pole, net)];
};

const pairOf = (scenario: Scenario, { from, to }: ScenarioSpan): string =>
  [poleOf(scenario, from).id, poleOf(scenario, to).id].sort().join(' ');

const neutralAt = (pole: ScenarioPole): Vec3 => [pole.x, pole.y + 0.16, heightOf(pole) - neutralBelow];

const wiresOf = (scenario: Scenario, spans: readonly ScenarioSpan[]): readonly Wire[] => {
  const [first] = spans;
  if (first === undefined) return [];
  const [from, to] = [poleOf(scenario, first.from), poleOf(scenario, first.to)];
  const phases = spans.flatMap((span) => {
    const isTurned = poleOf(scenario, span.from).id !== from.id;
    const ends = isTurned ? ([span.to, span.from] as const) : ([span.from, span.to] as const);
    return lettersOf(span.phases).map(
      (letter): Wire => ({
        id: letter === null ? `${span.id}.phase` : `${span.id}.phase-${letter}`,
        kind: 'coupled-span',
        conductor: span.conductor,
        sagM: span.sagM,
        at: phaseAt(from, ends[0], letter, span),
        end: phaseAt(to, ends[1], letter, span),
        nets: [phaseNet(ends[0], letter), phaseNet(ends[1], letter)],
      }),
    );
  });
  if (scenario.supply.delta) return phases;
  const neutral: Wire = {
    id: `${first.id}.neutral`,
    kind: 'coupled-neutral',
    conductor: first.neutral,
    sagM: first.sagM,
    at: neutralAt(from),
    end: neutralAt(to),
    nets: [`${from.id}.neutral`, `${to.id}.neutral`],
  };
  return [...phases, neutral];
};

/** Offset from the line's middle and mean height. */
const hung = ({ at, end, sagM, conductor }: Wire, middle: number) => ({
  conductor,
  offset: (at[1] + end[1]) / 2 - middle,
  height: (at[2] + end[2]) / 2 - (2 / 3) * sagM,
});

const coupledParts = (scenario: Scenario, spans: readonly ScenarioSpan[], wires: readonly Wire[]): readonly Part[] => {
  const [first] = spans;
  if (first === undefined) return [];
  const [from, to] = [poleOf(scenario, first.from), poleOf(scenario, first.to)];
  const where = `span ${from.number} to ${to.number}`;
  const lengthM = size([to.x - from.x, to.y - from.y, 0]);
  const values = coupledLineValues(
    wires.map((wire) => hung(wire, (from.y + to.y) / 2)),
    scenario.site.resistivity,
  );
  const conductors = wires.map((wire, i) => {
    const part = partForm({
      id: wire.id,
      kind: wire.kind,
      owner: null,
      where,
      at: wire.at,
      end: wire.end,
      nets: { a: wire.nets[0], b: wire.nets[1] },
      values: { lengthM, sagM: wire.sagM, ...values.wires[i] },
      words: { conductor: wire.conductor },
    });
    const letter = /-([abc])$/.exec(wire.id)?.[1];
    return letter === undefined ? part : { ...part, name: part.name.replace(',', `, phase ${letter},`) };
  });
  const nets = wires.flatMap(({ id, nets: [a, b] }, i) => [
    [`a${i + 1}`, a] as const,
    [`m${i + 1}`, `${id}.m`] as const,
    [`b${i + 1}`, b] as const,
  ]);
  const coupling = partForm({
    id: `${first.id}.coupling`,
    kind: `line-coupling-${wires.length}`,
    owner: null,
    where,
    at: [(from.x + to.x) / 2, (from.y + to.y) / 2, 0],
    nets: Object.fromEntries(nets),
    values: { lengthM, ...values.coupling },
  });
  return [...conductors, coupling];
};

/** All conductors of a scenario: spans with one phase by themselves, others coupled. */
export const lineParts = (scenario: Scenario): readonly Part[] => {
  const pairs = [...new Set(scenario.spans.map((span) => pairOf(scenario, span)))];
  return pairs.flatMap((pair) => {
    const spans = scenario.spans.filter((span) => pairOf(scenario, span) === pair);
    const [only] = spans;
    if (spans.length === 1 && only !== undefined && only.phases === undefined && only.beside === undefined) {
      const parts = spanParts(scenario, only);
      return scenario.supply.delta ? parts.filter(({ kind }) => kind !== 'neutral-span') : parts;
    }
    return coupledParts(scenario, spans, wiresOf(scenario, spans));
  });
};

/** Secondary conductors from pole to pole. */
export const secondaryParts = (scenario: Scenario): readonly Part[] =>
  (scenario.secondaries ?? []).map(({ id, from, to, sagM }) => {
    const [a, b] = [poleOf(scenario, `${from}.`), poleOf(scenario, `${to}.`)];
    return partForm({
      id: `${id}.secondary`,
      kind: 'secondary-span',
      owner: null,
      where: `span ${a.number} to ${b.number}`,
      at: [a.x, a.y - 0.16, heightOf(a) - serviceBelow],
      end: [b.x, b.y - 0.16, heightOf(b) - serviceBelow],
      nets: { a1: `${from}.x1`, a2: `${from}.x2`, a3: `${from}.x3`, b1: `${to}.x1`, b2: `${to}.x2`, b3: `${to}.x3` },
      values: { lengthM: size([b.x - a.x, b.y - a.y, 0]), sagM },
    });
  });

/** Communication cables hang this far below the roof: a metre and more under the services. */
const cableBelow = 3.6;

/** Communication cables from pole to pole, their strand bonded to the pole ground at each end. */
export const cableParts = (scenario: Scenario): readonly Part[] =>
  (scenario.communications ?? []).map(({ id, from, to, sagM }) => {
    const [a, b] = [poleOf(scenario, `${from}.`), poleOf(scenario, `${to}.`)];
    return partForm({
      id: `${id}.cable`,
      kind: 'telecom-cable',
      owner: null,
      where: `span ${a.number} to ${b.number}`,
      at: [a.x, a.y - 0.16, heightOf(a) - cableBelow],
      end: [b.x, b.y - 0.16, heightOf(b) - cableBelow],
      nets: { a: `${from}.strand`, b: `${to}.strand`, 'ground-a': `${from}.stub`, 'ground-b': `${to}.stub` },
      values: { lengthM: size([b.x - a.x, b.y - a.y, 0]), sagM },
    });
  });
