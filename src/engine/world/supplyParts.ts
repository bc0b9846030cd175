/**
 * The source with its phases, wye or delta, and a recloser of the scene between it and the line. Z1 from the fault current of
 * three phases, the shared return so that one phase to ground gives its own; both at the X/R that is stated.
 */
import { sequenceLoop } from '../catalogue/components/supply.ts';
import { lettersOf, phaseNet } from '../catalogue/phaseNets.ts';
import type { Scenario } from '../scenario/types.ts';
import { partForm } from './partForm.ts';
import { heightOf } from './poleParts.ts';
import { poleOf, sourcePart } from './spanParts.ts';
import type { Part } from './types.ts';

/** Net that the source feeds: the line's, or the recloser's. */
const feedOf = ({ supply }: Scenario): string => (supply.recloser ? `${supply.at}-feed` : supply.at);

const sourceOf = (scenario: Scenario): Part => {
  const { supply } = scenario;
  const feed = feedOf(scenario);
  if (supply.phases === undefined) {
    const part = sourcePart(scenario);
    return supply.recloser ? { ...part, nets: { ...part.nets, line: feed } } : part;
  }
  const pole = poleOf(scenario, supply.at);
  const { phaseVolts, faultAmps, threePhaseAmps = faultAmps, xOverR } = supply;
  const { z1, back } = sequenceLoop(phaseVolts, faultAmps, threePhaseAmps, xOverR);
  const nets = lettersOf(supply.phases).map((letter) => [letter ?? 'a', phaseNet(feed, letter)]);
  return partForm({
    id: `${pole.id}.source`,
    kind: supply.delta ? 'system-source-delta' : 'system-source-wye',
    owner: { pole: pole.id },
    where: supply.circuit,
    at: [pole.x, pole.y, heightOf(pole) + 0.3],
    nets: Object.fromEntries(nets),
    values: {
      volts: supply.delta ? supply.lineVolts / Math.sqrt(3) : supply.phaseVolts,
      ohms: z1.re,
      reactance: z1.im,
      ...(supply.delta ? {} : { returnOhms: back.re, returnReactance: back.im }),
    },
  });
};

const reclosersOf = (scenario: Scenario): readonly Part[] => {
  const { supply } = scenario;
  const { recloser } = supply;
  if (recloser === undefined) return [];
  const pole = poleOf(scenario, supply.at);
  return lettersOf(supply.phases).map((letter) =>
    partForm({
      id: `${pole.id}.recloser${letter === null ? '' : `-${letter}`}`,
      kind: 'upstream-recloser',
      owner: { pole: pole.id },
      where: supply.circuit,
      at: [pole.x, pole.y, heightOf(pole) + 0.3],
      nets: { source: phaseNet(feedOf(scenario), letter), load: phaseNet(supply.at, letter) },
      state: { reclosing: recloser.blocked ? 'blocked' : 'automatic' },
      values: { pickUpA: recloser.pickUpA, fast: recloser.fast },
    }),
  );
};

/** Source and upstream recloser. */
export const supplyParts = (scenario: Scenario): readonly Part[] => [sourceOf(scenario), ...reclosersOf(scenario)];
