/** Traffic, and people and animals where the work can reach them. */
import type { FaultKind, SignKind } from '../types.ts';
import { none } from './none.ts';

const seen = (id: string, words: string): SignKind => ({ id, sense: 'see', words, source: 'common practice' });

const person = {
  ...none,
  severity: 'fatal',
  person: { present: true },
  mechanisms: ['struck-by', 'drop', 'contact'],
  source: '29 CFR 1910.269(w)(6), (a)(4); common practice',
} as const;

export const trafficFaults: readonly FaultKind[] = [
  {
    ...none,
    id: 'traffic-unguarded',
    name: 'traffic past the work with nothing set out',
    on: ['site'],
    signs: [seen('cars', 'road: cars pass at speed, none slows down, nothing stands ahead of the work')],
    conditions: ['traffic-unguarded'],
    site: { traffic: 'heavy', trafficMs: '=speed' },
    values: { speed: { default: 20, dimension: 'speed', doc: 'How fast it goes past' } },
    severity: 'fatal',
    mechanisms: ['struck-by'],
    harm: 'A car that leaves its lane hits whoever works at the road.',
    controls: ['traffic-control', 'barrier-vehicle', 'flagger'],
    tempting: [{ what: 'Set cones and leave it at that', why: 'cones stop nobody who does not look' }],
    tellApart: 'Where traffic is held, it slows before it sees the work.',
    source: '29 CFR 1910.269(w)(6); FACE 00WA040',
  },
  {
    ...person,
    id: 'bystander-in-zone',
    name: 'somebody standing where the work can reach',
    on: ['person:bystander', 'person:customer'],
    signs: [seen('stands', 'somebody stands there with folded arms and looks up')],
    conditions: ['in-drop-zone'],
    harm: 'What falls or swings down comes where somebody stands who knows nothing of it.',
    controls: ['escort-bystanders', 'keep-clear', 'safety-watch'],
    tempting: [{ what: 'Call a warning down and go on', why: 'they look up instead of going away' }],
    tellApart: 'Outside the tape and a span off nobody is in reach.',
  },
  {
    ...person,
    id: 'child-in-zone',
    name: 'a child where the work can reach',
    on: ['person:child'],
    signs: [seen('plays', 'a child runs about there, in and out between the bushes')],
    conditions: ['in-drop-zone', 'child-near'],
    harm: 'A child goes where it likes and touches what hangs down.',
    controls: ['escort-bystanders', 'keep-clear', 'safety-watch'],
    tempting: [{ what: 'Tell it to stay back', why: 'it is back in a minute' }],
    tellApart: 'A child that an adult holds by the hand stays where the adult stays.',
  },
  {
    ...person,
    id: 'dog-loose',
    name: 'a dog running loose',
    on: ['person:dog'],
    signs: [seen('runs', 'a dog runs to and fro there, no lead on it')],
    conditions: ['dog-loose', 'in-drop-zone'],
    person: { present: true, loose: true },
    mechanisms: ['struck-by'],
    severity: 'serious',
    harm: 'It goes under any tape, at people, and at what lies on the ground; somebody runs after it.',
    controls: ['restrain-dog'],
    tempting: [{ what: 'Tape the place off', why: 'a dog reads no tape' }],
    tellApart: 'A dog on a chain comes as far as the chain.',
  },
];
