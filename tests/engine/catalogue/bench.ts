/** A small line that carries what a fault needs, written as a scenario; each case lays one fault, some with others that it needs. */
import { faultKind } from '../../../src/engine/catalogue/faults.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { built } from '../world/shuffled.ts';

/** A fault laid. */
export interface Laid {
  readonly kind: string;
  readonly on: string;
  readonly to?: string;
}

/** What the line carries beside a transformer and a house; rows of the written form. */
export interface Case extends Laid {
  readonly tapOpen?: true;
  readonly cutoutOpen?: true;
  readonly pole?: string;
  readonly deadend?: string;
  readonly p2?: string;
  readonly equipment?: readonly string[];
  /** Nets of the transformer. */
  readonly nets?: string;
  /** A second transformer and house on the last pole. */
  readonly second?: true;
  readonly own?: string;
  readonly load?: string;
  readonly arm?: 'arm' | 'arm-suspension';
  readonly cable?: true;
  readonly with?: readonly Laid[];
}

const fault = ({ kind, on, to }: Laid, id: string): string =>
  `  - { id: ${id}, kind: ${kind}, on: ${on}${to === undefined ? '' : `, to: ${to}`} }`;

const listOf = (name: string, rows: readonly string[]): string =>
  rows.length === 0 ? '' : `${name}:\n${rows.join('\n')}\n`;

const single = (c: Case): string => `
supply: { system: 12.47Y/7.2, circuit: Feeder 5, at: p1.main, fault-current: 1.2 kA, x-over-r: 2, upstream: { name: recloser 5, customers: 300, travel: 10 min, recloses: true } }
poles:
  - { id: p1, number: T-1, x: -50 m, length: 40 ft, framing: tap }
  - { id: p2, number: T-2, x: 0 m, length: 40 ft, framing: tangent${c.pole ?? ''} }
  - { id: p3, number: T-3, x: 50 m, length: 40 ft, framing: deadend${c.deadend ?? ''} }
spans:
  - { id: s1, from: p1.tap, to: p2.phase, conductor: Swan, sag: 2 ft }
  - { id: s2, from: p2.phase, to: p3.phase, conductor: Swan, sag: 2 ft }
${c.cable ? 'communications: [{ id: j1, from: p1, to: p2, sag: 2 ft }]' : ''}
equipment:
  - { id: p1.tap-cutout, kind: cutout, nets: { top: p1.main, bottom: p1.tap }, words: { link: 30K }${c.tapOpen ? ', state: { position: open }' : ''} }
  - { id: p2.cutout, kind: cutout, side: source, words: { link: 6K${c.p2 ?? ''} }${c.cutoutOpen ? ', state: { position: open }' : ''} }
  - { id: p2.transformer, kind: transformer, side: road, nets: { ${c.nets ?? ''} } }
${(c.second ? ['{ id: p3.cutout, kind: cutout, side: source, words: { link: 6K } }', '{ id: p3.transformer, kind: transformer, side: road }'] : []).map((row) => `  - ${row}`).join('\n')}
${(c.equipment ?? []).map((row) => `  - ${row}`).join('\n')}
`;

const armed = (c: Case): string => `
supply: { system: 12.47Y/7.2, circuit: Feeder 5, at: p1.main, phases: abc, fault-current: 1.2 kA, three-phase-fault-current: 1.5 kA, x-over-r: 2, upstream: { name: recloser 5, customers: 300, travel: 10 min, recloses: true } }
poles:
  - { id: p1, number: T-1, x: -50 m, length: 40 ft, framing: ${c.arm} }
  - { id: p2, number: T-2, x: 0 m, length: 40 ft, framing: ${c.arm} }
  - { id: p3, number: T-3, x: 50 m, length: 40 ft, framing: arm-deadend }
spans:
  - { id: s1, from: p1.main, to: p2.main, phases: abc, conductor: Swan, sag: 2 ft }
  - { id: s2, from: p2.main, to: p3.main, phases: abc, conductor: Swan, sag: 2 ft }
equipment:
  - { id: p2.cutout, kind: cutout, side: source, nets: { top: p2.main-b }, words: { link: 6K${c.p2 ?? ''} } }
  - { id: p2.transformer, kind: transformer, side: road }
`;

/** The scenario of a case as text. */
export const textOf = (c: Case): string => `format: 1
id: bench-of-a-fault
title: Bench
grade: 1
teaches: Nothing; it is for tests of the catalogue.
call: { date: 2026-05-04, time: "14:10", place: End of the lane, from: the owner, said: No lights., customers-out: 1 }
site: { light: day, sky: 20 klx, wetness: 60 %, soil: 120 ohm m }
${(c.arm ? armed : single)(c)}
premises:
  - { id: a, name: the house, x: 8 m, y: -25 m, from: p2, customer: the owner, load: ${c.load ?? '{ leg-1: 500 W, leg-2: 300 W }'}${c.own ?? ''} }
${c.second ? '  - { id: b, name: the other house, x: 58 m, y: -25 m, from: p3, customer: the neighbour, load: { leg-1: 500 W, leg-2: 300 W } }' : ''}
crew: { second-after: 0 min }
tools:
  - { id: stick-1, kind: stick, tested: 2025-11-02 }
  - { id: gloves-1, kind: rubber-gloves, rated: 17 kV, tested: 2026-02-14 }
  - { id: shield-1, kind: face-shield }
  - { id: ground-1, kind: ground-set }
  - { id: ground-2, kind: ground-set }
  - { id: ground-3, kind: ground-set }
  - { id: bond-1, kind: bond-jumper }
  - { id: short-1, kind: secondary-short }
  - { id: bucket-1, kind: bucket, rated: 46 kV, tested: 2026-04-21 }
  - { id: belt-1, kind: climbing-set }
${listOf('faults', [fault(c, 'it'), ...(c.with ?? []).map((each, i) => fault(each, `with-${i + 1}`))])}
job: { id: restore, words: Find the cause and restore., restores: [a.meter] }
`;

/** The World with the fault laid, under the id `it`. */
export const benchWith = (c: Case): World => built(textOf(c));

const crossing = '{ id: p2.crossing, kind: crossing-line, side: load }';
const arrester = '{ id: p2.arrester, kind: arrester }';
const crackedBushing: Laid = { kind: 'transformer-bushing-cracked', on: 'p2.transformer' };
const set = ', own: { kind: generator, rating: 7 kVA, connection: panel-cord, running: true, place: in the shed }';
const crustToGuy: Laid = { kind: 'deadend-contaminated', on: 'p3.deadend', to: 'p3.guy/top' };
const leakToGround: readonly Laid[] = [
  { kind: 'pin-insulator-cracked', on: 'p2.insulator' },
  { kind: 'pole-burned-by-tracking', on: 'p2.pole', to: 'p2.ground-lead/top' },
];

/** One case for each fault of equipment; what is not said is an ordinary tap in service. */
export const cases: readonly Case[] = [
  { kind: 'pin-insulator-cracked-through', on: 'p2.insulator' },
  { kind: 'pin-insulator-parted', on: 'p2.insulator' },
  { kind: 'pin-insulator-cracked', on: 'p2.insulator' },
  {
    kind: 'pole-burned-by-tracking',
    on: 'p2.pole',
    to: 'p2.ground-lead/top',
    with: [...leakToGround.slice(0, 1), { kind: 'ground-bond-burned-off', on: 'p2.ground-bond' }],
  },
  { kind: 'tie-broken', on: 'p2.tie' },
  { kind: 'ground-bond-burned-off', on: 'p2.ground-bond', with: leakToGround },
  {
    kind: 'ground-lead-cut',
    on: 'p2.ground-lead',
    with: [...leakToGround, { kind: 'ground-bond-burned-off', on: 'p2.ground-bond' }],
  },
  { kind: 'backfeed-generator', on: 'a.cord', own: set, tapOpen: true },
  { kind: 'pin-insulator-contaminated', on: 'p2.insulator' },
  { kind: 'deadend-contaminated', on: 'p3.deadend' },
  { kind: 'cutout-porcelain-cracked', on: 'p2.cutout', tapOpen: true },
  {
    kind: 'arm-wet-track',
    on: 'p2.crossarm',
    arm: 'arm',
    with: [{ kind: 'pin-insulator-contaminated', on: 'p2.insulator-a' }],
  },
  { kind: 'limb-on-line', on: 's2.phase' },
  { kind: 'conductor-broken', on: 's2.phase' },
  {
    kind: 'neutral-open',
    on: 's1.neutral',
    equipment: [arrester],
    with: [{ kind: 'arrester-failed-short', on: 'p2.arrester' }],
  },
  {
    kind: 'source-neutral-open',
    on: 'p1.source',
    equipment: [arrester],
    with: [{ kind: 'arrester-failed-short', on: 'p2.arrester' }],
  },
  { kind: 'service-neutral-open', on: 'a.drop', load: '{ leg-1: 2500 W, leg-2: 100 W }' },
  {
    kind: 'ground-lead-broken',
    on: 'p2.ground-lead',
    with: [...leakToGround, { kind: 'ground-bond-burned-off', on: 'p2.ground-bond' }],
  },
  {
    kind: 'upper-lead-off',
    on: 'p2.upper-lead',
    with: [{ kind: 'tank-strap-off', on: 'p2.tank-strap' }, crackedBushing],
  },
  {
    kind: 'tank-strap-off',
    on: 'p2.tank-strap',
    with: [{ kind: 'upper-lead-off', on: 'p2.upper-lead' }, crackedBushing],
  },
  {
    kind: 'arrester-failed-short',
    on: 'p2.arrester',
    tapOpen: true,
    equipment: ['{ id: p2.arrester, kind: arrester }'],
  },
  { kind: 'arrester-disconnector-operated', on: 'p2.arrester', equipment: ['{ id: p2.arrester, kind: arrester }'] },
  { kind: 'fuse-tube-hung', on: 'p2.cutout' },
  {
    kind: 'link-oversize',
    on: 'p2.cutout',
    with: [{ kind: 'transformer-failed-bulged', on: 'p2.transformer' }],
  },
  { kind: 'pole-shell-rot', on: 'p2.pole' },
  { kind: 'pole-groundline-decay', on: 'p2.pole' },
  { kind: 'guy-broken', on: 'p3.guy' },
  {
    kind: 'inverter-holds-alone',
    on: 'a.photovoltaic',
    tapOpen: true,
    own: ', own: { kind: photovoltaic, rating: 7.6 kVA, connection: panel-breaker, running: true, place: on the roof }',
  },
  {
    kind: 'interlock-defeated',
    on: 'a.main',
    tapOpen: true,
    own: ', own: { kind: generator, rating: 7 kVA, connection: interlock, transfer: generator, running: true, place: in the shed }',
  },
  {
    kind: 'transfer-leg-bypassed',
    on: 'a.transfer-switch',
    tapOpen: true,
    own: ', own: { kind: generator, rating: 7 kVA, connection: transfer-switch, transfer: generator, running: true, place: in the shed }',
  },
  {
    kind: 'transfer-neutral-open',
    on: 'a.transfer-switch',
    load: '{ leg-1: 2500 W, leg-2: 100 W }',
    own: ', own: { kind: generator, rating: 7 kVA, connection: neutral-transfer-switch, transfer: generator, running: true, place: in the shed }',
  },
  { kind: 'pole-heart-rot', on: 'p2.pole' },
  { kind: 'pole-woodpecker-nest', on: 'p2.pole' },
  { kind: 'pole-leaning', on: 'p2.pole' },
  { kind: 'pole-set-shallow', on: 'p2.pole' },
  { kind: 'anchor-pulled', on: 'p3.anchor', equipment: ['{ id: p3.anchor, kind: anchor }'] },
  { kind: 'guy-insulator-missing', on: 'p3.guy', with: [crustToGuy] },
  {
    kind: 'strain-insulator-bridged',
    on: 'p3.strain',
    equipment: ['{ id: p3.strain, kind: strain-insulator }'],
    with: [crustToGuy],
  },
  { kind: 'jumper-against-guy', on: 'p3.guy', to: 'p3.deadend/conductor' },
  { kind: 'pole-top-split', on: 'p2.insulator' },
  { kind: 'ridge-pin-loose', on: 'p2.ridge-pin', equipment: ['{ id: p2.ridge-pin, kind: ridge-pin }'] },
  { kind: 'cotter-missing', on: 'p3.deadend', deadend: ', strings: porcelain' },
  { kind: 'suspension-clamp-open', on: 'p2.seat-a', arm: 'arm-suspension' },
  { kind: 'deadend-shoe-slipping', on: 'p3.shoe', equipment: ['{ id: p3.shoe, kind: deadend-shoe, side: source }'] },
  { kind: 'crossarm-cracked', on: 'p2.crossarm', arm: 'arm' },
  { kind: 'crossarm-end-decayed', on: 'p2.crossarm', arm: 'arm' },
  { kind: 'crossarm-brace-loose', on: 'p2.crossarm', arm: 'arm' },
  { kind: 'cutout-bracket-loose', on: 'p2.cutout' },
  { kind: 'stirrup-burned', on: 'p2.stirrup', equipment: ['{ id: p2.stirrup, kind: stirrup }'] },
  { kind: 'service-wedge-slipped', on: 'a.drop' },
  { kind: 'neutral-spool-broken', on: 'p2.neutral-spool' },
  { kind: 'insulator-skirt-gone', on: 'p2.insulator' },
  { kind: 'insulator-flashed', on: 'p2.insulator' },
  { kind: 'post-insulator-cracked', on: 'p2.insulator', pole: ', insulator: post' },
  { kind: 'polymer-post-cut', on: 'p2.insulator', pole: ', insulator: polymer-post' },
  { kind: 'polymer-deadend-cut', on: 'p3.deadend' },
  { kind: 'bell-broken', on: 'p3.deadend', deadend: ', strings: glass' },
  { kind: 'cutout-polymer-tracked', on: 'p2.cutout', p2: ', body: polymer', tapOpen: true },
  {
    kind: 'disconnect-stack-cracked',
    on: 'p2.disconnect',
    tapOpen: true,
    equipment: ['{ id: p2.disconnect, kind: disconnect, nets: { source: p2.phase, load: p2.spare } }'],
  },
  {
    kind: 'arrester-housing-cracked',
    on: 'p2.arrester',
    tapOpen: true,
    equipment: ['{ id: p2.arrester, kind: arrester, words: { body: porcelain } }'],
  },
  { kind: 'rack-spool-broken', on: 'p2.rack', equipment: ['{ id: p2.rack, kind: secondary-rack }'] },
  { kind: 'transformer-oil-lost', on: 'p2.transformer', cutoutOpen: true },
  { kind: 'transformer-failed-bulged', on: 'p2.transformer', cutoutOpen: true },
  { kind: 'transformer-bushing-cracked', on: 'p2.transformer', cutoutOpen: true },
  { kind: 'transformer-turns-shorted', on: 'p2.transformer', cutoutOpen: true },
  { kind: 'transformer-voltage-switch-wrong', on: 'p2.transformer' },
  { kind: 'secondary-tied-across', on: 'p2.transformer', to: 'p3.transformer/x1', second: true, cutoutOpen: true },
  { kind: 'capacitor-bulged', on: 'p2.capacitor', equipment: ['{ id: p2.capacitor, kind: capacitor, side: field }'] },
  {
    kind: 'capacitor-holds-charge',
    on: 'p2.capacitor',
    equipment: ['{ id: p2.capacitor, kind: capacitor, side: field }'],
  },
  {
    kind: 'regulator-off-neutral',
    on: 'p1.regulator',
    equipment: ['{ id: p1.regulator, kind: regulator, side: field, nets: { source: p1.main, load: p1.spare } }'],
  },
  {
    kind: 'triplex-rubbed-through',
    on: 'a.drop',
    to: 'p2.rack/rack',
    equipment: ['{ id: p2.rack, kind: secondary-rack }'],
  },
  { kind: 'service-drop-low', on: 'a.drop' },
  { kind: 'service-legs-crossed', on: 'a.drop' },
  { kind: 'cord-from-neighbour', on: 'a.house', to: 'b.house/bus1', second: true, cutoutOpen: true },
  { kind: 'streetlight-bracket-live', on: 'p2.streetlight', equipment: ['{ id: p2.streetlight, kind: streetlight }'] },
  {
    kind: 'streetlight-on-other-circuit',
    on: 'p2.streetlight',
    to: 'p3.transformer/x1',
    second: true,
    cutoutOpen: true,
    equipment: ['{ id: p2.streetlight, kind: streetlight }'],
  },
  {
    kind: 'telecom-supply-feeds-back',
    on: 'p2.enclosure',
    cutoutOpen: true,
    equipment: ['{ id: p2.enclosure, kind: telecom-enclosure }'],
    load: '{ leg-1: 60 W, leg-2: 60 W }',
  },
  {
    kind: 'strand-not-bonded',
    on: 'j1.cable',
    cable: true,
    with: [{ kind: 'triplex-rubbed-through', on: 'a.drop', to: 'j1.cable/b' }],
  },
  {
    kind: 'ground-rod-loose',
    on: 'p2.ground-rod',
    with: [...leakToGround, { kind: 'ground-bond-burned-off', on: 'p2.ground-bond' }],
  },
  {
    kind: 'connector-burned',
    on: 'p2.connector',
    nets: 'x2: p2.t2',
    equipment: ['{ id: p2.connector, kind: split-bolt, nets: { a: p2.t2, b: p2.x2 } }'],
    load: '{ leg-1: 2500 W, leg-2: 100 W }',
  },
  { kind: 'crossing-line-touches', on: 'p2.crossing', to: 's2.phase/a', tapOpen: true, equipment: [crossing] },
  { kind: 'hand-tie-unwound', on: 'p2.tie', pole: ', tie: hand' },
  { kind: 'conductor-strands-parted', on: 's2.phase' },
  { kind: 'arrester-lead-parted', on: 'p2.arrester', equipment: ['{ id: p2.arrester, kind: arrester }'] },
  { kind: 'conductor-within-reach', on: 's2.phase' },
  { kind: 'wire-thrown-over-line', on: 's2.phase' },
];

/** Kinds of fault that lie on equipment and do harm; an order not given is no fault of the device. */
export const laidOnEquipment = (id: string): boolean => {
  const { benign, on, defeats } = faultKind(id);
  return !benign && defeats === undefined && on.every((each) => !each.includes(':') && each !== 'site');
};
