/** Phase and neutral of each span, and the line from the substation. */
import { lineValues } from '../catalogue/lineValues.ts';
import type { Scenario, ScenarioPole, ScenarioSpan } from '../scenario/types.ts';
import { partForm } from './partForm.ts';
import { heightOf, neutralBelow } from './poleParts.ts';
import type { Part } from './types.ts';

/** The pole of a net. */
export const poleOf = (scenario: Scenario, net: string): ScenarioPole => {
  const pole = scenario.poles.find(({ id }) => net.startsWith(`${id}.`));
  if (pole === undefined) throw new Error(`no pole of net ${net}`);
  return pole;
};

/** On a pin it lies above the roof, dead-ended it leaves a little below. */
export const phaseHeight = (pole: ScenarioPole, net: string): number =>
  pole.framing === 'tangent' || net.endsWith('.main') ? heightOf(pole) + 0.3 : heightOf(pole) - 0.15;

/** Phase and neutral conductor of a span, as seen from its source end. */
export const spanParts = (scenario: Scenario, span: ScenarioSpan): readonly Part[] => {
  const from = poleOf(scenario, span.from);
  const to = poleOf(scenario, span.to);
  const where = `span ${from.number} to ${to.number}`;
  const length = Math.abs(to.x - from.x) + Math.abs(to.y - from.y);
  const phaseZ = [phaseHeight(from, span.from), phaseHeight(to, span.to)] as const;
  const neutralZ = [heightOf(from) - neutralBelow, heightOf(to) - neutralBelow] as const;
  const values = (conductor: string, heights: readonly [number, number]): Record<string, number> => ({
    lengthM: length,
    sagM: span.sagM,
    ...lineValues(conductor, (heights[0] + heights[1]) / 2 - (2 / 3) * span.sagM, scenario.site.resistivity),
  });
  return [
    partForm({
      id: `${span.id}.phase`,
      kind: 'phase-span',
      owner: null,
      where,
      at: [from.x, from.y, phaseZ[0]],
      end: [to.x, to.y, phaseZ[1]],
      nets: { a: span.from, b: span.to },
      values: values(span.conductor, phaseZ),
      words: { conductor: span.conductor },
    }),
    partForm({
      id: `${span.id}.neutral`,
      kind: 'neutral-span',
      owner: null,
      where,
      at: [from.x, from.y + 0.16, neutralZ[0]],
      end: [to.x, to.y + 0.16, neutralZ[1]],
      nets: { a: `${from.id}.neutral`, b: `${to.id}.neutral` },
      values: values(span.neutral, neutralZ),
      words: { conductor: span.neutral },
    }),
  ];
};

/** Thevenin source behind the scene: magnitude of Z from the fault current, its angle from X/R. */
export const sourcePart = ({ supply, poles }: Scenario): Part => {
  const pole = poles.find(({ id }) => supply.at.startsWith(`${id}.`));
  if (pole === undefined) throw new Error(`no pole of net ${supply.at}`);
  const z = supply.phaseVolts / supply.faultAmps;
  const ohms = z / Math.sqrt(1 + supply.xOverR * supply.xOverR);
  return partForm({
    id: `${pole.id}.source`,
    kind: 'system-source',
    owner: { pole: pole.id },
    where: supply.circuit,
    at: [pole.x, pole.y, heightOf(pole) + 0.3],
    nets: { line: supply.at },
    values: { volts: supply.phaseVolts, ohms, reactance: ohms * supply.xOverR },
  });
};
