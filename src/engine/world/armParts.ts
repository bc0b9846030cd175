/**
 * Three-phase framing: a 2.4 m crossarm 0.45 m below the roof, phases a and c on pins at its ends, phase b on a pole-top pin;
 * at a dead end insulators in their place and a guy; or in suspension strings under the arm's ends, phase b on its
 * pole-top pin as before, for a string beside the pole would hang in the braces. Two phases hang where their letters do. A single conductor beside
 * others brings a pin on each pole. Distances: typical, common practice; every utility has its own construction standard.
 */
import { STRING } from '../catalogue/components/suspended.ts';
import { lettersOf, type Phase, type Phases, phaseNet } from '../catalogue/phaseNets.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { Scenario, ScenarioPole, ScenarioSpan } from '../scenario/types.ts';
import { carrierOf, deadEnd, hanger, tieWords } from './heldBy.ts';
import { type PartSpec, partForm } from './partForm.ts';
import { framingParts, guyOf, guyOut, heightOf } from './poleParts.ts';
import type { Part } from './types.ts';

const ARM_BELOW = 0.45;
const PIN_ABOVE_ARM = 0.06;
/** Groove of a pin insulator above its foot. */
const GROOVE = 0.3;
const ACROSS: Readonly<Record<Phase, number>> = { a: -1.07, b: 0, c: 1.07 };
/** Strings hang from eye bolts through the arm. */
const EYE_BELOW_ARM = 0.07;
/** Brackets of an armless pole: out from its middle, and below the roof. */
const BRACKET: Readonly<Record<Phase, readonly [across: number, below: number]>> = {
  a: [-0.5, 0.6],
  b: [0, 0],
  c: [0.5, 1],
};
const MAKER: Readonly<Record<Phase, string>> = { a: 'pin-a', b: 'pin', c: 'pin-c' };

export const isArm = ({ framing }: ScenarioPole): boolean => framing.startsWith('arm');

const isDeadend = ({ framing }: ScenarioPole): boolean => framing === 'arm-deadend';

const isHung = ({ framing }: ScenarioPole, letter: Phase): boolean => framing === 'arm-suspension' && letter !== 'b';

const isArmless = ({ framing }: ScenarioPole): boolean => framing === 'armless';

/** Foot of the insulator of a phase. */
const footOf = (pole: ScenarioPole, letter: Phase): Vec3 => {
  const h = heightOf(pole);
  if (isArmless(pole)) {
    const [across, below] = BRACKET[letter];
    return [pole.x, pole.y + across, h - below];
  }
  if (isHung(pole, letter)) return [pole.x, pole.y + ACROSS[letter], h - ARM_BELOW - EYE_BELOW_ARM];
  const z = letter === 'b' ? h : h - ARM_BELOW + PIN_ABOVE_ARM;
  const dead = letter === 'b' ? h - 0.15 : h - ARM_BELOW;
  return [pole.x, pole.y + ACROSS[letter], isDeadend(pole) ? dead : z];
};

/** Where the conductor of a phase is held on an arm pole. */
export const heldAt = (pole: ScenarioPole, letter: Phase): Vec3 => {
  const [x, y, z] = footOf(pole, letter);
  if (isHung(pole, letter)) return [x, y, z - STRING];
  return [x, y, isDeadend(pole) ? z : z + GROOVE];
};

/** Where a conductor beside others is held. */
export const besideAt = (pole: ScenarioPole, { across, below }: NonNullable<ScenarioSpan['beside']>): Vec3 => [
  pole.x,
  pole.y + across,
  heightOf(pole) - below,
];

/** The first line of several phases on the pole, by the spans' order, or what the supply brings. */
const lineOn = (scenario: Scenario, pole: ScenarioPole): { readonly net: string; readonly phases: Phases } | null => {
  const { supply } = scenario;
  const lines = [
    ...scenario.spans.flatMap(({ from, to, phases }) => [
      { net: from, phases },
      { net: to, phases },
    ]),
    { net: supply.at, phases: supply.phases },
  ];
  for (const { net, phases } of lines) {
    if (phases !== undefined && net.startsWith(`${pole.id}.`)) return { net: net.slice(pole.id.length + 1), phases };
  }
  return null;
};

type On = (name: string, kind: string, at: Vec3, more?: Partial<PartSpec>) => Part;

const onPole =
  (pole: ScenarioPole): On =>
  (name, kind, at, more = {}) =>
    partForm({ id: `${pole.id}.${name}`, kind, owner: { pole: pole.id }, where: `pole ${pole.number}`, at, ...more });

/** Which phase a part belongs to, in its name. */
const ofPhase = (part: Part, letter: Phase): Part => ({ ...part, name: part.name.replace(',', `, phase ${letter},`) });

const phaseParts = (pole: ScenarioPole, net: string, letter: Phase): readonly Part[] => {
  const on = onPole(pole);
  const foot = footOf(pole, letter);
  const conductor = phaseNet(net, letter);
  if (isDeadend(pole)) {
    const nets = { conductor, yoke: `yoke-${letter}` };
    const { kind, words } = deadEnd(pole);
    return [ofPhase(on(`deadend-${letter}`, kind, foot, { nets, words }), letter)];
  }
  if (isHung(pole, letter)) {
    const nets = { conductor, yoke: `yoke-${letter}` };
    return [
      ofPhase(on(`string-${letter}`, hanger(pole).kind, foot, { nets, words: hanger(pole).words }), letter),
      ofPhase(on(`seat-${letter}`, 'suspension-clamp', heldAt(pole, letter)), letter),
    ];
  }
  const { kind, words } = carrierOf(pole);
  return [
    ofPhase(on(`insulator-${letter}`, kind, foot, { nets: { conductor, pin: MAKER[letter] }, words }), letter),
    ofPhase(on(`tie-${letter}`, 'tie', heldAt(pole, letter), { words: tieWords(pole) }), letter),
  ];
};

const isBare = ({ id }: Part): boolean => !id.endsWith('.insulator') && !id.endsWith('.tie');

/** Pole, arm, insulators, ties, neutral and ground of an arm framing. */
export const armParts = (scenario: Scenario, pole: ScenarioPole): readonly Part[] => {
  const line = lineOn(scenario, pole);
  const on = onPole(pole);
  const h = heightOf(pole);
  const [top, foot] = guyOf(pole, guyOut(scenario, pole));
  const ends =
    pole.framing === 'arm-deadend'
      ? [on('guy', 'guy', top, { end: foot })]
      : pole.framing === 'arm-tap'
        ? [
            on('deadend', deadEnd(pole).kind, [pole.x, pole.y, h - 0.9], {
              azimuth: Math.PI,
              nets: { conductor: 'tap' },
              words: deadEnd(pole).words,
            }),
          ]
        : [];
  return [
    ...framingParts({ ...pole, framing: 'tangent' }).filter(isBare),
    ...(isArmless(pole) ? [] : [on('crossarm', 'crossarm', [pole.x, pole.y, h - ARM_BELOW])]),
    ...ends,
    ...(line === null
      ? []
      : lettersOf(line.phases).flatMap((letter) => (letter === null ? [] : phaseParts(pole, line.net, letter)))),
  ];
};

/** Pin insulators and ties of single conductors that hang beside others, once for each net of a pole. */
export const besideParts = (scenario: Scenario): readonly Part[] => {
  const found = new Map<string, readonly Part[]>();
  for (const { from, to, beside } of scenario.spans) {
    if (beside === undefined) continue;
    for (const net of [from, to]) {
      const pole = scenario.poles.find(({ id }) => net.startsWith(`${id}.`));
      if (pole === undefined || found.has(net)) continue;
      const name = net.slice(pole.id.length + 1);
      const held = besideAt(pole, beside);
      const on = onPole(pole);
      found.set(net, [
        on(`insulator-${name}`, 'pin-insulator', [held[0], held[1], held[2] - GROOVE], {
          nets: { conductor: net, pin: `pin-${name}` },
        }),
        on(`tie-${name}`, 'tie', held),
      ]);
    }
  }
  return [...found.values()].flat();
};
