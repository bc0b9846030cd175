/**
 * Leads of line gear, found by nets: each terminal goes to what else on its pole is on the same net, and if there is nothing, up to
 * the conductor of a span on that net. Cutout, clamp and single transformer have leads of their own; they are only led to.
 */
import type { Part } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { leadThrough, shifted } from './shared.ts';
import type { Around, Picture, Piece } from './types.ts';

/** Terminals of a kind and the drawn point of each. */
export const drawnTerminals: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  cutout: { top: 'line', bottom: 'load' },
  arrester: { line: 'line' },
  transformer: { h1: 'h1', x1: 'x1', x2: 'x2', x3: 'x3' },
  'transformer-two-bushing': { h1: 'h1', h2: 'h2', x1: 'x1', x2: 'x2', x3: 'x3', neutral: 'ground' },
  'bank-unit-120': { h1: 'h1', x1: 'x1', x2: 'x2', neutral: 'ground' },
  'bank-unit-240': { h1: 'h1', x1: 'x1', x2: 'x2', neutral: 'ground' },
  disconnect: { source: 'line', load: 'load' },
  recloser: { source: 'source', load: 'load' },
  regulator: { source: 's', load: 'l', neutral: 'sl' },
  capacitor: { line: 'line', case: 'ground' },
  'secondary-rack': { x1: 'x1', x2: 'x2', x3: 'x3' },
  'neutral-spool': { neutral: 'conductor' },
};

/** A point of a conductor on this net, a little out from the pole. */
const onSpan = (pole: Part, net: string, from: Point, around: Around): Point | null => {
  for (const span of around.world.parts) {
    if (span.end === null || span.pole !== null || span.premises !== null) continue;
    for (const [name, at, other] of [
      ['a', span.at, span.end],
      ['b', span.end, span.at],
    ] as const) {
      if (span.nets[name] !== net || Math.hypot(at[0] - pole.at[0], at[1] - pole.at[1]) > 2) continue;
      const far = Math.hypot(other[0] - at[0], other[1] - at[1]);
      const out = Math.min(0.25, 0.62 / far);
      const sag = 4 * (span.values.sagM ?? 0.5) * out * (1 - out);
      const p = (i: 0 | 1 | 2): number => at[i] + (other[i] - at[i]) * out;
      return [p(0), p(1), p(2) - sag + (from[2] > at[2] ? 0.01 : -0.01)];
    }
  }
  return null;
};

/** Soft bare copper from one terminal to another, bowed out from the pole. */
const bowed = (a: Point, b: Point, pole: Part, wire: string, radius: number): readonly Piece[] => {
  const [cx, cy] = [pole.at[0], pole.at[1]];
  const mid: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
  const off = Math.max(0.05, Math.hypot(mid[0] - cx, mid[1] - cy));
  const push = 0.16 + 0.06 * Math.abs(a[2] - b[2]);
  const out: Point = shifted(mid, ((mid[0] - cx) / off) * push, ((mid[1] - cy) / off) * push, 0.02);
  const rise = (p: Point, q: Point): Point => shifted(p, 0, 0, q[2] > p[2] ? 0.09 : 0.05);
  return leadThrough(wire, radius, [a, rise(a, b), out, rise(b, a), b]);
};

/** Leads of one piece of gear; of two that are both led, the earlier id draws. */
export const tapLeads: Picture = (part, around) => {
  const pole = around.on(part.pole, 'pole');
  if (pole === null) return [];
  const terminals = drawnTerminals[part.kind] ?? {};
  const others = around.terminals(part.pole).filter((t) => t.part.id !== part.id);
  return Object.entries(terminals).flatMap(([terminal, point]): readonly Piece[] => {
    const net = part.nets[terminal];
    const from = around.point(part.id, point);
    if (net === undefined || from === null) return [];
    const low = terminal.startsWith('x');
    const there = others
      .filter((t) => t.net === net && !(t.led && t.part.id < part.id))
      .sort((p, q) => Math.hypot(...between(p.at, from)) - Math.hypot(...between(q.at, from)))[0];
    if (there) return bowed(from, there.at, pole, low ? 'insulated' : 'copper', low ? 0.0058 : 0.0026);
    if (others.some((t) => t.net === net)) return [];
    const tap = onSpan(pole, net, from, around);
    if (tap === null) return [];
    const clamp: Piece = { spec: { kind: 'squeeze-connector', side: 0 }, at: shifted(tap, 0, 0, 0.008) };
    return [clamp, ...bowed(from, tap, pole, low ? 'insulated' : 'copper', low ? 0.0058 : 0.0026)];
  });
};

const between = (a: Point, b: Point): [number, number, number] => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const led = [
  'transformer-two-bushing',
  'bank-unit-120',
  'bank-unit-240',
  'disconnect',
  'recloser',
  'regulator',
  'capacitor',
  'secondary-rack',
];

/** Whether leads of this kind are found by nets. */
export const isLed = (kind: string): boolean => led.includes(kind);

/** Leads by kind of gear. */
export const gearWires: Readonly<Record<string, Picture>> = Object.fromEntries(led.map((kind) => [kind, tapLeads]));
