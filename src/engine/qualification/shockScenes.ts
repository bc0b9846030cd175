/** Small scenes for checks of shocks: a source, bare metal, somebody who touches it. */
import { contact } from '../hazards/contact.ts';
import type { Meeting } from '../hazards/meeting.ts';
import { momentOf } from '../hazards/moment.ts';
import type { Reach, Through } from '../hazards/types.ts';
import type { Part, PointId, World } from '../world/types.ts';
import { bare, bareWorld } from './bareWorld.ts';
import { checkWriter } from './checkWriter.ts';
import { sources } from './sources.ts';

/** Ohms of the source, which the body's own are found without. */
export const SOURCE = 3;
/** Nothing between. */
export const bareHand: Through = { stick: null, gloves: null };

/** A source behind so many ohms, its other end in the earth. */
export const source = (id: string, line: string, volts: number, ohms = SOURCE): Part =>
  bare(id, 'system-source', { nets: { line, neutral: 'earth' }, values: { volts, ohms, reactance: 0 } });
/** Metal that a hand can touch: its point `<id>/top` on a net. */
export const metal = (id: string, net: string): Part =>
  bare(id, 'cutout', { nets: { top: net, bottom: `${id}-far` }, state: { position: 'closed', link: 'sound' } });

/** Somebody at the foot of it, touching points through something. */
export const reaching = (points: readonly PointId[], through: Through, aloft: boolean): Reach => ({
  who: 'somebody',
  stand: 'there',
  at: [0, 0, 0],
  aloft,
  touches: points.map((point) => ({ point, through })),
  switches: null,
  disturbs: null,
  climbs: null,
  works: false,
  seconds: 60,
});

/** What contact finds of a touch of points. */
export const shocked = (
  world: World,
  points: readonly PointId[],
  through = bareHand,
  aloft = false,
): readonly Meeting[] => contact(reaching(points, through, aloft), momentOf(world));
/** A quantity of the first of them, as things stand. */
export const first = (meetings: readonly Meeting[], name: string): number =>
  meetings[0]?.now.find((each) => each.name === name)?.value ?? Number.NaN;
/** Amperes through the body. */
export const current = (meetings: readonly Meeting[]): number => first(meetings, 'current through the body');
/** What the body has put in the way of the current. */
export const bodyOhms = (meetings: readonly Meeting[], behind: number): number =>
  first(meetings, 'open-circuit voltage') / current(meetings) - behind;

/** One source and one piece of metal. */
export const one = (volts: number, ohms = SOURCE): World =>
  bareWorld([source('s', 'line', volts, ohms), metal('c', 'line')]);
/** A bare hand on it. */
export const touch = (volts: number, ohms?: number): readonly Meeting[] => shocked(one(volts, ohms), ['c/top']);

/** Checks of a model against the table of body resistance. */
export const table = (model: string) => checkWriter(model, 'published value', `${sources.iec479}, 5 % of people`);
/** Checks worked by hand. */
export const hand = (model: string, what: string) => checkWriter(model, 'common practice', what);
