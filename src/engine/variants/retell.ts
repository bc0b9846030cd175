/**
 * The words of a variant: what caller, customers and ticket said of the base's own trouble is no longer true, so it is
 * said anew from the drawn scene: who is without service by the circuit, what an answer would give away by the
 * catalogue. The place, the supply and the customers' names stay. Nothing here tells what will be found.
 */
import { premisesOut } from '../acts/customersOut.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { ScenarioVariant } from '../scenario/types.ts';
import { faultsOf, findPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import { type Group, groupAt, rowsAt, type Value } from './written.ts';

/** Longest title that the form takes. */
const TITLE = 60;

const sentence = (words: string): string => {
  const trimmed = words.trim();
  return `${trimmed.slice(0, 1).toUpperCase()}${trimmed.slice(1)}${/[.!?]$/.test(trimmed) ? '' : '.'}`;
};

/** Answers that the drawn faults give away, by topic: on these premises, or with null on the line. */
function givenAway(world: World, premises: string | null): ReadonlyMap<string, string> {
  const answers = new Map<string, string>();
  for (const { on, fault } of faultsOf(world)) {
    const part = findPart(world, on);
    if (part === null || part.premises !== premises) continue;
    for (const { sense, by, words } of faultKind(fault.kind).signs) {
      if (sense === 'ask' && by !== undefined) answers.set(by, sentence(words));
    }
  }
  return answers;
}

const over = (says: Group, answers: ReadonlyMap<string, string>): Group => ({
  ...says,
  ...Object.fromEntries([...answers].filter(([topic]) => topic !== 'generator')),
});

const dark = 'It went dark. I do not know why.';
const nothing = 'Nothing out of the way here.';

/** A place's name without its poles. */
const placeName = (place: string): string => place.split(',')[0] ?? place;

function titleOf(written: Group, { seed, number }: ScenarioVariant): string {
  const end = `, variant ${seed}-${number}`;
  return `${placeName(String(groupAt(written, 'call').place)).slice(0, TITLE - end.length)}${end}`;
}

const counted = (out: number, all: number): string =>
  out === 0
    ? 'Nobody has called but this one.'
    : out === all
      ? 'Everybody behind that pole, as far as I can tell.'
      : `${out} of the ${all} behind that line.`;

/** What is left of the base's events: people who come and go, sets that somebody starts, devices that somebody closes. */
const kept: readonly Value[] = ['comes', 'leaves', 'starts-set', 'closes'];

/** The drawn scene in its own words; `world` is the scene with its faults. */
export function retell(written: Group, world: World, id: string, variant: ScenarioVariant): Group {
  const out = new Set(premisesOut(world));
  const homes = rowsAt(written, 'premises');
  const call = groupAt(written, 'call');
  const caller = homes.find(({ customer }) => customer === call.from);
  const onLine = givenAway(world, null);
  const premises = homes.map((each): Group => {
    const name = String(each.id);
    const says = { ...groupAt(each, 'says'), noticed: out.has(name) ? dark : nothing };
    return { ...each, says: over(says, givenAway(world, name)) };
  });
  const own = premises.find(({ id: name }) => name === caller?.id);
  const isOut = caller === undefined ? out.size > 0 : out.has(String(caller.id));
  const noticed = onLine.get('noticed') ?? (isOut ? dark : 'Something up there is not as it was.');
  const { circuit } = groupAt(call, 'dispatcher');
  const says = own === undefined ? {} : groupAt(own, 'says');
  const generator =
    own === undefined ? 'I would not know.' : typeof says.generator === 'string' ? says.generator : 'None here.';
  const { kind: _, ...job } = groupAt(written, 'job');
  return {
    ...written,
    id,
    title: titleOf(written, variant),
    variant: { of: variant.of, seed: variant.seed, number: variant.number },
    teaches: 'A drawn scene: survey all of it, say what each thing can do, then decide what it takes.',
    call: {
      ...call,
      said: isOut
        ? 'The lights went out. Nothing else that I could tell you.'
        : out.size > 0
          ? 'They are without lights next door. Something up the pole is not as it was.'
          : 'Something up the pole is not as it was. Could somebody come and look?',
      'customers-out': out.size,
      'ticket-history': [],
      caller: { noticed, generator },
      // What the dispatcher sees of recloser, second worker and customers, the scene computes.
      dispatcher: over(
        { ...(circuit === undefined ? {} : { circuit }), customers: counted(out.size, homes.length) },
        onLine,
      ),
    },
    premises,
    events: rowsAt(written, 'events').filter(({ what }) => what !== undefined && kept.includes(what)),
    job: {
      ...job,
      words:
        out.size > 0
          ? 'Customers are out. Survey the place, find the cause, and make it right, or hand it over.'
          : 'Survey the place, say what is wrong there, and make it right, or hand it over.',
    },
    instructor: [
      'A drawn scene, nobody’s trouble call. Ask at which stand each sign first showed, and who would have gone on without it.',
    ],
  };
}
