/** Sounding the pole with a hammer all round, prodding it at the ground line. */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { findPart } from '../world/edit.ts';
import type { Knowledge, Part, World } from '../world/types.ts';
import { type ActKind, event, type Outcome, outcome } from './kind.ts';
import { besidePart, standHere, standing } from './presence.ts';

type Way = 'sound' | 'prod';

const fine: Readonly<Record<Way, string>> = {
  sound: 'A clear ring all round, the hammer springs back.',
  prod: 'The blade stops in firm wood all round.',
};

const poleOf = (world: World, pole: string): Part | null => findPart(world, `${pole}.pole`);

const poles = (world: World): readonly Part[] => world.parts.filter(({ id, pole }) => id === `${pole}.pole`);

const lacking: Readonly<Record<Way, string>> = {
  sound: 'there is no hammer on the truck',
  prod: 'there is no prod on the truck',
};

function refuse(world: World, way: Way, pole: string): string | null {
  const part = poleOf(world, pole);
  if (!part) return 'there is no such pole';
  if (!world.tools.some((tool) => toolKind(tool.kind).testsPole === way)) return lacking[way];
  return besidePart(world, part) ?? (standHere(world)?.aloft ? 'that is done from the ground' : null);
}

function apply(world: World, way: Way, pole: string): Outcome {
  const { minute } = world.clock;
  const finds = world.parts
    .filter((part) => part.pole === pole)
    .flatMap((part) =>
      part.faults.flatMap((fault) =>
        faultKind(fault.kind)
          .signs.filter((sign) => sign.sense === 'test' && sign.by === way)
          .map((sign) => ({ on: part.id, test: way, result: sign.words, sign: `${fault.id}/${sign.id}`, minute })),
      ),
    );
  const tests: Knowledge['tests'] =
    finds.length > 0 ? finds : [{ on: `${pole}.pole`, test: way, result: fine[way], sign: null, minute }];
  return outcome(
    { ...world, knowledge: { ...world.knowledge, tests: [...world.knowledge.tests, ...tests] } },
    tests.map((test) => event('heard', test.on, test.result)),
    [{ ...standing(world, 120), disturbs: `${pole}.pole` }],
  );
}

export const sound: ActKind<'sound'> = {
  minutes: () => 2,
  refuse: (world, act) => refuse(world, 'sound', act.pole),
  apply: (world, act) => apply(world, 'sound', act.pole),
  offers: (world) =>
    poles(world).map((part) => ({
      act: { act: 'sound', pole: part.pole ?? '' },
      label: `Sound the ${part.name} with the hammer`,
      by: 'hands',
      about: part.id,
    })),
};

export const prod: ActKind<'prod'> = {
  minutes: () => 2,
  refuse: (world, act) => refuse(world, 'prod', act.pole),
  apply: (world, act) => apply(world, 'prod', act.pole),
  offers: (world) =>
    poles(world).map((part) => ({
      act: { act: 'prod', pole: part.pole ?? '' },
      label: `Prod the ${part.name} at the ground line`,
      by: 'hands',
      about: part.id,
    })),
};
