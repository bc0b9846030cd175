/**
 * A route from what a drill's double did (doings.ts): what the double left out is put in where it costs nothing beside the
 * truck, and every deed is named with its place, so that ways follow from it. Whether it holds, `act` says (shorten.ts).
 */
import { act as plainAct } from '../acts/act.ts';
import { standHere } from '../acts/presence.ts';
import type { Act, ActName } from '../acts/types.ts';
import { trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { dressed } from './extremes.ts';
import type { Deed } from './places.ts';

/** Ways, which follow from the places of deeds. */
const ways: readonly ActName[] = ['go', 'aloft', 'come-down'];

/** Done from wherever one is. */
const anywhere: readonly ActName[] = [
  'acknowledge',
  'park',
  'engine',
  'check-tool',
  'wear',
  'wait',
  'order',
  'clearance',
  'guard',
  'brief',
  'assign',
  'hand-over',
  'close-out',
];

const placeOf = (world: World, act: Act): string | null =>
  anywhere.includes(act.act) || (act.act === 'tell' && act.who === 'dispatcher')
    ? null
    : (standHere(world)?.id ?? null);

/** The deeds; `survey` are those of the survey, calls left out. */
export function guessed(start: World, acts: readonly Act[], survey: readonly Deed[]): readonly Deed[] {
  let world = plainAct(start, { act: 'acknowledge' }).world;
  const deeds = acts.flatMap((act): readonly Deed[] => {
    const at = placeOf(world, act);
    world = plainAct(world, act).world;
    return ways.includes(act.act) ? [] : [{ act, at }];
  });
  const parked = deeds.findIndex(({ act }) => act.act === 'park') + 1;
  const dress = trainee(dressed(start)).wearing.map(
    (tool): Deed => ({ act: { act: 'wear', tool, on: true }, at: null }),
  );
  return [
    { act: { act: 'acknowledge' }, at: null },
    ...deeds.slice(0, parked),
    ...survey.filter(({ act }) => act.act !== 'acknowledge' && act.act !== 'park'),
    ...dress,
    ...deeds.slice(parked),
  ];
}
