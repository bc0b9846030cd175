/** Formula tables pinned over grids to six digits, so that a change shows as a diff; UPDATE=1 rewrites golden/*.txt. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { acuity } from '../../../src/engine/standards/acuity.ts';
import { minimumApproach } from '../../../src/engine/standards/approachDistance.ts';
import { equationApproach } from '../../../src/engine/standards/approachEquation.ts';
import { estimateArcEnergy, tabledArcEnergy } from '../../../src/engine/standards/arcEnergy.ts';
import { fibrillationThreshold } from '../../../src/engine/standards/bodyCurrent.ts';
import { bodyImpedance } from '../../../src/engine/standards/bodyImpedance.ts';
import { tripTime } from '../../../src/engine/standards/breaker.ts';
import { conductorById } from '../../../src/engine/standards/conductors.ts';
import { arcResistance, drawnArc } from '../../../src/engine/standards/drawnArc.ts';
import { rodStepFromRod, tolerableStep, tolerableTouch } from '../../../src/engine/standards/electrode.ts';
import { clearTime, linkSizes, meltTime } from '../../../src/engine/standards/fuseLinks.ts';
import {
  decrementFactor,
  groundingCables,
  meltingCurrent,
  withstandCurrent,
} from '../../../src/engine/standards/groundingCable.ts';
import { recloserTrip } from '../../../src/engine/standards/recloser.ts';
import { catenarySag, parabolicSag, weightPerMetre } from '../../../src/engine/standards/sag.ts';
import { tensionAfter } from '../../../src/engine/standards/sagTension.ts';

const folder = fileURLToPath(new URL('golden/', import.meta.url));

/** Six digits, the same in every place. */
const six = (value: number | undefined): string => {
  if (value === undefined) return 'none';
  return Number.isFinite(value) ? String(Number(value.toPrecision(6))) : String(value);
};

type Grid = { readonly header: string; readonly rows: readonly (readonly (string | number | undefined)[])[] };

const textOf = ({ header, rows }: Grid): string =>
  `${[header, ...rows.map((row) => row.map((cell) => (typeof cell === 'string' ? cell : six(cell))).join('\t'))].join('\n')}\n`;

const systems = [4160, 12470, 13800, 24940, 34500, 46000];
const over = <A, B>(first: readonly A[], second: readonly B[]): [A, B][] =>
  first.flatMap((a) => second.map((b): [A, B] => [a, b]));

const grids: Readonly<Record<string, () => Grid>> = {
  arcEnergy: () => ({
    header: 'volts\tamperes\tcycles\ttabled cal/cm2\testimate at 0.38 m\testimate at 0.9 m',
    rows: over(systems, [800, 2500, 5000, 8000, 12000, 20000]).flatMap(([volts, amperes]) =>
      [2, 10, 30, 90].map((cycles) => [
        volts,
        amperes,
        cycles,
        tabledArcEnergy(volts, amperes, cycles / 60)?.calories,
        estimateArcEnergy(volts, amperes, cycles / 60)?.calories,
        estimateArcEnergy(volts, amperes, cycles / 60, 0.9)?.calories,
      ]),
    ),
  }),
  approachDistance: () => ({
    header: 'volts\taltitude m\tto ground m\tphase to phase m\tto ground by equation\tphase to phase by equation',
    rows: over([480, ...systems, 69000, 115000, 138000, 230000, 345000, 500000, 765000], [0, 1000, 2200, 4000]).map(
      ([volts, altitude]) => [
        volts,
        altitude,
        minimumApproach(volts, 'phase-to-ground', altitude).metres,
        minimumApproach(volts, 'phase-to-phase', altitude).metres,
        equationApproach(volts, 'phase-to-ground', altitude),
        equationApproach(volts, 'phase-to-phase', altitude),
      ],
    ),
  }),
  bodyCurrent: () => ({
    header: 'volts\t5 % ohm\t50 % ohm\t95 % ohm\tmedian A',
    rows: [10, 30, 50, 90, 120, 208, 240, 480, 900, 1200, 7200].map((volts) => [
      volts,
      bodyImpedance(volts, 5),
      bodyImpedance(volts, 50),
      bodyImpedance(volts, 95),
      volts / bodyImpedance(volts),
    ]),
  }),
  fibrillation: () => ({
    header: 'seconds\tfibrillation A\ttouch V 50 kg\tstep V 50 kg\tstep V 70 kg',
    rows: [0.001, 0.0083, 0.03, 0.1, 0.25, 0.5, 1, 2, 3, 5, 10].map((seconds) => [
      seconds,
      fibrillationThreshold(seconds),
      tolerableTouch({ soil: 100 }, seconds),
      tolerableStep({ soil: 100 }, seconds),
      tolerableStep({ soil: 100, surface: { resistivity: 3000, depth: 0.1 } }, seconds, 70),
    ]),
  }),
  stepVoltage: () => ({
    header: 'ohm m\tamperes\trod m\tstep V from the rod',
    rows: over([10, 100, 1000], [10, 100]).flatMap(([soil, amperes]) =>
      [1.5, 2.4, 3].map((length) => [soil, amperes, length, rodStepFromRod(soil, amperes, length, 0.016)]),
    ),
  }),
  sag: () => ({
    header: 'conductor\tspan m\tpart of strength\tparabola m\tcatenary m\ttension N at 50 C after 15 C',
    rows: over(['acsr-4', 'acsr-1/0', 'acsr-336.4'], [30, 60, 90, 150]).flatMap(([id, span]) =>
      [0.05, 0.1, 0.2].map((part) => {
        const conductor = conductorById(id);
        if (conductor?.strength === undefined) throw new Error(`no strength of ${id}`);
        const weight = weightPerMetre(conductor.kilogramsPerMetre);
        const tension = part * conductor.strength;
        const area = (Math.PI / 4) * conductor.diameter * conductor.diameter;
        const hot = tensionAfter(
          span,
          { weight, tension, celsius: 15 },
          { weight, celsius: 50 },
          { stiffness: 79e9 * area, expansion: 19.1e-6 },
        );
        return [id, span, part, parabolicSag(weight, span, tension), catenarySag(weight, span, tension), hot];
      }),
    ),
  }),
  acuity: () => ({
    header: 'cd/m2\tcontrast 1\t0.5\t0.2\t0.05',
    rows: [0.001, 0.01, 0.1, 1, 10, 100, 1000, 10000].map((light) => [
      light,
      ...[1, 0.5, 0.2, 0.05].map((contrast) => acuity(light, contrast)),
    ]),
  }),
  fuseMelt: () => ({
    header: 'link\tamperes\tmelts s\tcleared s',
    rows: over(linkSizes, [25, 60, 150, 400, 1000, 3000]).flatMap(([rating, amperes]) =>
      (['K', 'T'] as const).map((speed) => [
        `${rating}${speed}`,
        amperes,
        meltTime({ speed, rating }, amperes),
        clearTime({ speed, rating }, amperes),
      ]),
    ),
  }),
  devices: () => ({
    header: 'times\tbreaker 20 A s\tbreaker 100 A s\trecloser fast s\trecloser slow s',
    rows: [0.9, 1, 1.2, 1.35, 1.7, 2, 2.6, 3, 5, 8, 12, 20].map((times) => [
      times,
      tripTime(20, 20 * times),
      tripTime(100, 100 * times),
      recloserTrip('fast', 100, 100 * times),
      recloserTrip('slow', 100, 100 * times),
    ]),
  }),
  groundingCable: () => ({
    header: 'cable\t0.1 s\t0.25 s\t0.5 s\t1 s\t3 s (melting A)',
    rows: groundingCables.map((cable) => [cable, ...[0.1, 0.25, 0.5, 1, 3].map((time) => meltingCurrent(cable, time))]),
  }),
  offsetFault: () => ({
    header: 'cable\tX/R\tseconds\trms over symmetrical\tmelting A\twithstand A',
    rows: over(groundingCables, [0, 1.8, 5, 10, 20, 40]).flatMap(([cable, xOverR]) =>
      [0.1, 0.25, 0.5, 1].map((time) => [
        cable,
        xOverR,
        time,
        decrementFactor(xOverR, time),
        meltingCurrent(cable, time, xOverR),
        withstandCurrent(cable, time, xOverR),
      ]),
    ),
  }),
  drawnArc: () => ({
    header: 'volts\tamperes of load\tlongest arc m\tohms of 1 m at that current',
    rows: over([2400, 4800, 7200, 14400, 19920], [0.1, 0.3, 1, 3, 10, 30, 100]).map(([volts, load]) => [
      volts,
      load,
      drawnArc(volts, load),
      arcResistance(1, load),
    ]),
  }),
};

describe('the formula table', () => {
  test.each(Object.keys(grids))('%s is the one that was reviewed', (name) => {
    const file = `${folder}${name}.txt`;
    const text = textOf((grids[name] as () => Grid)());
    if (process.env.UPDATE === '1') {
      mkdirSync(folder, { recursive: true });
      writeFileSync(file, text);
    }
    expect(text).toBe(readFileSync(file, 'utf8'));
    expect(text).not.toContain('NaN');
  });
});
